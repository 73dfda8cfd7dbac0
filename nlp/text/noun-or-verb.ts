import type { Tag, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { ARTICLE } from '../words/grammar.ts';
import { nounClasses } from '../words/nouns.ts';
import { isClass, verbForms, type VerbForm } from '../words/verbs.ts';
import { nominal } from './nominal.ts';
import { figureAhead, finiteAhead, headingAhead, listAhead, wholeStretch } from './nouns-ahead.ts';
import { isNumberWord } from './number-words.ts';

/** Whether the word before calls for a noun. */
export const beforeNoun = (prev: Tag | undefined): boolean => prev === 'det' || prev === 'poss' || prev === 'adj' || prev === 'num';

/** "grease", "plate", "paint", "seal": a verb at the start of a clause before an object, after "to" or a person; else a noun. */
export function nounOrVerb(tokens: readonly Token[], tags: readonly Tag[], i: number, forms: readonly VerbForm[], solid: ReadonlySet<number>): Tag {
  const prev = tags[i - 1], next = tokens[i + 1]?.low ?? '', low = tokens[i]!.low;
  const bare = forms.some(f => f.form === 'base');
  if (/^(set|cut|put|shut|split|cast|read|drilled|bored|bent)$/.test(low) && prev === 'noun' && /^(to|at|with|down|back|from)$/.test(next)) return 'verb';
  if (/^(ground|wound|cut|split|cast|bent|drilled|bored)$/.test(low) && prev === 'noun' && (!next || /^([.,;]|and|at|by|in|off|out|up|down|to)$/.test(next)) && tokens.slice(Math.max(0, i - 5), i).some(t => /^(have|had|has|'ve|got|get|getting|having|need|want)$/.test(t.low))) return 'verb'; // "had the crank ground"
  if (/^(ground|wound|bored)$/.test(low) && prev === 'noun' && (!next || /^[.,;]$/.test(next)) && nounClasses(tokens[i - 1]!.low).has('part') && !/^(frame|battery|engine|chassis|wire|cable|lamp)$/.test(tokens[i - 1]!.low)) return 'verb'; // "drum ground, shoes relined"
  if (next === 'of' && low !== 'heard') return 'noun'; // "bore of the barrel"
  if (low === 'spoke' && /^(to|with)$/.test(next)) return 'verb';
  if (/^(me|us)$/.test(next) && forms.some(f => f.form !== 'ing') && prev !== 'det') return 'verb';
  if (prev === 'num' && bare && /^(it|them)$/.test(next)) return 'verb';
  if (beforeNoun(prev) || next === 'of' && /^(box|can|pack|bag|pail|jar|tin|roll|coil|set|stack|pile|bunch|load|dab|drop|coat|sheet|bar)$/.test(low)) return 'noun';
  const before = tokens[i - 1]?.low ?? '', twoBack = tokens[i - 2]?.low ?? '';
  if (bare && (/^(help|helps|helping|helped|let|lets|gonna)$/.test(before) || /^(me|us|him|them)$/.test(before) && /^(help|helps|helping|helped|let|make)$/.test(twoBack))) return 'verb';
  if (forms.some(f => f.form === 'ing') && (/^(need|needs|needed|want|wants|wanted|start|starts|started|begin|began|finish|finished|stop|stopped|quit|keep|kept|spent|try|tried|been|be|is|are|'m|'s|was|were)$/.test(before) || ARTICLE.has(next) || /^(it|them|both)$/.test(next))) return 'verb';
  if (bare && prev === 'adv' && (tags[i - 2] === 'modal' || tags[i - 2] === 'to')) return 'verb';
  if (prev === 'have' && forms.some(f => f.form === 'part') && !bare) return 'verb';
  if (prev === 'be' && CONDITION.has(low) && !nominal(tokens, i + 1, solid) && !/^(set|cut|cast|split)$/.test(low) && !forms.some(f => isClass(f.base, 'work') && f.form === 'part')) return 'adj';
  if (prev === 'be' || prev === 'adv' && tags[i - 2] === 'be') return forms.some(f => f.form === 'part' || f.form === 'ing') && !bare || /^(set|cut|cast)$/.test(low) ? 'verb' : CONDITION.has(low) && !nominal(tokens, i + 1, solid) ? 'adj' : 'noun';
  if (prev === 'pron') return /^(i|we|you|he|she|they|it|that|nobody|who|somebody|everybody|everyone|someone)$/.test(tokens[i - 1]!.low) ? 'verb' : 'noun';
  const past = forms.some(f => f.form === 'past');
  if (prev === 'noun' && /^(both|all)$/.test(next) && CONDITION.has(tokens[i + 2]?.low ?? '')) return 'noun';
  const object = ARTICLE.has(next) || /^(it|them|both|all|each|every)$/.test(next) || past && /^(up|down|off|out|in|on)$/.test(next) || isNumberWord(next) && !bare;
  const opens = prev === undefined || prev === 'cc' || prev === 'mark' || prev === 'intj' || prev === 'adv' || prev === 'wh' || prev === 'sub';
  if (!bare && object && (opens || prev === 'noun')) return 'verb';
  if (opens && bare && /^(up|out|off|down)$/.test(next) && ARTICLE.has(tokens[i + 2]?.low ?? '')) return 'verb'; // "…, wire up the tail lamps"
  if (opens && bare) {
    if (low === 'grease' && next === 'all' || low === 'oil' && /^(all|in|on|from)$/.test(next)) return 'noun'; // "oil all over the clutch"
    if (ARTICLE.has(next) || /^(it|them|both|all|each|every)$/.test(next) || /^(check|grease|oil|drain|test|clean|fit|time|plane|watch|turn|measure|paint|pack|weld|lap|file|seal)$/.test(low) && /^(again|after|every|up|over|later|tomorrow)$/.test(next)) return 'verb';
    if (/^(part|fastener)$/.test([...nounClasses(low)].find(k => k === 'part' || k === 'fastener') ?? '') && wholeStretch(tokens, i, solid)) return 'noun'; // "Rod bolts.": a headline and no order
    if ((prev === 'cc' || prev === 'mark' && tokens[i - 1]!.low === ',') && tags[i - 2] === 'noun' && nounClasses(low).has('part') && afterDeed(tokens, tags, i) && nominal(tokens, i + 1, solid)) return 'noun'; // "washed the cups and feed gates"
    if (prev === 'mark' && tokens[i - 1]!.low === ',' && tags[i - 2] === 'noun' && nounClasses(low).has('part') && listAhead(tokens, i + 1, solid)) return 'noun'; // "hat washers, cup washers, whatever they are"
    if (headingAhead(tokens, i + 1, solid) && !/^(buy|get|need|order|do|check|note|list|remember|read|see|find|fit|make|want)$/.test(low)) return 'noun'; // "swing jaw bushes: left tight"
    return nominal(tokens, i + 1, solid) && !finiteAhead(tokens, i + 1, solid) && !(nounClasses(low).has('part') && figureAhead(tokens, i + 1, solid)) ? 'verb' : 'noun';
  }
  if (opens && !bare && forms.some(f => f.form === 'past')) return nominal(tokens, i + 1, solid) || /^(and)$/.test(next) ? 'verb' : 'noun';
  return 'noun';
}

/** Whether the last verb before is a deed told, which no order can be joined to. */
function afterDeed(tokens: readonly Token[], tags: readonly Tag[], i: number): boolean {
  let k = i - 1;
  while (k >= 0 && tags[k] !== 'verb' && !/^[.;:?!]$/.test(tokens[k]!.low)) { if (/^(modal|to|be|have|pron|sub)$/.test(tags[k]!)) return false; k--; }
  const forms = k >= 0 && tags[k] === 'verb' ? verbForms(tokens[k]!.low) : [];
  return forms.some(f => f.form === 'past') && !forms.some(f => f.form === 'base') && !/^(modal|to|have|be)$/.test(tags[k - 1] ?? '');
}
