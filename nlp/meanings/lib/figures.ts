import type { Clause } from '../../clauses/clause.ts';
import { valueAt } from '../../clauses/items.ts';
import type { Found, Sheet } from '../../types.ts';
import { singular } from '../../words/nouns.ts';
import { BESIDE, NAMED } from '../../words/quantities.ts';

/** A figure of a clause: its value and unit, where it stands, and the words before and after it that are its own. */
export interface Figure {
  value: number;
  unit?: string;
  /** Whole number without a unit of its own. */
  bare: boolean;
  /** Decimals written; three or more without a unit are inches to a machinist. */
  places: number;
  /** Said in thousandths, so that a bare number after it is thousandths too. */
  thou?: boolean;
  from: number;
  to: number;
  lead: [number, number];
  tail: [number, number];
}

const COUNTS_OFF = /^(no|number|num|nr|#|cylinder|cyl|pot|cap|cylinders|side|leg|station|bay|grade|class|type|model|size|mark)$/;

/** The figures of a clause in order, each with its own words: what stands before it after the last comma or "and", and what stands after it up to the next. */
export function figuresOf(sheet: Sheet, c: Clause): Figure[] {
  const values = heldTo(sheet, valuesIn(sheet, c));
  const out: Figure[] = [];
  values.forEach((f, n) => {
    const before = values[n - 1], after = values[n + 1];
    const from = before ? cutBetween(sheet, before, f) : c.from;
    const to = after ? cutBetween(sheet, f, after) : c.to;
    const taken = values[n] === undefined ? undefined : TAKEN_BACK.get(f);
    out.push({ ...valueOf(sheet, f), ...(taken && f.dim === 'number' ? { unit: taken, bare: false } : {}), from: f.from, to: f.to, lead: [from, f.from], tail: [f.to, to] });
  });
  return out;
}

function valueOf(sheet: Sheet, f: Found): Pick<Figure, 'value' | 'unit' | 'bare' | 'places' | 'thou'> {
  const said = sheet.tokens.slice(f.from, f.to).map(t => t.low).join('');
  const places = /^\d*\.(\d+)/.exec(said)?.[1]?.length ?? 0;
  if (f.dim === 'measure') return { value: f.value.value, unit: f.value.unit, bare: false, places, thou: /thou/.test(said) && !/inch/.test(said) };
  if (f.dim === 'percent') return { value: f.value.value, unit: '%', bare: false, places };
  const value = f.dim === 'thread' ? fraction(f.value.size) : f.dim === 'number' ? f.value.value : NaN;
  return { value, bare: true, places };
}
const fraction = (size: string): number => { const m = /^(\d+)\/(\d+)$/.exec(size); return m ? Number(m[1]) / Number(m[2]) : NaN; };

/** Units of figures that were taken back, kept for the bare number that took their place ("600 newton metres, no, 650"). */
const TAKEN_BACK = new WeakMap<Found, string>();
/** Without the figures that the speaker takes back in the same breath: "eight thou no nine thou". */
export function heldTo(sheet: Sheet, values: readonly Found[]): Found[] {
  return values.filter((f, n) => {
    const after = values[n + 1];
    if (!after || !/^(measure|number|percent)$/.test(f.dim)) return true;
    const between = sheet.tokens.slice(f.to, after.from).map(x => x.low).join(' ');
    const unit = f.dim === 'measure' ? f.value.unit : undefined, own = after.dim === 'measure' ? after.value.unit : undefined;
    if (!/^(, |\.\.\. |… |- )?(no|sorry|correction|rather|scratch that|make that|call it|hang on|i mean|wait)\b(?! (play|slack|wear|leak))/.test(between) || between.split(' ').length > 7 || unit !== undefined && own !== undefined && unit !== own) return true;
    if (unit && after.dim === 'number') TAKEN_BACK.set(after, unit);
    return false;
  });
}

/** Values that may be measured: no money, no days, no "number two" and "on one", no size that stands before its noun. */
function valuesIn(sheet: Sheet, c: Clause): Found[] {
  const out: Found[] = [];
  const sizes = c.items.flatMap(i => (i.np?.spec || i.np?.count !== undefined ? [[i.from, i.np.nameFrom, i.np.said] as const] : []));
  for (let i = c.from; i < c.to; i++) {
    const f = valueAt(sheet, i, c.to);
    if (!f) continue;
    const plain = f.dim === 'money' && !f.value.certainCurrency ? sheet.found.find(x => x.from === f.from && x.to === f.to && x.dim === 'number') : undefined;
    const v = plain ?? f;
    const named = sheet.tokens.slice(c.from, i).some((x, k) => NAMED.test(singular(x.low)) && k < i - c.from && !(sheet.tags[c.from + k + 1] === 'noun' && !NAMED.test(sheet.tokens[c.from + k + 1]!.low))); // "pressure plate" names no quantity
    const prev = sheet.tokens[i - 1]?.low ?? '', next = sheet.tokens[v.to]?.low ?? '';
    const ordinal = v.dim === 'number' && COUNTS_OFF.test(prev) || v.dim === 'number' && out.length > 0 && /^(on|in|for)$/.test(prev) && Number.isInteger(v.value.value) && v.value.value <= 12;
    const told = v.dim === 'number' && Number.isInteger(v.value.value) && v.value.value <= 12 && (sheet.tags[i - 1] === 'noun' && (valueAt(sheet, v.to, c.to) !== undefined || /^(reads?|measures?|is|was|at|shows?|says|has|had|gives?|mikes|mics)$/.test(next) && valueAt(sheet, v.to + 1, c.to) !== undefined) || /^(top|bottom|left|right|front|rear|back|other|first|last|inner|outer|middle|end|remaining|all)$/.test(prev) && (/^(be|have|verb)$/.test(sheet.tags[v.to] ?? '') || valueAt(sheet, v.to, c.to) !== undefined)); // "inlet 1 12 thou"
    const numbered = v.dim === 'number' && v.value.form !== 'digits' && Number.isInteger(v.value.value) && v.value.value <= 12 && out.length > 0 && measureAt(sheet, v.to, c.to) !== undefined && !/^(noun|adj)$/.test(sheet.tags[measureAt(sheet, v.to, c.to)!.to] ?? ''); // "one 63.4 mm, two the same, three 63.2"
    const place = prev === 'at' && out.length > 0 && !sheet.tokens.slice(out.at(-1)!.to, i).some(x => CUT.test(x.low));
    const sized = !named && sizes.some(([a, b, said]) => a <= i && i < b && !/^(hot|cold|cranking|warm|dead|even|free|full)\b/.test(said) && !BESIDE.test(said));
    const beyond = sheet.tokens.slice(v.to, v.to + 3).map(x => x.low).join(' ');
    if (v.dim === 'measure' && !named && /^(in|ft|mm|cm|m|L|gal|qt|kg|lb)$/.test(v.value.unit) && (/^(up|down|along|in|back|off|away|above|below|out) (from|the|of the)\b|^too \w+/.test(beyond) || /^of\b/.test(beyond) && /^(L|gal|qt|kg|lb|ft|m)$/.test(v.value.unit) && !sheet.tokens.slice(v.to + 1, v.to + 4).some(x => NAMED.test(x.low)))) { i = v.to - 1; continue; } // "pitted a foot up from the gland", "two litres of paint"
    const year = v.dim === 'number' && v.value.form === 'digits' && Number.isInteger(v.value.value) && v.value.value >= 1850 && v.value.value < 2100 && /^(of|in|from|since|about|around|circa)$/.test(prev) && /^(|[.,;)]|is|was|has|had)$/.test(next) && !NAMED.test(singular(sheet.tokens[i - 2]?.low ?? '')); // "for a machine of 1911"
    const bound = v.dim === 'measure' && /^(under|over|than|below|within|beyond|above)$/.test(prev) && out.every(x => x.to < i - 1); // "under an inch" is no figure
    const counts = bound || v.dim === 'number' && next === 'the' && /^same$/.test(sheet.tokens[v.to + 1]?.low ?? '') || v.dim === 'number' && (next === 'of' || /^(way|times|goes|tries|passes|attempts|places|spots|cuts|rounds|hits|stages|readings)$/.test(next) || next === 'at' && Number.isInteger(v.value.value) && v.value.value <= 12 && sheet.tags[v.to + 1] === 'num');
    if (/^(measure|percent|number|thread)$/.test(v.dim) && !ordinal && !told && !numbered && !year && !sized && !counts && !place && !(/^(by|within|for)$/.test(prev) && !(prev === 'by' && OUT_BY.test(sheet.tokens.slice(Math.max(0, i - 4), i).map(x => x.low).join(' ')))) && !(next === 'by' && valueAt(sheet, v.to + 1, c.to)) && next !== 'x' && !Number.isNaN(valueOf(sheet, v).value)) out.push(v);
    i = v.to - 1;
  }
  return out;
}

