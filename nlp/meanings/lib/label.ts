import { partLike } from '../../clauses/name-kinds.ts';
import { phraseAt } from '../../dimensions/part/phrase.ts';
import { CONDITION } from '../../words/conditions.ts';
import { countValue } from '../../dimensions/part/count.ts';
import type { Sheet } from '../../types.ts';
import { nounClasses } from '../../words/nouns.ts';
import { NAMED } from '../../words/quantities.ts';
import { measurable } from './measurable.ts';
import { SIDES } from '../../words/sides.ts';
import { words } from './words.ts';
import { INSTRUMENT } from '../../words/instruments.ts';
import { SPOT, spotAhead, spotEnd, STATE } from './where-measured.ts';
import { besideFigure, quantityAt } from './quantity-at.ts';

/** The words beside a figure, read for what they say of it. */
export interface Label {
  /** The quantity by name: "end float", "bore". */
  what?: string;
  /** The part named here. */
  part?: string;
  /** "left", "front", "inlet": which one of what was named before. */
  which?: string;
  /** "at the top", "cold", "on number two": where or how it was measured. */
  where?: string;
  /** A figure of the book, not of the bench. */
  book?: boolean;
}

const BOOK = /^(limit|limits|spec|specs|book|manual|max|maximum|min|minimum|nominal|should|supposed|standard|std|allowed|tolerance|against|wants|versus|vs|calls|says|want|new)$/;
const WHICH = /^(left|right|front|rear|back|inner|outer|upper|lower|near|far|near ?side|off ?side|inlet|exhaust|intake|primary|secondary|first|second|third|fourth|other|rest|others|remaining|lh|rh|east|west|north|south|lefts|rights|fronts|rears|backs|inners|outers|uppers|lowers|inlets|exhausts|intakes|primaries|tops|bottoms|seconds|thirds|middles)$/;

/** "left front", "offside rear", "bottom two", "inlet 1": which ones of several. */
const FELLOW = /^(?:(?:left|right|near|off|nearside|offside|inner|outer|front|rear|back|upper|lower|top|bottom) (?:front|rear|back|hand|inner|outer|left|right|two|three|four|pair)|(?:inlet|exhaust|intake|cylinder) (?:\d|one|two|three|four|five|six))$/;

/** Reads the tokens [from, to) beside a figure. `tail`: they stand after it. */
export function labelOf(sheet: Sheet, from: number, to: number, tail = false): Label {
  const { tokens, tags } = sheet;
  const out: Label = {};
  const low = (k: number): string => tokens[k]?.low ?? '';
  const quantity = (k: number): { what: string; to: number } | undefined => quantityAt(sheet, k, to) ?? besideFigure(sheet, k, from, to, tail);
  for (let k = from; k < to; k++) {
    if (/^(mid|full|half)$/.test(low(k)) && /^(travel|stroke|span|lift|throw|lock|swing)$/.test(low(k + 1))) { out.where ??= words(sheet, k, k + 2); k++; continue; } // "fifteen thou mid travel"
    if (BOOK.test(low(k)) && !(low(k) === 'new' && tags[k + 1] === 'noun') && !(low(k) === 'says' && INSTRUMENT.test(low(k - 1)))) out.book = true;
    if (low(k) === 'left' && tags[k] === 'verb' || low(k) === 'bit' && low(k - 1) === 'a') continue;
    if (low(k) === 'off' && low(k + 1) === 'side') {
      let end = k + 2;
      while (end < to && /^(noun|adj)$/.test(tags[end]!) && !quantity(end)) end++;
      if (end > k + 2) Object.assign(out, named(sheet, [k, end])); else out.which ??= 'offside'; // "off side journal 34.99"
      k = end - 1;
      continue;
    }
    if (/^(near|nearly|close)$/.test(low(k)) && /^(enough|as|on|to)$/.test(low(k + 1))) { k++; continue; }
    if (tail && k === from && low(k) === 'left' && /^(at|on|in|of|before|to|,|\.|)$/.test(low(k + 1))) continue; // what is left of it
    const cylinder = numberedAt(sheet, k, to);
    if (cylinder) { out.part = cylinder.name; k = cylinder.to - 1; continue; }
    if (low(k) === 'under' && /^(load|full|the)$/.test(low(k + 1)) && /^(load|lamps?|lights?)$/.test(low(k + (low(k + 1) === 'load' ? 1 : 2)))) { const end = k + (low(k + 1) === 'load' ? 2 : 3); out.where ??= words(sheet, k, end); k = end - 1; continue; } // "8.9 under load"
    const running = low(k) === 'with' ? sheet.tokens.slice(k, Math.min(k + 5, to)).findIndex(x => /^(on|off|running|up|open|shut|closed|turning|cranking|dragging|draggin|connected|disconnected|engaged)$/.test(x.low)) : -1;
    if (running > 1) { out.where ??= words(sheet, k, k + running + 1); k += running; continue; }
    if (!tail && low(k) === 'with' && tags[k + 1] === 'det') { while (k + 1 < to && /^(det|adj|noun)$/.test(tags[k + 1]!)) k++; continue; } // "with the new gasket it stands…"
    const pair = tail ? undefined : betweenTwo(sheet, k, to);
    if (pair) { out.part ??= pair.name; k = pair.to - 1; continue; }
    const q = quantity(k);
    if (q) {
      const before = nounsBefore(sheet, from, k);
      const told = before && before[1] - before[0] > 2 && low(before[1] - 2) === "'s" && !nounClasses(low(before[1] - 1)).has('part') ? low(before[1] - 1) : undefined; // "the coil's primary resistance"
      const owner: [number, number] | undefined = told ? [before![0], before![1] - 2] : before;
      out.what ??= told ? `${told} ${q.what}` : q.what;
      if (owner && !out.part) Object.assign(out, named(sheet, owner));
      k = q.to - 1;
      continue;
    }
    if (tail && /^(across|over)$/.test(low(k)) && tags[k + 1] === 'det' && tags[k + 2] === 'noun') { out.where ??= words(sheet, k, k + 3); k += 2; continue; } // "across the pin"
    if (/^(at|by|across|over|round|around|before|after)$/.test(low(k)) || /^(on|in)$/.test(low(k)) && spotAhead(sheet, k + 1, to)) {
      const end = spotEnd(sheet, k + 1, to);
      if (end) { out.where ??= words(sheet, k, end); k = end - 1; continue; }
    }
    if (STATE.test(low(k)) && (tail || tags[k + 1] !== 'noun') && k > from - 1) { out.where ??= low(k); continue; }
    if (!['noun', 'adj', 'num'].includes(tags[k]!) && !(SIDES.has(low(k)) || WHICH.test(low(k)))) continue;
    let end = k;
    while (end < to && (['noun', 'adj', 'num', 'poss'].includes(tags[end]!) || WHICH.test(low(end)) || SIDES.has(low(end))) && !quantity(end)) end++;
    if (end > k + 1 && /^(limits?|specs?|max|min|nominal)$/.test(low(end - 1))) out.book = true; // "wear limit"
    const measured = end < to && quantity(end);
    if (end > k && !measured) { const n = named(sheet, [k, end]); if (!out.part && !out.which && !out.where || /^(of|on|in|for)$/.test(low(k - 1)) || tags[k - 1] === 'det' && /^(of|on|in|for)$/.test(low(k - 2))) Object.assign(out, n); }
    k = Math.max(k, end - 1);
    if (measured) k = end - 1;
  }
  return out;
}

