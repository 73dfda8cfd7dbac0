import { CONDITION } from '../../words/conditions.ts';
import { isNumberWord } from '../../text/number-words.ts';
import type { Sheet } from '../../types.ts';
import { nounClasses, singular } from '../../words/nouns.ts';
import { SIDES } from '../../words/sides.ts';
import { verbForms } from '../../words/verbs.ts';
import { countValue } from './count.ts';
import { isKnownPart } from './known.ts';
import { numberList } from './number-list.ts';

/** "out of the truck um bell housing bolts are…", "over the compressor clutch disc is soaked": where speech runs on, the next clause's subject is no part of this name. */
export function beginsAnew(sheet: Sheet, from: number, k: number, to: number): boolean {
  const { tokens, tags } = sheet;
  if (SIDES.has(tokens[k]!.low) && /^ones?$/.test(tokens[k + 1]?.low ?? '') || tokens[k]!.pause && (tags[k] === 'num' || SIDES.has(tokens[k]!.low) || /^(det|poss)$/.test(tags[k + 1] ?? '') && verbForms(tokens[k]!.low).some(f => f.form === 'base')) || tokens[k]!.low === 'number' && tags[k + 1] === 'num' && /^(be|have)$/.test(tags[k + 2] ?? '') && saysAlready(sheet, from)) return true;
  if (tags[k] === 'pron' || from > 0 && !/^(prep|prt)$/.test(tags[from - 1]!) && !tokens[k]!.pause) return false;
  let end = k;
  while (end < to && inName(sheet, end, to)) end++;
  const low = (a: number, b: number): string => tokens.slice(a, b).map(t => t.low).join(' ');
  if (!/^(be|have|modal)$/.test(tags[end] ?? '') && !(tags[end] === 'verb' && tokens[k]!.pause)) return false;
  const before = low(from, k).replace(/^(the|a|an|my|his|her|its|our|this|that) /, '');
  if (nounClasses(`${before} ${low(k, end)}`).size || nounClasses(`${tokens[k - 1]!.low} ${low(k, end)}`).size) return false; // "water pump" where the shop has "pump"
  if (isKnownPart(sheet.ctx.parts, `${before} ${low(k, end)}`) || isKnownPart(sheet.ctx.parts, `${tokens[k - 1]!.low} ${low(k, end)}`)) return false;
  return tokens[k]!.pause ? nounClasses(tokens[k - 1]!.low).size > 0 : isKnownPart(sheet.ctx.parts, low(k, end)) && (nounClasses(before).size > 0 || end - k > 1);
}

/** Whether the sentence has its verb before `from`: then what has a number of its own begins anew ("pulled the rings number two is…"), else it is the end of a name ("tine bar number three is cracked"). */
function saysAlready(sheet: Sheet, from: number): boolean {
  let k = from - 1;
  while (k >= 0 && !/^[.;:,?!]$/.test(sheet.tokens[k]!.low) && sheet.tags[k] !== 'cc') { if (/^(verb|be|have|modal|do|prt|adj)$/.test(sheet.tags[k]!)) return true; k--; }
  return false;
}

/** "…a sledge piston is in a sack": a tool ends its phrase where one of the shop's own parts begins. */
export const knownAfterTool = (sheet: Sheet, k: number, to: number): boolean => {
  if (k >= to || sheet.tags[k] !== 'noun') return false;
  const before = nounClasses(sheet.tokens[k - 1]!.low), next = sheet.tokens[k]!.low;
  return before.has('tool') && !before.has('part') && isKnownPart(sheet.ctx.parts, next) && !isKnownPart(sheet.ctx.parts, `${sheet.tokens[k - 1]!.low} ${next}`);
};

/** "rivets copper three sixteenths": what a plural is made of, said after it, is its specification. */
export const materialAfter = (sheet: Sheet, k: number, to: number): boolean =>
  k < to && /[^s]s$/.test(sheet.tokens[k - 1]!.low) && /^(copper|brass|steel|stainless|bronze|white|oak|ash|leather|rubber|nylon|galvanised|galvanized|zinc|aluminium|fibre|cork|grade|class)$/.test(sheet.tokens[k]!.low)
  && (sheet.tags[k + 1] === 'num' || sheet.tags[k + 1] === 'mark' || k + 1 >= to || sheet.tags[k + 1] === 'noun');