/** A measure that begins at that token. */
const measureAt = (sheet: Sheet, k: number, to: number): Found | undefined => { const f = valueAt(sheet, k, to); return f?.dim === 'measure' ? f : undefined; };

/** "proud by five", "out of round by three", "down by an eighth": by how much it is out. */
const OUT_BY = /(proud|out|out of \w+|down|up|short|long|high|low|over|under|bent|bowed|off|worn|tapered|oval|slack|undersize|oversize|thin|wide|narrow|tight|adrift|sunk|recessed|lifted|stretched|shrunk|closed|opened|dropped|moved|overhangs?|misaligned) by$/;

const CUT = /^(,|;|and|but|then|&|-|–|—|plus|\.\.\.|…|\(|\))$/;
/** Where the words of one figure end and those of the next begin: at the mark between them; without one, after the first one's "at the top" or "on one". */
function cutBetween(sheet: Sheet, a: Found, b: Found): number {
  for (let i = b.from - 1; i >= a.to; i--) if (CUT.test(sheet.tokens[i]!.low)) return i;
  let i = a.to;
  const low = (k: number): string => sheet.tokens[k]?.low ?? '';
  const own = /^(top|bottom|middle|hot|cold|front|rear|back|left|right|inner|outer)$/;
  if (own.test(low(i)) && (i + 1 === b.from || sheet.tags[i + 1] === 'adj' || /^(and)$/.test(low(i + 1)))) return i + 1;
  if (/^(at|on|in|of)$/.test(low(i))) {
    i++;
    while (i < b.from && /^(the|a|number|no)$/.test(low(i))) i++;
    return Math.min(i + 1, b.from);
  }
  return a.to;
}
