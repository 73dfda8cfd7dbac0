import type { Clause } from '../../clauses/clause.ts';
import type { Found, MoneyValue, Sheet } from '../../types.ts';
import type { Telling } from '../telling.ts';

/** What a stretch says of money: the price with what it is per, and what comes on top. */
export interface Sums { price?: number; per?: MoneyValue['per']; shipping?: number; core?: number; tax?: number; miles?: number; at?: number; to?: number }

/** Money in the tokens [from, to). `loose` lets a bare number be the price, where the verb or the shape of the clause makes money of it. */
export function sumsIn(t: Telling, from: number, to: number, loose: boolean): Sums {
  const found = t.sheet.found.filter((f): f is Extract<Found, { dim: 'money' }> => f.dim === 'money' && f.from >= from && f.to <= to)
    .sort((a, b) => Number(b.sure === 'certain') - Number(a.sure === 'certain') || (b.to - b.from) - (a.to - a.from));
  const kept: Extract<Found, { dim: 'money' }>[] = [];
  for (const f of found) if (!kept.some(k => f.from < k.to && k.from < f.to)) kept.push(f);
  const out: Sums = {};
  for (const f of kept.sort((a, b) => a.from - b.from)) {
    const role = f.value.role ?? roleBeside(t.sheet, f);
    if (role === 'shipping') out.shipping ??= f.value.value;
    else if (role === 'core') out.core ??= f.value.value;
    else if (role === 'tax') continue;
    else if (f.sure === 'certain' || f.value.per || loose) {
      if (out.price !== undefined || f.sure !== 'certain' && forTheSo(t, f)) continue;
      if (f.sure !== 'certain' && !f.value.per && t.sheet.tags[f.to] === 'noun' && kept.some(o => o.from > f.from && !o.value.role && (o.sure === 'certain' || o.value.per))) continue; // "kits for two rollers, 106 the pair"
      out.price = f.value.value; out.per = f.value.per; out.at = f.from; out.to = f.to;
    }
  }
  if (out.price === undefined && loose) inPounds(t, from, to, out);
  if (out.price === undefined && loose) bareNumber(t, from, to, out);
  if (out.shipping === undefined) for (const f of t.sheet.found) if (f.dim === 'number' && f.from >= from && f.to <= to && roleBeside(t.sheet, f) === 'shipping' && f.from !== out.at) out.shipping = f.value.value;
  if (/\b(free (shipping|post|postage|delivery|carriage)|no (shipping|postage|carriage|delivery|freight)|delivered|(post|postage|carriage|shipping|delivery) (is )?(free|included|paid)|delivered free|post free|carriage paid)\b/.test(t.sheet.tokens.slice(from, to).map(x => x.low).join(' '))) out.shipping ??= 0;
  if (out.per === undefined && /\b(each|apiece|a piece|per piece)\b/.test(t.sheet.tokens.slice(from, to).map(x => x.low).join(' ')) && out.price !== undefined) out.per = 'each';
  if (out.per === undefined && out.to !== undefined && unitAt(t, out.to)) out.per = 'each';
  const pct = t.sheet.found.find(f => f.dim === 'percent' && f.from >= from && f.to <= to);
  if (pct?.dim === 'percent' && /tax|vat/.test(t.sheet.tokens.slice(from, to).map(x => x.low).join(' '))) out.tax = pct.value.value;
  return out;
}

/** Whether "a bearing", "per block" stands at token `k`, right behind a sum: what the sum is for one of, and no thing of its own. */
export const unitAt = (t: Telling, k: number): boolean => /^(an?|per)$/.test(t.sheet.tokens[k]?.low ?? '') && t.sheet.tags[k + 1] === 'noun' && !/^(day|week|month|time|go|hour|mile|lot|set|pair|bit)$/.test(t.sheet.tokens[k + 1]!.low)
  && t.sheet.found.some(f => (f.dim === 'money' || f.dim === 'number') && f.to === k && f.from < k);

/** What a figure is for besides a price, by the words beside it. */
export const roleBeside = (sheet: Sheet, f: Found): MoneyValue['role'] | undefined => {
  const after = sheet.tokens.slice(f.to, f.to + 3).map(x => x.low).join(' '), before = sheet.tokens.slice(Math.max(0, f.from - 3), f.from).map(x => x.low).join(' ');
  if (/^(post|postage|shipping|carriage|delivery|freight) (is |was )?(free|paid|included|inclusive)\b/.test(after)) return undefined;
  if (/^(more |extra )?(for |in |of )?(the |it )?(ship|shipping|postage|post|carriage|delivery|freight|p&p|to ship|to post|courier)\b/.test(after) || /\b(shipping|postage|carriage|delivery|freight|post)( is| of| was|'s| at|,)?( another| about)?$/.test(before)) return 'shipping';
  if (/^(dollar |quid )?core\b/.test(after) || /\bcore( charge)?( of| is)?$/.test(before)) return 'core';
  return undefined;
};

/** "thirty-six pound to the diesel man": pounds that are not said to be money are, where a price stands. */
function inPounds(t: Telling, from: number, to: number, out: Sums): void {
  const f = t.sheet.found.find(x => x.dim === 'measure' && x.value.unit === 'lb' && x.from >= from && x.to <= to && /^pounds?$/.test(t.sheet.tokens[x.to - 1]!.low) && t.sheet.tags[x.to] !== 'noun' && t.sheet.tokens[x.to]?.low !== 'of');
  if (f?.dim === 'measure') { out.price = f.value.value; out.at = f.from; out.to = f.to; }
}

/** "thirty-six pound for the three": how many it is for. */
const forTheSo = (t: Telling, f: Found): boolean => /^for$/.test(t.sheet.tokens[f.from - 2]?.low ?? '') && t.sheet.tokens[f.from - 1]?.low === 'the';

/** A whole or cents number that is nothing else: not a count before a noun, a size, a day or a measure. */
function bareNumber(t: Telling, from: number, to: number, out: Sums): void {
  const n = t.sheet.found.filter(f => f.dim === 'number' && f.from >= from && f.to <= to && f.value.value >= 1 && !(f.value.value === 1 && /^one$/.test(t.sheet.tokens[f.from]!.low)))
    .find(f => {
      const after = t.sheet.tokens[f.to]?.low ?? '';
      const taken = t.sheet.found.some(o => o !== f && o.dim !== 'number' && o.dim !== 'money' && o.from <= f.from && f.to <= o.to);
      const tag = t.sheet.tags[f.to];
      if (forTheSo(t, f)) return false;
      const role = roleBeside(t.sheet, f);
      if (role) { if (role === 'shipping' && f.dim === 'number') out.shipping ??= f.value.value; return false; }
      return !taken && (tag !== 'noun' && tag !== 'adj' || /^(bucks|quid|dollars|delivered|landed|even|cash|plus|each|apiece|the)$/.test(after)) && !/^(tooth|inch|by|of|-)$/.test(after) && !/^(grade|number|size|by|class|ordered|bought)$/.test(t.sheet.tokens[f.from - 1]?.low ?? ''); // "ordered ten" counts them
    });
  if (n?.dim === 'number') { out.price = n.value.value; out.at = n.from; out.to = n.to; }
}

/** Price of the lot: "27 each" for two is 54. */
export const total = (s: Sums, qty: number | undefined): number | undefined =>
  (s.price === undefined ? undefined : (s.per === 'each' && qty && qty > 1 ? Math.round(s.price * qty * 100) / 100 : s.price));

export const moneyClause = (t: Telling, c: Clause): boolean => t.sheet.found.some(f => f.dim === 'money' && f.from >= c.from && f.to <= c.to);
