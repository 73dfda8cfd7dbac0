import type { Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { bare } from '../../clauses/as-said.ts';
import { isMachine, isSource } from '../../clauses/name-kinds.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { nameClasses, nounClasses } from '../../words/nouns.ts';
import { PERSONS } from '../../words/persons.ts';
import { TRADE_ENDING } from '../../words/sources.ts';
import type { Telling } from '../telling.ts';
import { sumsIn, type Sums } from './money.ts';

const CALLS = /^(ring|call|phone|stop|go|drop|swing|pop|nip|walk|drive|run|email|message|text|contact|speak|talk|visit|try|ask|tell|get|head|see|check|write|pull)$/;

const TAILS = /^(at|in|down|up|across|on|over|near|of|by|from|out|with|along|round|behind)$/;

/** What is done to people and shops only. */
const RINGS = /^(ring|call|phone|email|message|text|contact|ask|write)$/;

/** The words of a seller from item `k` on, with its "in town", "down the road", "at the…". */
export function sellerText(t: Telling, items: readonly Item[], k: number): string {
  let to = k + 1;
  while (items[to] && /^(prep|prt)$/.test(items[to]!.t) && TAILS.test(items[to]!.low) && (items[to]!.low !== 'with' || PERSONS.test(items[k]!.np!.said)) && items[to + 1]?.np) to += 2;
  return bare(textOf(t.sheet, items[k]!.from, items[to - 1]!.to));
}

/** Whether a phrase names who sells: a shop, or a person who is more than "somebody". */
const sells = (np: NonNullable<Item['np']>): boolean => isSource(np) && !np.stands && !nounClasses(np.said).has('part') || PERSONS.test(np.said) && !/^(somebody|someone|people|kids?|boy|doctor|vicar|driver|postman|postie|courier|wife|husband|book|manual|paper|radio|forecast)$/.test(np.said);

/** "Rang the yard and…", "stopped at the parts store and bought…": the seller that the clause before went to. */
export function sellerBefore(t: Telling): string | undefined {
  for (const p of t.clauses.slice(Math.max(0, t.at - 2), t.at).reverse()) {
    if (!CALLS.test(p.verb?.base ?? '') || p.neg) continue;
    const k = p.items.findIndex((i, n) => n > p.vi && i.np !== undefined && i.np.count === undefined && (sells(i.np) || n === p.vi + 1 && RINGS.test(p.verb!.base!) && TRADE_ENDING.test(i.np.said) && isShopLike(t, i)) && !/^(and|or)$/.test(p.items[n - 1]?.low ?? ''));
    if (k >= 0) return sellerText(t, p.items, k);
  }
  return undefined;
}

/** A shop named without a preposition: ", parts store", "Parts store, $14". */
export function bareSeller(t: Telling, clauses: readonly Clause[]): string | undefined {
  for (const c of clauses) for (const [k, i] of c.items.entries()) {
    const before = c.items[k - 1];
    if (i.np && !i.np.stands && isSource(i.np) && (!before || before.t === 'mark' || before.np?.stands || before.f !== undefined || before.t === 'cc') && !(k === 0 && c.verb)) return sellerText(t, c.items, k);
  }
  return undefined;
}

/** "at the rigging loft" beside a price: who asks it, whether the trade's lists hold the name or not. */
export function pricedAt(t: Telling, c: Clause): string | undefined {
  const k = c.items.findIndex((i, n) => /^(at|from|off|through)$/.test(i.low) && isShopLike(t, c.items[n + 1]) || i.low === 'in' && c.items[n + 1]?.np && isSource(c.items[n + 1]!.np!) && !/^(shop|yard|store|house|stores)$/.test(c.items[n + 1]!.np!.said) && (c.items[n - 1]?.f || moneyIn(c)) || i.low === 'on' && /\b(classifieds|website|forum|auction|internet|online|net|web|list)$/.test(c.items[n + 1]?.np?.said ?? ''));
  return k >= 0 ? sellerText(t, c.items, k + 1) : undefined;
}
const moneyIn = (c: Clause): boolean => c.items.some(i => i.f?.dim === 'money');
const isShopLike = (t: Telling, i: Item | undefined): boolean => {
  const np = i?.np;
  if (!np || np.stands || np.count !== undefined || isMachine(t.sheet, np.name) || /\b(shelf|peg|rack|hook|bench|floor|ground)$/.test(np.said)) return false;
  const kinds = nameClasses(np.said);
  return !['part', 'fastener', 'consumable', 'tool', 'quantity'].some(k => kinds.has(k as 'part')) && !/^(moment|minute|time|end|top|bottom|first|last|most|least|idle|price|rate|cost|home)$/.test(np.said);
};

/** The sellers of a run of items: index of each, and of the item after its "in town", "down the road". */
export function sellersIn(t: Telling, items: readonly Item[]): [k: number, to: number][] {
  const out: [number, number][] = [];
  for (let k = 0; k < items.length; k++) {
    const i = items[k]!, before = items[k - 1]?.low ?? '';
    const site = before === 'on' && items[k - 2]?.f && i.np && isSource(i.np); // "24 on the auction site"
    const named = i.np && (site || /^(from|at|off)$/.test(before) ? isShopLike(t, i) || sells(i.np) : sells(i.np) && !/^(of|for|in|on|to|with|and)$/.test(before));
    if (!named) continue;
    let to = k + 1;
    while (items[to] && /^(prep|prt)$/.test(items[to]!.t) && TAILS.test(items[to]!.low) && (items[to]!.low !== 'with' || PERSONS.test(i.np!.said)) && items[to + 1]?.np) to += 2;
    out.push([k, to]);
    k = to - 1;
  }
  return out;
}

/** One price a seller, where a clause names several: "48 and 12 post at the exchange or 55 at the museum, free shipping", "exchange 48 plus 12 ship, museum 55". */
export function perSeller(t: Telling, items: readonly Item[]): { source: string; sums: Sums }[] | undefined {
  const at = sellersIn(t, items);
  if (at.length < 2) return undefined;
  const firstSum = items.findIndex(i => i.f?.dim === 'money' || i.f?.dim === 'number');
  const leads = firstSum < 0 || at[0]![0] < firstSum; // the seller stands before his price
  let begin = 0;
  const out = at.map(([k, end], n) => {
    const from = leads ? k : begin, to = leads ? at[n + 1]?.[0] ?? items.length : n === at.length - 1 ? items.length : after(items, end);
    begin = to;
    return { source: sellerText(t, items, k), sums: sumsIn(t, items[from]!.from, items[to - 1]!.to, true) };
  });
  return out.every(o => o.sums.price !== undefined) ? out : undefined;
}

/** Past a seller that ends before item `k`, up to the price of the next: ", free shipping" still belongs to him. */
const after = (items: readonly Item[], k: number): number => {
  let to = k;
  while (items[to] && (/^(,|plus|and|with|the|including)$/.test(items[to]!.low) || shippingAt(items[to]!))) to++;
  while (to > k && !shippingAt(items[to - 1]!)) to--;
  return to;
};
const shippingAt = (i: Item): boolean => i.f?.dim === 'money' && i.f.value.role === 'shipping';