/** "painted the mudguards red oxide": the paint after a part is none of its name. */
export const paintAfter = (sheet: Sheet, k: number, to: number): boolean =>
  k + 1 < to && COLOUR.test(sheet.tokens[k]!.low) && /^(oxide|primer|enamel|undercoat|topcoat|gloss|paint|lacquer)$/.test(sheet.tokens[k + 1]!.low) && nounClasses(sheet.tokens[k - 1]!.low).has('part');

/** "number two cylinder" is inside; "cylinder 2" and "valve number three" end in a number, "sleeves two and three" in several. */
export function tailNumber(sheet: Sheet, head: number, to: number): number {
  const { tokens } = sheet, several = singular(tokens[head]!.low) !== tokens[head]!.low && !/^(numbers|hours|hrs|days|weeks|months|years|miles)$/.test(tokens[head]!.low) ? numberList(sheet, head + 1, to) : undefined;
  if (several !== undefined) return several;
  const numbered = /^(number|no|cylinder|leg|section|bay)$/.test(tokens[head]!.low);
  return numbered && head + 1 < to && sheet.tags[head + 1] === 'num' && Number.isInteger(Number(countValue(tokens[head + 1]!.low))) && !nounClasses(tokens[head + 2]?.low ?? '').size && !/^(and|inch|inches|thou|mm|foot|psi|point|hours?|by|quarter|half)$/.test(tokens[head + 2]?.low ?? '') ? head + 2 : head + 1;
}

/** "points pitted condenser cracked": a state right behind a noun ends it where the next noun has its own. */
function statedAfter(sheet: Sheet, k: number, to: number): boolean {
  let i = k + 1;
  while (i < to && (sheet.tags[i] === 'noun' || sheet.tags[i] === 'adj' && SIDES.has(sheet.tokens[i]!.low) || sheet.tags[i] === 'pron' && /^ones?$/.test(sheet.tokens[i]!.low))) i++;
  return i > k + 1 && (i >= to || sheet.tags[i] === 'mark' || sheet.tags[i] === 'be' || sheet.tags[i] === 'adj' && CONDITION.has(sheet.tokens[i]!.low) || sheet.tags[i] === 'verb') && i < to && sheet.tags[i] !== 'mark';
}

/** Colours of paint. */
export const COLOUR = /^(red|green|blue|black|white|grey|gray|yellow|orange|brown|silver|cream|maroon)$/;
/** Whether the word at `k` can be a word of a name. */
export function inName(sheet: Sheet, k: number, to: number): boolean {
  const { tokens, tags } = sheet, tag = tags[k], low = tokens[k]!.low;
  if (tag === 'noun' && COLOUR.test(low) && tags[k - 1] === 'noun' && tags[k + 1] !== 'noun') return false; // "painted the rake wheels red"
  if (tags[k - 1] === 'poss' && /^(getting|being)$/.test(low)) return false; // "at the grinder's getting done"
  if (tag === 'noun') return true;
  const more = k + 1 < to && (['noun', 'adj', 'pron', 'num', 'poss'].includes(tags[k + 1]!));
  if (tag === 'pron') return /^(one|ones)$/.test(low) && !(tags[k - 1] === 'noun' && tokens[k + 1]?.low === 'of'); // "off the bowl, one of the bolts…"
  if (tag === 'adj' && /^(short|low|hot|cold|warm|wet|dry|cranking)$/.test(low) && tags[k + 1] === 'num') return false;
  if (tag === 'adj') return more && !(k > 0 && tags[k - 1] === 'noun' && CONDITION.has(low) && !SIDES.has(low) && !nounClasses(`${low} ${tokens[k + 1]!.low}`).size && statedAfter(sheet, k, to));
  if (tag === 'poss') return more || tags[k + 1] !== 'noun' && low === "'s";
  if (tag === 'num') return more && isNumberWord(low) && tags[k + 1] === 'noun' && !(tags[k - 1] === 'noun' && nounClasses(tokens[k - 1]!.low).has('part') && !/^(cylinder|leg|section|bay)$/.test(tokens[k - 1]!.low));
  return false;
}
