import { CONDITION } from '../../words/conditions.ts';
import { isKnownPart } from './known.ts';
import type { Sheet } from '../../types.ts';
import { nounClasses } from '../../words/nouns.ts';
import { SIDES } from '../../words/sides.ts';
import { countValue } from './count.ts';
import { beginsAnew, inName, knownAfterTool, materialAfter, paintAfter, tailNumber } from './name-end.ts';
import { numberedBefore, numberList } from './number-list.ts';
import { sizeAt } from './size-at.ts';
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
  const several = k === i ? numberList(sheet, k, to) : undefined, of = several !== undefined && /^(be|have|verb|adj|modal)$/.test(tags[several] ?? '') ? numberedBefore(sheet, k) : undefined;
  if (several !== undefined && of !== undefined) { const name = `${of} ${tokens.slice(k, several).map(t => t.low).join(' ').replace(/ ,/g, ',')}`; return { from: i, to: several, head: several - 1, name, said: name, nameFrom: k, states: [] }; } // "One and four are fine"
  const sized = sizeAt(sheet, k, to);
  if (sized) { count = sized.count; k = sized.to; }
  const nameFrom = k;
  let head = -1;
  while (k < to && !(head >= 0 && TIMES.test(low(k))) && inName(sheet, k, to) && !(head >= 0 && head === k - 1 && (beginsAnew(sheet, i, k, to) || numberList(sheet, k, to) !== undefined))) {
    if (tags[k] === 'noun' || tags[k] === 'pron') head = k;
    k++;
    if (tags[k - 1] === 'pron' || head === k - 1 && (materialAfter(sheet, k, to) || paintAfter(sheet, k, to) || knownAfterTool(sheet, k, to))) break;
  }
  if (head >= 0 && head === nameFrom && k === head + 1 && /^(left|right|upper|lower|inner|outer|nearside|offside)$/.test(low(head)) && tags[nameFrom - 1] === 'det' && nameFrom > i && !/^(prep|prt)$/.test(tags[i - 1] ?? '') && /^(be|have|verb|adj|modal|do|neg)$/.test(tags[k] ?? '')) return standing(sheet, i, k, nameFrom, quant, count); // "the left is serviceable"
  if (head < 0) return standing(sheet, i, k, nameFrom, quant, count);
  const end = tags[head + 1] === 'poss' && k === head + 2 ? k : tailNumber(sheet, head, to); // "at the welder's"
  const said = nameOf(sheet, nameFrom, end), times = end === k ? timesAt(low, k) : undefined;
  if (!said.name) return undefined;
  const side = /^(top|bottom|upper|lower|left|right|front|rear|back|inner|outer|near|off|far|middle|(?:left|right) hand|(?:near|off) side|long|short|big|small) (pair|set|lot|row|bank)$/.exec(said.name);
  if (side && tokens[end]?.low !== 'of' && !isKnownPart(sheet.ctx.parts, said.name)) return { from: i, to: end, head, name: side[1]!, said: `${side[1]} ones`, nameFrom, states: [], stands: true }; // "rods: top pair straight"
  const stands = tags[head] === 'pron';
  const snapped = stands ? { name: said.name } : snap(said.name, sheet.ctx);
  count ??= times?.count;
  return { from: i, to: times?.to ?? end, head, said: said.name, nameFrom, states: said.states, ...snapped, ...(quant ? { quant } : {}), ...(count !== undefined ? { count } : {}), ...(sized?.spec ? { spec: sized.spec } : {}), ...(stands ? { stands } : {}) };
}

/** "washers x6". */
const TIMES = /^x\d{1,3}$/;
/** How many, told after the name: "igniter points x2", "split pins x 10". */
function timesAt(low: (k: number) => string, k: number): { count: number; to: number } | undefined {
  return TIMES.test(low(k)) ? { count: Number(low(k).slice(1)), to: k + 1 } : low(k) === 'x' && /^\d{1,3}$/.test(low(k + 1)) && low(k + 2) !== 'x' ? { count: Number(low(k + 1)), to: k + 2 } : undefined;
}

/** "the left", "the other", "both", "the others": a phrase without a noun of its own. */
function standing(sheet: Sheet, from: number, to: number, nameFrom: number, quant?: string, count?: number): Phrase | undefined {
  const { tokens, tags } = sheet;
  const word = tokens[nameFrom]?.low ?? '';
  if (word === 'right' && tokens[nameFrom - 1]?.low === 'all') return undefined; // "seems all right"
  const telling = (SIDES.has(word) || /^(other|others|same|rest|remaining|lot|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|last|top|bottom)$/.test(word)) && (nameFrom > from && tags[nameFrom - 1] === 'det' || word === 'other' && nameFrom === from && tags[nameFrom + 1] === 'num');
  const more = telling && tags[nameFrom + 1] === 'num' && countValue(tokens[nameFrom + 1]!.low) !== undefined && tags[nameFrom + 2] !== 'num' ? countValue(tokens[nameFrom + 1]!.low) : undefined;
  if (telling && more !== undefined) return { from, to: nameFrom + 2, head: nameFrom, name: word, said: word, nameFrom, states: [], stands: true, count: more };
  if (telling) return { from, to: nameFrom + 1, head: nameFrom, name: word, said: word, nameFrom, states: [], stands: true, ...(quant ? { quant } : {}), ...(count !== undefined ? { count } : {}) };
  if (quant && /^(both|all|each|neither|either)$/.test(quant) && to <= nameFrom) return { from, to: nameFrom, head: nameFrom - 1, name: quant, said: quant, nameFrom, states: [], stands: true, quant };
  return undefined;
}

/** States that a part is in; plain adjectives ("bright bar", "flat belt") belong to the name. */
const STATEFUL = /(ed|en|wn|rn|rst|ot|ty|ky|ly)$|^(bent|split|good|bad|fine|rusty|dodgy|iffy|knackered|greasy|oily|dirty|filthy|loose|stuck|dead|weak|tired|nice|decent|poor|original|wrong|correct|odd|dull|lovely|beautiful|gone|missing|shot|clean|rough|sound)$/;

/** The words of a name, joined as they were written; leading "new", "old" and states are left out of it. */
function nameOf(sheet: Sheet, from: number, to: number): { name: string; states: string[] } {
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
    const gap = last < 0 ? '' : tokens[k]!.start < tokens[last]!.end ? ' ' : text.slice(tokens[last]!.end, tokens[k]!.start); // two words may be written in one: "LF"
    name += (name === '' ? '' : last === k - 1 && (gap === '-' || gap === '') ? gap : ' ') + low;
    last = k;
  }
  return { name: name.replace(/^(new|old) (?=.)/, ''), states };
}
