import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import { bare } from '../clauses/as-said.ts';
import { isSource } from '../clauses/name-kinds.ts';
import { nounClasses } from '../words/nouns.ts';
import { verbForms } from '../words/verbs.ts';
import { textOf } from '../dimensions/part/text-of.ts';
import { isSeller } from './lib/goods.ts';
import { pricedThings } from './lib/priced-things.ts';
import { sourceIn, trim } from './lib/fields.ts';
import { moneyClause, sumsIn } from './lib/money.ts';
import { sourceSubject } from './lib/source.ts';
import { bareSeller, perSeller, pricedAt, sellerBefore } from './lib/sellers.ts';
import { lowText, next, type Telling, type Meaning } from './telling.ts';
import { spanForward } from './lib/reach.ts';
import { heardPrice } from './quote/heard.ts';
import { NO_GOODS, pricedThing, sellerSpans } from './quote/priced.ts';
import { headingSeller, lastSource, sellerOfList } from './quote/seller.ts';

const SAYS = /^(say|want|quote|ask|charge|reckon|have|offer|list|sell|do|be|run|cost|get|see|find|figure|go|price|come|let|hear|tell|sit|part|list|supply|post|leave)$/;

/** A price heard with nothing bought: "the yard wants thirty", "six bucks a foot at the farm store". */
export const quote: Meaning = t => fromSeller(t) ?? heardPrice(t);

/** "the yard wants thirty", "six bucks a foot at the farm store": with who asks it, or where. */
const fromSeller: Meaning = t => {
  const c = t.clause;
  if (c.asks || c.sub && /^(if|unless|until|till)$/.test(c.sub) || c.reality === 'cond' || c.reality === 'past plan' && !/\b(want|say|said|ask)/.test(lowText(t))) return undefined;
  const text = lowText(t);
  const late = shippingAlone(t, c);
  if (late) return late;
  if (/^(buy|pay|order|spend|bought|sell)$/.test(c.verb?.base ?? '') && c.verb?.base !== 'sell' || /^(i|we)$/.test(c.who ?? '') && !/\b(quoted|found|saw|seen|heard|priced|got|get|can get|could get)\b/.test(text)) return undefined;
  const prev = t.clauses[t.at - 1];
  const source = sourceSubject(t, [c]) ?? (prev && !c.subj.some(s => !s.carried) && (prev.verb === undefined && /^(say|want|quote|ask|have|offer|do|charge)$/.test(c.verb?.base ?? '') || /^(say|reckon|tell|quote|offer)$/.test(prev.verb?.base ?? '')) ? sourceSubject(t, [prev]) : undefined) ?? sourceIn(t.sheet, c.items)?.source ?? (/^(they|he|she)$/.test(c.who ?? '') ? lastSource(t) ?? sellerBefore(t) : undefined) ?? (moneyClause(t, c) ? pricedAt(t, c) ?? bareSeller(t, [c]) : undefined) ?? (c.pred === 'be' || c.pred === 'none' ? sellerBefore(t) ?? sellerOfList(t) ?? headingSeller(t) : undefined);
  const joined = source === undefined && prev && prev === t.told.at(-1)?.clause && t.told.at(-1)!.entry.kind === 'quote' && /^(and|,|but)$/.test(c.join ?? '') && (c.pred === 'be' || c.pred === 'none') && c.subj.some(s => !s.carried) ? (t.told.at(-1)!.entry as { source?: string }).source : undefined;
  if (joined) return andThat(t, joined);
  if (source !== undefined && /\b(book|manual|chart|sheet|spec|handbook|table|tin|can|label|gauge|scale)s?$/i.test(source)) return undefined;
  if (c.pred === 'be' && /^(he|she|i|we)$/.test(c.who ?? '') && !priced0(t, c)) return undefined; // "and he's eighty-one"
  const says = prev !== undefined && /^(say|reckon|tell|quote|offer)$/.test(prev.verb?.base ?? '') && sourceSubject(t, [prev]) !== undefined || c.verb === undefined || SAYS.test(c.verb.base ?? '') || c.pred === 'have' || c.pred === 'be' || doesFor(t, c);
  if (!says) return undefined;
  const priced = t.sheet.found.some(f => f.dim === 'money' && f.sure === 'certain' && f.from >= c.from && f.to <= c.to && f.value.role === undefined);
  if (!priced && source === undefined) return undefined;
  const end = spanForward(t, n => !ownOffer(t, n) && ((n === next(t) && source !== undefined && !moneyClause(t, c) || false) && onlyMoney(t, n) || onTop(t, n)));
  const reach = t.clauses.slice(t.at, end + 1);
  const sums = sumsIn(t, c.from, reach.at(-1)!.to, true);
  if (sums.price === undefined) return undefined;
  if (!priced && sums.price <= 10 && sums.per === undefined && /^(run|go|have|do|make|be)$/.test(c.verb?.base ?? 'be') && !/\b(for|each|apiece|wants?|asking)\b/.test(text)) return undefined;
  const alternatives = several(t, reach) ?? alternative(t, c) ?? eachThing(t, c, source);
  if (alternatives) return alternatives;
  const item = pricedThing(t, c);
  if (item && (item.qty === sums.price || !item.thing.plural && (item.qty ?? 0) > 12)) delete item.qty; // a second price is no count
  if (!item || verbForms(item.item).length > 0 && !nounClasses(item.item).size && !/^re[a-z]{3,}$/.test(item.item) || nounClasses(item.item.split(' ').at(-1)!).has('quantity') && !nounClasses(item.item).has('part')) return undefined;
  if (source === undefined && !/\b(quot|each|apiece|a foot|want|asking|price|goes? for|cost|listed|run)/.test(text)) return undefined;
  return [trim({ kind: 'quote', item: item.item, source, price: sums.price, shipping: sums.shipping, qty: item.qty && item.qty > 1 ? item.qty : undefined, core: sums.core, tax: sums.tax }) as Entry];
};

