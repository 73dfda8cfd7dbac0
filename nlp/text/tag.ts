import type { Found, Tag, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { nounClasses } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { lowAt, nominal } from './nominal.ts';
import { isNumberWord } from './number-words.ts';
import { closedTag } from './tag-closed.ts';
import { cliticTag } from './tag-clitic.ts';
import { openTag } from './tag-open.ts';
import { sideTag } from './tag-side.ts';
import { table } from '../words/table.ts';

/**
 * What each word is, from the word and its neighbours. `solid` tells which tokens stand inside a known name, which is a noun whatever its words.
 */
export function tagTokens(tokens: readonly Token[], solid: ReadonlySet<number>, found: readonly Found[]): Tag[] {
  const tags: Tag[] = [];
  const measured = measuredTokens(found);
  for (let i = 0; i < tokens.length; i++) tags.push(solid.has(i) ? 'noun' : measured.get(i) ?? tagOne(tokens, tags, i, solid));
  return tags;
}

/** Words inside a measure, a sum of money, a length of time are of the number; those inside a day are adverbs. */
function measuredTokens(found: readonly Found[]): Map<number, Tag> {
  const out = new Map<number, Tag>();
  for (const f of found) {
    if (f.dim === 'number' || f.dim === 'thread') continue;
    for (let k = f.from; k < f.to; k++) if (f.dim !== 'when') out.set(k, 'num'); else if (!out.has(k)) out.set(k, 'adv');
  }
  return out;
}

/** "etch primed", "hard faced", "grit blasted": how the work was done, before its verb. */
const WAYS: Readonly<Record<string, RegExp>> = table({ etch: /^primed$/, hard: /^faced$/, sand: /^cast$/, wire: /^wheel(led|ed)$/, grit: /^blasted$/, bead: /^blasted$/, soda: /^blasted$/, shot: /^(blast|peen)ed$/, vapour: /^blasted$/, silver: /^soldered$/, soft: /^soldered$/, spot: /^(weld|prim|fac)ed$/, stitch: /^welded$/, plug: /^welded$/, spray: /^painted$/, brush: /^painted$/, hand: /^(paint|fil|scrap|lapp|ream)ed$/, steam: /^cleaned$/, jet: /^washed$/, power: /^washed$/, pressure: /^washed$/, back: /^flushed$/, wet: /^(sand|flatt?)ed$/, cold: /^(straighten|chisel|rivet)ed$/, hot: /^(rivet|dipp|blu)ed$/, flame: /^(cut|cleaned)$/, gas: /^(welded|cut)$/, powder: /^coated$/ });

const COLOUR = /^(red|green|blue|yellow|black|white|gr[ae]y|silver|cream|orange|maroon|brown)$/;
/** "two coats of the blue", "a lick of stove black": the colour is the paint, unless its stuff comes after it. */
const paints = (tokens: readonly Token[], i: number): boolean => [1, 2, 3].some(n => lowAt(tokens, i - n) === 'of' && /^(coats?|licks?|layers?|splash|dab)$/.test(lowAt(tokens, i - n - 1))) && !nounClasses(lowAt(tokens, i + 1)).size;

function tagOne(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag {
  const low = tokens[i]!.low, next = lowAt(tokens, i + 1), prev = tags[i - 1];
  if (!/[\p{L}\p{N}]/u.test(low)) return low === '&' || low === '+' ? 'cc' : 'mark';
  if (low === "'s") return cliticTag(tokens, tags, i, solid);
  if (low === 'hang' && next === 'on') return 'intj';
  if (/^(first|last)$/.test(low) && next === 'thing' || low === 'thing' && prev === 'adv' && /^(first|last)$/.test(lowAt(tokens, i - 1))) return 'adv'; // "took it over first thing"
  if (low === 'line' && /^(bored?|boring|reamed)$/.test(next) || WAYS[low]?.test(next)) return 'adv';
  if (/^(coat|lick|dab|smear|wipe|film|splash|skim)$/.test(low) && next === 'of' && (prev === 'det' || prev === 'num' || prev === 'adj') || COLOUR.test(low) && paints(tokens, i)) return 'noun'; // "a lick of stove black"
  if (low === 'these' && next === 'days' || low === 'days' && lowAt(tokens, i - 1) === 'these') return 'adv';
  if (/^(red|green|blue|yellow|black|white|grey|gray|silver|cream|orange|maroon|brown)$/.test(low) && (prev === 'verb' || prev === 'be' && /^(with|from|at|where)$/.test(next) || prev === 'noun' && colours(tokens, tags, i)) && !nominal(tokens, i + 1, solid) && !isNumberWord(next)) return 'adj';
  if (/^(worse|worst)$/.test(low) && (prev === 'adj' || prev === 'noun' || prev === 'be')) return 'adj';
  if (/^(hot|cold|warm|dry|wet)$/.test(low) && prev === 'num' && !nominal(tokens, i + 1, solid) && !SIDES.has(next)) return 'adj'; // "12 thou cold"
  if (low === 'due' && prev === 'noun' && /^(a|an|another|for|at|on|in|again|back|out|its|their|this|next|after)$/.test(next)) return 'adj';
  if (next === 'permitting' || low === 'permitting') return 'adv';
  if (/^(cut|pass|skim|lick)$/.test(low) && /^(light|fine|heavy|small|finishing|roughing|first|second|final|last|quick|thin|clean-up|cleanup|wee)$/.test(lowAt(tokens, i - 1)) && /^(off|across|over|along|from|down)$/.test(next)) return 'noun'; // "took a light cut off the face"
  if (/^(one|other|ones|others)$/.test(lowAt(tokens, i - 1)) && /^(stays|stops|sits|sticks|binds|drags|rubs|leaks|clips|slides)$/.test(low) && (next === '' || /^(on|off|out|in|up|put|where|there|tight|loose|a|bad|badly|like|[.,;])$/.test(next))) return 'verb'; // "left one stays on"
  if (CONDITION.has(low) && prev === 'noun' && /^(off|out|up|apart)$/.test(next) && verbForms(low).some(f => f.form === 'part' && isClass(f.base, 'off')) && tokens.slice(Math.max(0, i - 6), i).some(t => /^(got|get|had|have|has|'ve|having)$/.test(t.low))) return 'verb'; // "got the head lifted off its post"
  if (/^(true|square|level|open|clean|dry|plug|free)$/.test(low) && /^(up|out|off)$/.test(next) && /^(the|that|both|all|my|its|them|it)$/.test(lowAt(tokens, i + 2)) && (prev === undefined || prev === 'mark' || prev === 'cc' || prev === 'to' || prev === 'modal')) return 'verb'; // "…, true up the blade"
  if (low === 'far' && lowAt(tokens, i - 1) === 'so') return 'adv';
  if (low === 'other' && (isNumberWord(next) || /^\d+$/.test(next))) return 'adj';
  if (/^(right|now|well|okay)$/.test(low) && prev === undefined && /^(the|my|that|this|we|i)$/.test(next)) return 'adv';
  if (low === 'leaves' && /^(in|at)$/.test(next) && isNumberWord(lowAt(tokens, i + 2))) return 'verb';
  if (/^(hey|listen|look|mate|lads?|love|folks|guys|boss|chief|pal|buddy|son|dear)$/.test(low) && /^[,.!]$/.test(next) && (prev === undefined || prev === 'mark' || prev === 'intj')) return 'intj';
  if (/^(mate|lads|boss|chief|pal|love)$/.test(low) && (!next || /^[,.!]$/.test(next)) && /^(verb|adv|num|prt|pron)$/.test(prev ?? '')) return 'intj'; // "they're ordered mate, …"
  if (/^(itself|themselves)$/.test(low) && prev === 'noun') return 'adv';
  if (/^(zip|cable)$/.test(low) && /^(tied|ties?)$/.test(next)) return 'adv';
  if (low === 'hand' && /^(tight|tightened|snug)$/.test(next)) return 'adv';
  if (low === 'top' && lowAt(tokens, i - 1) === 'on' && next === 'of') return 'prep';
  if (low === 'better' && (prev === 'modal' || prev === 'have' || (prev === undefined || prev === 'mark' || prev === 'intj' || prev === 'cc' || /^(i|we)$/.test(lowAt(tokens, i - 1))) && /^(get|have|make|order|buy|take|put|do|go|check|see|fit|leave|ring|find)$/.test(next))) return 'modal';
  if (low === 'wait' && (lowAt(tokens, i - 1) === 'no' || prev === undefined && (/^[,.]$/.test(next) || next === 'no'))) return 'intj';
  if (/^(new|old|spare)$/.test(low) && (nominal(tokens, i + 1, solid) || /^ones?$/.test(next) || SIDES.has(next))) return 'adj';
  if (/^(other|same|another)$/.test(low) && (prev === 'det' || nominal(tokens, i + 1, solid) || next === 'one')) return 'adj';
  if (low === 'round' && lowAt(tokens, i - 1) === 'all' || low === 'all' && next === 'round') return 'adv';
  if (alongside(tokens, i)) return 'adv';
  if (low === 'fit' && /^(for|to)$/.test(next) && (prev === 'be' || prev === 'cc' || prev === 'adv' || prev === 'noun') && lowAt(tokens, i + 2) !== 'the') return 'adj';
  if (/^(goes|tries|passes|runs|pulls|turns|hits|cuts|bites|stages|steps|lots)$/.test(low) && prev === 'num') return 'noun';
  if (low === 'me' && prev !== 'verb' && prev !== 'prep' && nominal(tokens, i + 1, solid) && !verbForms(next).some(f => f.form !== 'base')) return 'det'; // "me ears"
  if (isCounted(tokens, tags, i)) return 'noun';
  if ((prev === 'num' || lowAt(tokens, i - 1) === 'dozen') && countsThings(tokens, i - 1) && /(ing|ed)$/.test(low) && verbForms(low).length && /[^s]s$/.test(next) && nominal(tokens, i + 1, solid)) return 'adj'; // "two dozen gathering fingers"
  if (low === 'half' && (prev === 'adj' || prev === 'noun') && SIDES.has(lowAt(tokens, i - 1))) return 'noun';
  if (low === 'soaked' && prev === 'be' && /^(with|through)$/.test(next)) return 'adj';
  if (low === 'not' || low === 'never' || low === "n't") return 'neg';
  if (low === 'them' && nominal(tokens, i + 1, solid) && prev === undefined && !verbForms(next).length) return 'det'; // "them brushes"
  if (low === 'to') return 'to';
  if (/^\.?\d/.test(low) || /^m\d/.test(low)) return 'num';
  if (low === 'one' && lowAt(tokens, i - 1) === 'the' && prev === 'det' && nounClasses(next).has('fastener')) return 'num'; // "hung on the one bolt"
  if (low === 'one' || low === 'ones') return prev === 'adj' || prev === 'det' || low === 'ones' ? 'pron' : nominal(tokens, i + 1, solid) ? 'num' : /^(and|of|hundred|thousand|thou|inch)$/.test(next) ? 'num' : 'pron';
  if (low === 'half' && /^(the|its|his|her|my|their|our)$/.test(next)) return 'det';
  if (/^(third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)$/.test(low) && /^ones?$/.test(next)) return 'adj'; // "third one's grand"
  if (isNumberWord(low)) return 'num';
  if (SIDES.has(low)) return sideTag(tokens, tags, i, solid);
  const closed = closedTag(tokens, tags, i, solid);
  return closed ?? openTag(tokens, tags, i, solid);
}

/** A number of things, as a word or in figures, and more than one of them. */
const countsThings = (tokens: readonly Token[], i: number): boolean => /^([2-9]|[1-9]\d|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|twenty)$/.test(lowAt(tokens, i)) && !/^(number|no|grade|class|size|by|x)$/.test(lowAt(tokens, i - 1));
/** "ten plow bolts", "three cast rings": a number needs a plural, so that a word that might be a verb is the things counted where no plural stands before it. */
const isCounted = (tokens: readonly Token[], tags: readonly Tag[], i: number): boolean =>
  tags[i - 1] === 'noun' && tags[i - 2] === 'num' && countsThings(tokens, i - 2) && !/s$/.test(lowAt(tokens, i - 1)) && /[^s]s$/.test(lowAt(tokens, i)) && nounClasses(lowAt(tokens, i)).size > 0 && !nounClasses(lowAt(tokens, i - 1)).has('quantity');

/** "end to end", "side by side", "end for end", "top to bottom": how, not what. */
const alongside = (tokens: readonly Token[], i: number): boolean => [0, 1, 2].some(k => /^(?:(end|edge|side|face|back) (?:to|by|for|over) \1|top to bottom|bottom to top|end to side|inside to outside)$/.test([0, 1, 2].map(n => lowAt(tokens, i - k + n)).join(' ')));

/** "painted the bucket yellow": the noun before the colour is what was painted. */
function colours(tokens: readonly Token[], tags: readonly Tag[], i: number): boolean {
  let k = i - 1;
  while (k >= 0 && /^(noun|adj|det|poss)$/.test(tags[k]!)) k--;
  return k >= 0 && i - 1 > k && tags[k] === 'verb' && /^(paint|spray|repaint|respray|prime|enamel|powder-?coat|do|dye|stain)/.test(tokens[k]!.low);
}