/** "crown wheel to pinion", "piston to wall": what is measured lies between the two. */
function betweenTwo(sheet: Sheet, k: number, to: number): { name: string; to: number } | undefined {
  const nouns = (from: number): number => { let i = from; while (i < to && sheet.tags[i] === 'noun' && !quantityAt(sheet, i, to)) i++; return i; };
  const a = nouns(k), b = sheet.tokens[a]?.low === 'to' ? nouns(a + 1) : a;
  return a > k && b > a + 1 && b <= to && partLike(sheet, words(sheet, k, a)) ? { name: words(sheet, k, b), to: b } : undefined;
}

/** "number two", "no 3", "on one": one of the cylinders, by its number. */
function numberedAt(sheet: Sheet, k: number, to: number): { name: string; to: number } | undefined {
  const low = (n: number): string => (n < to ? sheet.tokens[n]?.low ?? '' : '');
  const count = countValue(low(k + 1));
  if (!/^(number|no|num|cylinder|cyl|pot|#|on|in|for)$/.test(low(k)) || count === undefined || count > 12 || /^(on|in|for)$/.test(low(k)) && (sheet.tags[k + 2] === 'noun' || sheet.tags[k + 2] === 'num')) return undefined;
  const whole = phraseAt(sheet, k, to);
  return whole && !/^(on|in|for|no)$/.test(low(k)) && whole.to > k + 2 ? { name: whole.name.replace(/ (bore|compression|gap|clearance)$/, ''), to: k + 2 } : { name: `${/^(cylinder|cyl|pot)$/.test(low(k)) ? 'cylinder' : 'number'} ${low(k + 1)}`, to: k + 2 };
}

/** The run of nouns that ends just before token `k`, from `from` at the earliest. */
function nounsBefore(sheet: Sheet, from: number, k: number): [number, number] | undefined {
  let a = k;
  while (a > from && (['noun', 'adj', 'num', 'poss'].includes(sheet.tags[a - 1]!) || SIDES.has(sheet.tokens[a - 1]!.low) || sheet.tags[a - 1] === 'verb' && nounClasses(sheet.tokens[a - 1]!.low).size > 0)) a--;
  return a < k ? [a, k] : undefined;
}

/** What a run of nouns is: a part, only which one of several, or only where on it. */
function named(sheet: Sheet, [from, to]: [number, number]): Label {
  const whole = words(sheet, from, to).replace(/^the /, '');
  if (SPOT.test(whole)) return { where: `at the ${whole}` };
  const said = words(sheet, from, to).replace(/ (one|ones|side|end)$/, '').replace(/ 's\b/g, "'s");
  if (WHICH.test(said) || FELLOW.test(said) || / ones?$/.test(whole) && /^(top|bottom|middle)$/.test(said)) return { which: said };
  if (SPOT.test(said)) return { where: `at the ${said}` };
  if (/^\w+ (side|face|edge)$/.test(whole) && !nounClasses(whole).has('part')) return { where: `on the ${whole}` }; // "on the thrust side"
  if (NAMED.test(said)) return { what: said };
  const p = phraseAt(sheet, from, to);
  const name = p && !p.stands ? p.name : said.replace(/^(new|old) /, '');
  return /\p{L}/u.test(name) && !/'s$/.test(name) && partLike(sheet, name) && !CONDITION.has(name) && !INSTRUMENT.test(name) && measurable(sheet, name) ? { part: name } : {};
}
