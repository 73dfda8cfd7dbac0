import type { Tag, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import * as g from '../words/grammar.ts';
import { nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { SIDES } from '../words/sides.ts';
import { TRADE_ENDING } from '../words/sources.ts';
import { verbForms } from '../words/verbs.ts';
import { lowAt, nominal } from './nominal.ts';
import { isNumberWord } from './number-words.ts';

/** "'s" owns when a noun phrase follows that a verb or preposition closes; otherwise it is "is" or "has". */
export function cliticTag(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag {
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