/** "exchange 48 plus 12 ship, museum 55 post free": one quote a seller. */
function several(t: Telling, reach: readonly Clause[]): Entry[] | undefined {
  const each = perSeller(t, reach.flatMap(r => r.items));
  const item = each && pricedThing(t, t.clause);
  return item && each.map(({ source, sums }) => trim({ kind: 'quote', item: item.item, source, price: sums.price, shipping: sums.shipping, core: sums.core, tax: sums.tax }) as Entry);
}
/** "450 for the bore and 80 for the decking", "cork sheet 14, gasket paper 9": one seller's price for each of several things. */
function eachThing(t: Telling, c: Clause, source: string | undefined): Entry[] | undefined {
  const pairs = pricedThings(t, c.items).filter(p => !isSeller(p.item) && !NO_GOODS.test(p.item) && !sellerSpans(t, c).some(([a, b]) => p.from >= a && p.from < b));
  return pairs.length < 2 || source === undefined ? undefined : pairs.map(p => trim({ kind: 'quote', item: p.item, source, price: p.price, qty: p.qty }) as Entry);
}

/** "…from the spares lady, and the cork is three pounds": the same seller's price for another thing. */
function andThat(t: Telling, source: string): Entry[] | undefined {
  const c = t.clause, item = c.subj.find(s => !s.carried)?.name, sums = sumsIn(t, c.from, c.to, true);
  const pounds = t.sheet.found.find(f => f.dim === 'measure' && f.value.unit === 'lb' && f.from >= c.from && f.to <= c.to);
  const price = sums.price ?? (pounds?.dim === 'measure' ? pounds.value.value : undefined);
  return item && price !== undefined ? [trim({ kind: 'quote', item, source, price, shipping: sums.shipping }) as Entry] : undefined;
}

const priced0 = (t: Telling, c: Clause): boolean => t.sheet.found.some(f => f.dim === 'money' && (f.sure === 'certain' || f.value.per !== undefined) && f.from >= c.from && f.to <= c.to);

