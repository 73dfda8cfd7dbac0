import { isKnownPart } from './known.ts';
import { CONDITION } from '../../words/conditions.ts';
import type { Sheet } from '../../types.ts';
import { isNumberWord } from '../../text/number-words.ts';
import { nounClasses } from '../../words/nouns.ts';
import { SIDES } from '../../words/sides.ts';
import { countValue } from './count.ts';
import { snap } from './snap.ts';

/** A noun phrase that names a thing. Tokens [from, to) hold all of it, with article, count and size; the name holds what is left of them. */
export interface Phrase {
  from: number;
  to: number;
  /** Index of the last noun. */
  head: number;
  /** Lower case, without article, possessive, count, size, "new", and states ("cracked"); the shop's own name where one is plainly meant. */
  name: string;
  /** The name as said, before it was snapped to a known one. */
  said: string;
  /** More than one known name fits: ask. */
  choices?: string[];
  known?: boolean;
  count?: number;
  /** Size that stands before the noun: "three eighths", "5/8-11". */
  spec?: string;
  /** "both", "all", "each", "no", "another"… */
  quant?: string;
  /** States said within it: "the cracked head". */
  states: string[];
  /** "the left one", "the others": stands for a thing named before; `name` is the telling word. */
  stands?: boolean;
  /** First token of the name itself. */
  nameFrom: number;
}

const QUANT = /^(both|all|each|every|no|another|any|either|neither|some|several|few|couple|half)$/;
const LEFT_OUT = /^(new|old|brand|spare|other|same|entire|whole|actual|proper|first|last|next|second|third|fourth|rest|lot)$/;

/**
 * The noun phrase that begins at token `i` and ends before `to`; undefined when none begins there.
 * New names are read from their shape: nouns in a row, with the sides and ordinals that tell one from another.
 */
export function phraseAt(sheet: Sheet, i: number, to = sheet.tokens.length): Phrase | undefined {
  const { tokens, tags } = sheet;
  const low = (k: number): string => (k < to ? tokens[k]?.low ?? '' : '');
  let k = i, quant: string | undefined, count: number | undefined;
  while (k < to && (tags[k] === 'det' || /^(of|the|my|his|her|its|our|their|your)$/.test(low(k)) && k > i)) { if (QUANT.test(low(k))) quant ??= low(k); k++; }
  if (low(k) === 'of' || low(k) === 'the') k++;
  if (low(k) === 'half' && low(k + 1) === 'dozen') { const next = k + (low(k + 2) === 'of' ? 3 : 2); const rest = phraseAt(sheet, next, to); if (rest) return { ...rest, from: i, count: 6 }; }
  const sized = sizeAt(sheet, k, to);
  if (sized) { count = sized.count; k = sized.to; }
  const nameFrom = k;
  let head = -1;
  while (k < to && inName(sheet, k, to) && !(head >= 0 && head === k - 1 && beginsAnew(sheet, i, k, to))) {
    if (tags[k] === 'noun' || tags[k] === 'pron') head = k;
    k++;
    if (tags[k - 1] === 'pron' || head === k - 1 && (materialAfter(sheet, k, to) || knownAfterTool(sheet, k, to))) break;
  }
  if (head >= 0 && head === nameFrom && k === head + 1 && /^(left|right|upper|lower|inner|outer|nearside|offside)$/.test(low(head)) && tags[nameFrom - 1] === 'det' && nameFrom > i && !/^(prep|prt)$/.test(tags[i - 1] ?? '') && /^(be|have|verb|adj|modal|do|neg)$/.test(tags[k] ?? '')) return standing(sheet, i, k, nameFrom, quant, count); // "the left is serviceable"
  if (head < 0) return standing(sheet, i, k, nameFrom, quant, count);
  const end = tailNumber(sheet, head, to);
  const said = nameOf(sheet, nameFrom, end);
  if (!said.name) return undefined;
  const stands = tags[head] === 'pron';
  const snapped = stands ? { name: said.name } : snap(said.name, sheet.ctx);
  return { from: i, to: end, head, said: said.name, nameFrom, states: said.states, ...snapped, ...(quant ? { quant } : {}), ...(count !== undefined ? { count } : {}), ...(sized?.spec ? { spec: sized.spec } : {}), ...(stands ? { stands } : {}) };
}

