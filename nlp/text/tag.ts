import type { Found, Tag, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import * as g from '../words/grammar.ts';
import { isTradeWord, nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { TRADE_ENDING } from '../words/sources.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { isNumberWord } from './number-words.ts';
import { openTag } from './tag-open.ts';
import { SIDES } from '../words/sides.ts';

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
const WAYS: Readonly<Record<string, RegExp>> = { etch: /^primed$/, hard: /^faced$/, sand: /^cast$/, wire: /^wheel(led|ed)$/, grit: /^blasted$/, bead: /^blasted$/, soda: /^blasted$/, shot: /^(blast|peen)ed$/, vapour: /^blasted$/, silver: /^soldered$/, soft: /^soldered$/, spot: /^(weld|prim|fac)ed$/, stitch: /^welded$/, plug: /^welded$/, spray: /^painted$/, brush: /^painted$/, hand: /^(paint|fil|scrap|lapp|ream)ed$/, steam: /^cleaned$/, jet: /^washed$/, power: /^washed$/, wet: /^(sand|flatt?)ed$/, cold: /^(straighten|chisel|rivet)ed$/, hot: /^(rivet|dipp|blu)ed$/, flame: /^(cut|cleaned)$/, gas: /^(welded|cut)$/, powder: /^coated$/ };

const lowAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? '';

function tagOne(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag {
  const low = tokens[i]!.low, next = lowAt(tokens, i + 1), prev = tags[i - 1];
  if (!/[\p{L}\p{N}]/u.test(low)) return low === '&' ? 'cc' : low === '+' ? 'cc' : 'mark';
  if (low === "'s") return clitic(tokens, tags, i, solid);
  if (low === 'hang' && next === 'on') return 'intj';
  if (/^(first|last)$/.test(low) && next === 'thing' || low === 'thing' && prev === 'adv' && /^(first|last)$/.test(lowAt(tokens, i - 1))) return 'adv'; // "took it over first thing"
  if (low === 'line' && /^(bored?|boring|reamed)$/.test(next) || WAYS[low]?.test(next)) return 'adv';
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
  if (SIDES.has(low)) return side(tokens, tags, i, solid);
  const closed = closedTag(tokens, tags, i, solid);
  return closed ?? openTag(tokens, tags, i, solid);
}

/** "end to end", "side by side", "end for end", "top to bottom": how, not what. */
const alongside = (tokens: readonly Token[], i: number): boolean => [0, 1, 2].some(k => /^(?:(end|edge|side|face|back) (?:to|by|for|over) \1|top to bottom|bottom to top|end to side|inside to outside)$/.test([0, 1, 2].map(n => lowAt(tokens, i - k + n)).join(' ')));

/** "painted the bucket yellow": the noun before the colour is what was painted. */
function colours(tokens: readonly Token[], tags: readonly Tag[], i: number): boolean {
  let k = i - 1;
  while (k >= 0 && /^(noun|adj|det|poss)$/.test(tags[k]!)) k--;
  return k >= 0 && i - 1 > k && tags[k] === 'verb' && /^(paint|spray|repaint|respray|prime|enamel|powder-?coat|do|dye|stain)/.test(tokens[k]!.low);
}

/** "'s" owns when a noun phrase follows that a verb or preposition closes; otherwise it is "is" or "has". */
function clitic(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag {
  const prev = tags[i - 1], next = lowAt(tokens, i + 1);
  if (/^ones?$/.test(lowAt(tokens, i - 1)) || next === 'due') return 'be';
  if (/^(day|week|month|year|hour|fortnight|season|morning|night)$/.test(lowAt(tokens, i - 1)) && /^(work|use|running|run|driving|mowing|baling|wear|sawing|time|grace|notice|rest|cure|curing|drying)$/.test(next)) return 'poss'; // "after a week's use"
  if (prev === 'pron' && !/^(one|someone|somebody|everyone|nobody)$/.test(lowAt(tokens, i - 1)) || prev === 'wh' || prev === 'adv') return 'be';
  if (someonesPlace(tokens, tags, i)) return 'poss';
  if (!nominal(tokens, i + 1, solid) && !SIDES.has(next)) return 'be';
  if (/^(first|second|third|fourth|fifth|last)$/.test(next) && nominal(tokens, i + 2, solid)) return 'poss'; // "the auger's second flight"
  if (CONDITION.has(next) && !nominal(tokens, i + 2, solid)) return 'be';
  if (g.ADVERB.has(next) || g.PREP.has(next) || g.DET.has(next) || isNumberWord(next) || /^\d/.test(next)) return 'be';
  const past = (verbForms(next).some(f => f.form === 'part' || f.form === 'ing') || /[a-z]{2}ed$/.test(next)) && !nounClasses(next).has('part');
  return past && !nominal(tokens, i + 2, solid) ? 'be' : 'poss';
}

/** What a shop does that a person's "is" or "has" can't stand before: "O'Brien's want 45". */
const WANTS = /^(wants?|say|says|quoted?|charged?|reckons?|have|asks?|asked|rang|phoned|do)$/;
/** "took it to Kelly's", "at the rebuilder's, back Friday": whose place it is, with nothing after that he could be or have. */
function someonesPlace(tokens: readonly Token[], tags: readonly Tag[], i: number): boolean {
  const after = lowAt(tokens, i + 1);
  if (after && !/^[.,;:!?)–—-]$/.test(after) && !/^(to|for|on|in|and|but|so|today|yesterday|this|last|first|since|now|until|till|by|at|before|after|while|getting|being)$/.test(after) && !(WANTS.test(after) && (i < 2 || /^(mark|cc|intj|adv)$/.test(tags[i - 2]!)))) return false;
  let k = i - 1;
  while (k > 0 && /^(noun|adj|poss)$/.test(tags[k]!)) k--;
  if (tags[k] === 'det') k--;
  if (WANTS.test(after) ? !/^\p{Lu}/u.test(tokens[i - 1]!.text) : !/^(to|at|from|off|by|round|over|with|down|up)$/.test(lowAt(tokens, k))) return false;
  return /^\p{Lu}\p{Ll}/u.test(tokens[i - 1]!.text) || nounClasses(lowAt(tokens, i - 1)).has('source') || PERSONS.test(lowAt(tokens, i - 1)) || TRADE_ENDING.test(lowAt(tokens, i - 1)) && !nounClasses(lowAt(tokens, i - 1)).has('part');
}

/** Whether a noun can begin here: a trade word, or an unknown word that no closed class or verb claims. */
export function nominal(tokens: readonly Token[], i: number, solid: ReadonlySet<number>): boolean {
  const low = lowAt(tokens, i);
  if (!low || !/\p{L}/u.test(low)) return false;
  if (/^(first|second|last|next)$/.test(low) && !solid.has(i) && (isClosed(lowAt(tokens, i + 1)) || !/\p{L}/u.test(lowAt(tokens, i + 1)))) return false; // "key first, then…"
  if (/^(in|on|off|out|up|down|over|of|with|and|for|to|at|by|from|through)$/.test(low)) return solid.has(i); // "straighten that in the vice", whatever names hold them ("cut in")
  if (solid.has(i) || nounClasses(low).size || isTradeWord(low)) return true;
  return !isClosed(low) && verbForms(low).length === 0 && !CONDITION.has(low) && !/ly$/.test(low);
}

export const isClosed = (low: string): boolean => g.DET.has(low) || g.PRONOUN.has(low) || g.PREP.has(low) || g.AUX_BE.has(low) || g.AUX_HAVE.has(low) || g.AUX_DO.has(low)
  || g.MODAL.has(low) || g.NEGATIVE.has(low) || g.CONJ.has(low) || g.SUBORD.has(low) || g.WH.has(low) || g.ADVERB.has(low) || g.FILLER.has(low) || isNumberWord(low) || g.CALENDAR.has(low);

/** "left", "right", "back", "front", "top"…: an adjective before a noun or "one", else a particle, verb or adverb. */
function side(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag {
  const low = tokens[i]!.low, next = lowAt(tokens, i + 1), prev = tags[i - 1];
  if (low === 'left' && (prev === 'pron' && lowAt(tokens, i - 1) !== 'ones' || g.ARTICLE.has(next) || /^(it|them|him)$/.test(next) || prev === 'have' && next !== 'one')) return 'verb';
  if (low === 'left' && (prev === 'noun' || prev === 'pron' || prev === 'adv') && /^(for|this|today|yesterday|on)$/.test(next)) return 'verb';
  if (low === 'left' && prev === 'be' && !next) return 'adj';
  if (low === 'right' && (g.PREP.has(next) && next !== 'side' || /^(angry|away|now|round|so|then)$/.test(next))) return 'adv';
  if (low === 'back' && /^(one|ones|left|right|axle|wheel)$/.test(next) && (prev === undefined || prev === 'mark' || prev === 'cc' || prev === 'adj')) return 'adj';
  if (low === 'back' && prev !== 'det' && prev !== 'poss' && prev !== 'adj' && !((prev === undefined || prev === 'mark' || prev === 'cc') && nominal(tokens, i + 1, solid)) && !(nounClasses(`back ${next}`).size)) return 'prt';
  if (nominal(tokens, i + 1, solid) || SIDES.has(next) || /^(one|ones|side|hand|end|two|three|four)$/.test(next)) return 'adj';
  return prev === 'det' || prev === 'adj' || prev === 'poss' ? 'noun' : /^(front|rear|top|bottom|inside|outside)$/.test(low) && prev !== 'prep' ? 'adj' : low === 'left' || low === 'right' ? 'adj' : 'noun';
}

function closedTag(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag | undefined {
  const low = tokens[i]!.low, next = lowAt(tokens, i + 1), prev = tags[i - 1];
  if (/^(that|this|these|those|her|his)$/.test(low)) return nominal(tokens, i + 1, solid) || SIDES.has(next) || CONDITION.has(next) && nominal(tokens, i + 2, solid) || /^(one|same|last|other|new|old)$/.test(next) ? 'det' : low === 'that' && !tokens[i + 1]?.pause && (prev === 'noun' || prev === 'verb' && verbForms(lowAt(tokens, i - 1)).some(f => ['say', 'think', 'find', 'check'].some(k => isClass(f.base, k as 'say')) || /^(mean|make|show|prove|confirm|note|decide|agree|realise|realize|admit|explain|mention|establish|ensure|ask|require|pretend)$/.test(f.base))) && verbForms(next).length === 0 && !g.AUX_BE.has(next) && (g.SUBJECT.has(next) || g.ARTICLE.has(next)) ? 'sub' : 'pron';
  if (/^(what|which)$/.test(low)) return 'wh';
  if (g.WH.has(low)) return low === 'when' || low === 'where' || low === 'how' || low === 'why' ? 'wh' : 'wh';
  if (low === 'all' && lowAt(tokens, i - 1) === 'after' && prev === 'adv') return 'adv';
  if (/^(both|all|each|half|either|neither|some|any|no|several|few|couple|another)$/.test(low)) {
    if (low === 'no' && (!next || /^[,.]$/.test(next) || g.SUBJECT.has(next) || g.AUX_BE.has(next) || /^(wait|its|that|make|the)$/.test(next))) return 'intj';
    return 'det';
  }
  if (g.DET.has(low)) return 'det';
  if (g.AUX_BE.has(low)) return 'be';
  if (g.AUX_HAVE.has(low)) return 'have';
  if (g.AUX_DO.has(low)) return 'do';
  if (low === 'can' && (prev === 'det' || (prev === 'adj' || prev === 'poss' || prev === 'noun') && !verbForms(next).some(f => f.form === 'base') && next !== 'be' && next !== 'i')) return 'noun';
  if (low === 'will' && prev === 'det') return 'noun';
  if (g.MODAL.has(low)) return 'modal';
  if (low === 'like') return prev === 'pron' && !/^(something|anything|nothing|everything|it|that|this|one|ones)$/.test(lowAt(tokens, i - 1)) || prev === 'modal' ? 'verb' : 'prep';
  if (low === 'after' && next === 'all' && (!lowAt(tokens, i + 2) || /^[,.;!?]$/.test(lowAt(tokens, i + 2)) || g.SUBJECT.has(lowAt(tokens, i + 2)))) return 'adv';
  if (low === 'second' || low === 'first' || low === 'last' || low === 'next') return nominal(tokens, i + 1, solid) || /^(one|of)$/.test(next) || prev === 'det' ? 'adj' : 'adv';
  if (low === 'due' && prev !== 'det' && prev !== 'adj' && (!nominal(tokens, i + 1, solid) || next === 'back')) return 'adv'; // "due back on the 20th"
  if (low === 'so' && next === 'far' || low === 'far' && tokens[i - 1]?.low === 'so') return 'adv';
  if (low === 'so' || low === 'then' || low === 'plus') return 'cc';
  if (low === 'since' && g.SUBJECT.has(next)) return 'sub';
  if (low === 'for' || low === 'since' || low === 'like') return 'prep';
  if (low === 'yet' && prev !== undefined && prev !== 'mark') return 'adv';
  if (g.CONJ.has(low)) return 'cc';
  if (low === 'before' || low === 'after' || low === 'until' || low === 'till' || low === "'til" || low === "'cause") return 'sub';
  if (low === 'off' && prev === 'det' && /^(side|wheel|fore|rear|hind|one)$/.test(next)) return 'adj';
  if (/^(over|off|on|out|in|up|down|back|apart|away|together|through|loose|along)$/.test(low)) {
    if (low === 'loose' && (prev === 'be' || prev === 'adv' || prev === 'noun')) return 'adj';
    return 'prt';
  }
  if (low === 'courier' && (prev === undefined || prev === 'det') && verbForms(next).some(f => f.form === 'past')) return 'noun';
  if (/^stays?$/.test(low) && prev === 'noun' && /^(on|in|off|put|till|until|there|where|as|clamped|masked|covered)$/.test(next)) return 'verb';
  if (low === 'x' && (prev === 'num' || prev === 'noun') && /^\d/.test(next)) return 'prep';
  if (g.SUBORD.has(low)) return 'sub';
  if (g.PRONOUN.has(low)) return 'pron';
  if (/^(above|below|underneath|beneath|inside|outside|behind|beside|between|around|opposite)$/.test(low) && prev === 'noun' && g.AUX_BE.has(next)) return 'adv';
  if (g.PREP.has(low)) return 'prep';
  if (low === 'finger' && /^(tight|tightened|snug)$/.test(next)) return 'adv';
  if (/^(pretty|clean|clear|early|late|dead|once|half|straight|finger|right)$/.test(low)) return undefined;
  if (g.ADVERB.has(low)) return 'adv';
  if (/^(ok|okay)$/.test(low) && (prev === 'noun' || prev === 'num' || prev === 'be' || prev === 'pron' || prev === 'adv')) return 'adj';
  if (low === 'testing' && (prev === undefined || prev === 'intj' || prev === 'mark' && /^(testing|,|\.)$/.test(next || '.'))) return 'intj'; // said to the microphone
  if (g.FILLER.has(low) || /^(okay|ok|yeah|yep|yes|nope|righto|oh|cheers|please|aye|damn|bloody|sorry|correction|oops|hello|hi|thanks|ha|haha|lol|btw|nope|nah|och|ach|ah|eh|aye|crikey|blimey|ouch|phew|yikes|hooray|hurrah|ugh|gosh|heck)$/.test(low)) return 'intj';
  return undefined;
}