/** "he can build it up for ninety", "the shop would regrind it for 80": outside work offered at a price. */
const doesFor = (t: Telling, c: Clause): boolean => /^(take|accept)$/.test(c.verb?.base ?? '') && /^(number|money)$/.test(c.items[c.vi + 1]?.f?.dim ?? '') && c.items[c.vi + 2]?.low === 'for' || /^(plan|maybe|must)$/.test(c.reality) && c.verb?.form === 'base' && !/^(i|we|you)$/.test(c.who ?? '') && c.items.some((i, k) => /^(for|at)$/.test(i.low) && k > c.vi && /^(money|number)$/.test(c.items[k + 1]?.f?.dim ?? '')) && moneyClause(t, c);

/** "the other fella is 26 with the post": a clause with a seller and a price of its own goes with nothing before it. */
const ownOffer = (t: Telling, c: Clause): boolean => (sourceSubject(t, [c]) ?? pricedAt(t, c)) !== undefined && sumsIn(t, c.from, c.to, true).price !== undefined;
/** "plus eight to ship", "and he eats the freight": what comes on top. */
const onTop = (t: Telling, c: Clause): boolean => {
  if (c.asks || c.items.some(i => i.np && isSource(i.np))) return false;
  if (c.pred === 'none') return /^(and |plus )?(\S+ ){0,4}(shipping|postage|post|carriage|delivery|plus|core|each|apiece)\b/.test(lowText(t, c)) || sumsIn(t, c.from, c.to, false).shipping !== undefined;
  return /^(he|they|she|it|that)$/.test(c.who ?? '') && sumsIn(t, c.from, c.to, false).shipping !== undefined && sumsIn(t, c.from, c.to, false).price === undefined;
};
/** "Head gasket at the yard: 40 dollars." */
const onlyMoney = (t: Telling, c: Clause): boolean => c.pred === 'none' && moneyClause(t, c) && !c.items.some(i => i.np);

/** "…wants thirty-four each. Eight dollars shipping.": what comes on top of the price just heard. */
function shippingAlone(t: Telling, c: Clause): Entry[] | undefined {
  const last = t.told.findLast(x => x.entry.kind === 'quote' || x.entry.kind === 'order')?.entry;
  if (!last || c.verb && !/^(be|ship|post|send)$/.test(c.verb.base!) || last.kind !== 'quote' && last.kind !== 'order' || last.shipping !== undefined || ownOffer(t, c)) return undefined;
  const sums = sumsIn(t, c.from, c.to, false);
  if (/\b(post|ship|send|deliver|drop) (it|them)( out| over| up| down)? (for (nothing|free)|free)\b/.test(lowText(t))) sums.shipping = 0;
  if (sums.core !== undefined && sums.price === undefined && sums.shipping === undefined) { last.core = sums.core; return []; }
  if (sums.shipping === undefined || sums.price !== undefined) return undefined;
  last.shipping = sums.shipping;
  return [];
}

/** "thirty-two from the engineer, or twenty-eight and five post from the other chap": one quote a seller. */
function alternative(t: Telling, c: Clause): Entry[] | undefined {
  const froms = c.items.flatMap((i, k) => (/^(from|at|off)$/.test(i.low) && c.items[k + 1]?.np ? [k] : []));
  if (froms.length < 2) return undefined;
  const item = pricedThing(t, c);
  if (!item) return undefined;
  let begin = c.from;
  const out: Entry[] = [];
  for (const k of froms) {
    const sums = sumsIn(t, begin, c.items[k]!.from, true);
    let to = k + 2;
    while (c.items[to] && /^(in|at|down|up|across|over|on|of)$/.test(c.items[to]!.low) && c.items[to + 1]?.np) to += 2;
    begin = c.items[to - 1]!.to;
    if (sums.price === undefined) return undefined;
    out.push(trim({ kind: 'quote', item: item.item, source: bare(textOf(t.sheet, c.items[k + 1]!.from, begin)), price: sums.price, shipping: sums.shipping }) as Entry);
  }
  return out;
}