/** "out of the truck um bell housing bolts are…", "over the compressor clutch disc is soaked": where speech runs on, the next clause's subject is no part of this name. */
function beginsAnew(sheet: Sheet, from: number, k: number, to: number): boolean {
  const { tokens, tags } = sheet;
  if (SIDES.has(tokens[k]!.low) && /^ones?$/.test(tokens[k + 1]?.low ?? '') || tokens[k]!.pause && tags[k] === 'num' || tokens[k]!.low === 'number' && tags[k + 1] === 'num' && /^(be|have)$/.test(tags[k + 2] ?? '')) return true;
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

/** "…a sledge piston is in a sack": a tool ends its phrase where one of the shop's own parts begins. */
const knownAfterTool = (sheet: Sheet, k: number, to: number): boolean => {
  if (k >= to || sheet.tags[k] !== 'noun') return false;
  const before = nounClasses(sheet.tokens[k - 1]!.low), next = sheet.tokens[k]!.low;
  return before.has('tool') && !before.has('part') && isKnownPart(sheet.ctx.parts, next) && !isKnownPart(sheet.ctx.parts, `${sheet.tokens[k - 1]!.low} ${next}`);
};

/** "rivets copper three sixteenths": what a plural is made of, said after it, is its specification. */
const materialAfter = (sheet: Sheet, k: number, to: number): boolean =>
  k < to && /[^s]s$/.test(sheet.tokens[k - 1]!.low) && /^(copper|brass|steel|stainless|bronze|white|oak|ash|leather|rubber|nylon|galvanised|galvanized|zinc|aluminium|fibre|cork|grade|class)$/.test(sheet.tokens[k]!.low)
  && (sheet.tags[k + 1] === 'num' || sheet.tags[k + 1] === 'mark' || k + 1 >= to || sheet.tags[k + 1] === 'noun');

/** "number two cylinder" is inside; "cylinder 2" and "valve number three" end in a number. */
function tailNumber(sheet: Sheet, head: number, to: number): number {
  const { tokens } = sheet;
  const numbered = /^(number|no|cylinder|leg|section|bay)$/.test(tokens[head]!.low);
  return numbered && head + 1 < to && sheet.tags[head + 1] === 'num' && Number.isInteger(Number(countValue(tokens[head + 1]!.low))) && !nounClasses(tokens[head + 2]?.low ?? '').size && !/^(and|inch|inches|thou|mm|foot|psi|point|hours?|by|quarter|half)$/.test(tokens[head + 2]?.low ?? '') ? head + 2 : head + 1;
}

/** "points pitted condenser cracked": a state right behind a noun ends it where the next noun has its own. */
function statedAfter(sheet: Sheet, k: number, to: number): boolean {
  let i = k + 1;
  while (i < to && (sheet.tags[i] === 'noun' || sheet.tags[i] === 'adj' && SIDES.has(sheet.tokens[i]!.low) || sheet.tags[i] === 'pron' && /^ones?$/.test(sheet.tokens[i]!.low))) i++;
  return i > k + 1 && (i >= to || sheet.tags[i] === 'mark' || sheet.tags[i] === 'be' || sheet.tags[i] === 'adj' && CONDITION.has(sheet.tokens[i]!.low) || sheet.tags[i] === 'verb') && i < to && sheet.tags[i] !== 'mark';
}

const COLOUR = /^(red|green|blue|black|white|grey|gray|yellow|orange|brown|silver|cream|maroon)$/;
function inName(sheet: Sheet, k: number, to: number): boolean {
  const { tokens, tags } = sheet, tag = tags[k], low = tokens[k]!.low;
  if (tag === 'noun' && COLOUR.test(low) && tags[k - 1] === 'noun' && tags[k + 1] !== 'noun') return false; // "painted the rake wheels red"
  if (tag === 'noun') return true;
  const more = k + 1 < to && (['noun', 'adj', 'pron', 'num', 'poss'].includes(tags[k + 1]!));
  if (tag === 'pron') return /^(one|ones)$/.test(low);
  if (tag === 'adj' && /^(short|low)$/.test(low) && tags[k + 1] === 'num') return false;
  if (tag === 'adj') return more && !(k > 0 && tags[k - 1] === 'noun' && CONDITION.has(low) && !SIDES.has(low) && !nounClasses(`${low} ${tokens[k + 1]!.low}`).size && statedAfter(sheet, k, to));
  if (tag === 'poss') return more;
  if (tag === 'num') return more && isNumberWord(low) && tags[k + 1] === 'noun' && !(tags[k - 1] === 'noun' && nounClasses(tokens[k - 1]!.low).has('part') && !/^(cylinder|leg|section|bay)$/.test(tokens[k - 1]!.low));
  return false;
}

/** A count, then perhaps a size, before a noun: "three 3/8 bolts", "two dozen hose clamps", "a half inch tap". */
function sizeAt(sheet: Sheet, i: number, to: number): { to: number; count?: number; spec?: string } | undefined {
  const { tokens, tags, found } = sheet;
  if (tags[i] !== 'num' && !/^(pair|dozen|set|couple)$/.test(tokens[i]?.low ?? '')) return undefined;
  const size = found.filter(f => f.from === i && f.to < to && (f.dim === 'thread' || f.dim === 'measure' || f.dim === 'number' && (f.value.form === 'fraction' || f.value.form === 'mixed'))).sort((a, b) => b.to - a.to)[0];
  const by = size ? sizeBy(sheet, size.to, to) : undefined;
  if (size && by !== undefined && ['noun', 'adj'].includes(tags[by]!)) return { to: by, spec: textOf(sheet, i, by) };
  if (size && tags[size.to] !== 'num' && ['noun', 'adj'].includes(tags[size.to]!)) return { to: size.to, spec: textOf(sheet, i, size.to) };
  if (found.some(f => f.from <= i && i < f.to && (f.dim === 'money' || f.dim === 'span' || f.dim === 'measure' || f.dim === 'when' || f.dim === 'percent') && f.sure === 'certain')) return undefined;
  const n = found.filter(f => f.from === i && f.dim === 'number' && f.to < to).sort((a, b) => b.to - a.to)[0];
  const end = n ? n.to : i + 1;
  const value = n && n.dim === 'number' ? n.value.value : countValue(tokens[i]!.low);
  if (value === undefined) return undefined;
  if (/^[\d/.]+$/.test(tokens[i]!.low) && tokens[i + 1]?.low === 'in' && tokens[i + 1]!.start === tokens[i]!.end && tags[i + 2] === 'noun') return { to: i + 2, spec: textOf(sheet, i, i + 2) }; // "3in screws"
  if (/^\d{4,}$/.test(tokens[i]!.low) && tags[end] === 'noun') return { to: end, spec: tokens[i]!.text }; // "6203 bearings" are known by their number
  const next = sizeAt(sheet, end, to);
  if (next?.spec) return { to: next.to, count: value, spec: next.spec };
  const after = tokens[end]?.low ?? '';
  if (/^(pair|pairs|dozen|set|sets)$/.test(after)) return { to: tokens[end + 1]?.low === 'of' ? end + 2 : end + 1, count: after.startsWith('pair') ? value * 2 : after === 'dozen' ? value * 12 : value };
  const tag = tags[end];
  if (tag !== 'noun' && tag !== 'adj' && tag !== 'pron') return undefined;
  const hyphened = sheet.text[tokens[end - 1]!.end] === '-';
  if (hyphened || !Number.isInteger(value) || tag === 'noun' && value > 1 && !pluralAhead(sheet, end, to)) return undefined;
  return { to: end, count: value };
}

/** "three eighths by two bolts": where the second dimension of a size ends, when a noun follows it. */
function sizeBy(sheet: Sheet, from: number, to: number): number | undefined {
  if (!/^(by|x)$/.test(sheet.tokens[from]?.low ?? '')) return undefined;
  const n = sheet.found.filter(f => f.from === from + 1 && f.to < to && (f.dim === 'number' || f.dim === 'measure')).sort((a, b) => b.to - a.to)[0];
  return n?.to;
}

/** Whether the noun run from here ends in a plural, so that a number before it counts. */
function pluralAhead(sheet: Sheet, from: number, to: number): boolean {
  let k = from;
  while (k + 1 < to && (sheet.tags[k + 1] === 'noun' || sheet.tags[k + 1] === 'pron' && sheet.tags[k] === 'adj' || sheet.tags[k] === 'adj' && sheet.tags[k + 1] === 'adj')) k++;
  const low = sheet.tokens[k]!.low;
  return /s$/.test(low) && !/ss$/.test(low) || /^(teeth|feet|men|people|knives|pair|dozen|each|apiece)$/.test(low);
}

/** "the left", "the other", "both", "the others": a phrase without a noun of its own. */
function standing(sheet: Sheet, from: number, to: number, nameFrom: number, quant?: string, count?: number): Phrase | undefined {
  const { tokens, tags } = sheet;
  const word = tokens[nameFrom]?.low ?? '';
  const telling = (SIDES.has(word) || /^(other|others|same|rest|remaining|lot|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|last|top|bottom)$/.test(word)) && (nameFrom > from && tags[nameFrom - 1] === 'det' || word === 'other' && nameFrom === from && tags[nameFrom + 1] === 'num');
  const more = telling && tags[nameFrom + 1] === 'num' && countValue(tokens[nameFrom + 1]!.low) !== undefined && tags[nameFrom + 2] !== 'num' ? countValue(tokens[nameFrom + 1]!.low) : undefined;
  if (telling && more !== undefined) return { from, to: nameFrom + 2, head: nameFrom, name: word, said: word, nameFrom, states: [], stands: true, count: more };
  if (telling) return { from, to: nameFrom + 1, head: nameFrom, name: word, said: word, nameFrom, states: [], stands: true, ...(quant ? { quant } : {}), ...(count !== undefined ? { count } : {}) };
  if (quant && /^(both|all|each|neither|either)$/.test(quant) && to <= nameFrom) return { from, to: nameFrom, head: nameFrom - 1, name: quant, said: quant, nameFrom, states: [], stands: true, quant };
  return undefined;
}

/** States that a part is in; plain adjectives ("bright bar", "flat belt") belong to the name. */
const STATEFUL = /(ed|en|wn|rn|rst|ot|ty|ky|ly)$|^(bent|split|good|bad|fine|rusty|dodgy|iffy|knackered|greasy|oily|dirty|filthy|loose|stuck|dead|weak|tired|nice|decent|poor|original|wrong|correct|odd|dull|lovely|beautiful|gone|missing|shot|clean|rough|sound)$/;

export const textOf = (sheet: Sheet, from: number, to: number): string =>
  (to > from ? sheet.text.slice(sheet.tokens[from]!.start, sheet.tokens[to - 1]!.end) : '');

/** The words of a name, joined as they were written; leading "new", "old" and states are left out of it. */
export function nameOf(sheet: Sheet, from: number, to: number): { name: string; states: string[] } {
  const { tokens, tags, text } = sheet;
  const states: string[] = [];
  let name = '', last = -1;
  for (let k = from; k < to; k++) {
    const low = tokens[k]!.low;
    const leading = tags[k] === 'adj' && k + 1 < to;
    if (leading && CONDITION.has(low) && STATEFUL.test(low) && low !== 'green' && !SIDES.has(low) && !nounClasses(`${low} ${tokens[k + 1]!.low}`).size) { states.push(low); continue; }
    if (leading && LEFT_OUT.test(low) && !/^(other|spare|first|second|third|fourth|last)$/.test(low)) continue;
    if (tags[k] === 'noun' && name === '' && /^(new|old|brand)$/.test(low) && k + 1 < to) continue;
    if (tags[k] === 'det' || /^(the|a|an)$/.test(low)) continue;
    if (low === "'s" && tags[k] === 'poss') { name += "'s"; last = k; continue; }
    const gap = last >= 0 ? text.slice(tokens[last]!.end, tokens[k]!.start) : '';
    name += (name === '' ? '' : last === k - 1 && (gap === '-' || gap === '') ? gap : ' ') + low;
    last = k;
  }
  return { name: name.replace(/^(new|old) (?=.)/, ''), states };
}

/** The first thing named within [from, to). */
export function partPhrase(sheet: Sheet, from: number, to: number): Phrase | undefined {
  for (let k = from; k < to; k++) {
    if (!['det', 'adj', 'noun', 'num'].includes(sheet.tags[k]!)) continue;
    const p = phraseAt(sheet, k, to);
    if (p) return p;
  }
  return undefined;
}
