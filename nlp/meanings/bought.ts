import type { Entry } from '../../domain/model/entry.ts';
import { nameWords } from '../../domain/model/names.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { trim, sourceIn } from './lib/fields.ts';
import { isSeller, type Goods } from './lib/goods.ts';
import { pricedThings } from './lib/priced-things.ts';
import { sumsIn, total, moneyClause } from './lib/money.ts';
import { spanForward, tailText } from './lib/reach.ts';
import { bareSeller, pricedAt, sellerBefore } from './lib/sellers.ts';
import { sourceSubject } from './lib/source.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';
import { charged, LABOUR, outside, theirWork } from './bought/outside.ts';
import { tookQuoted } from './bought/offer.ts';
import { soldMe } from './bought/sold-me.ts';
import { costs, paidTo, paysOut } from './bought/paid.ts';
import { cashed, overTheCounter, pricedFirst } from './bought/without-verb.ts';
import { reachGoods } from './bought/goods-had.ts';

/** Bought and in hand, with what was paid: "bought", "paid forty quid for", "picked up", "got … for 19". */
export const bought: Meaning = t => {
  const c = t.clause;
  if (c.neg || c.asks || c.reality !== 'deed' || c.passive && !/^(buy|set)$/.test(c.verb?.base ?? '') || c.sub && /^(if|unless|until|till|when|before|that|so)$/.test(c.sub)) return undefined;
  const base = c.verb?.base ?? '', text = lowText(t), done = c.verb !== undefined && !/^(base|ing)$/.test(c.verb.form ?? '');
  if (/\b(almost|nearly)\b|\bon (back )?order\b|\b(can|could|would|might|may|will|'ll|'d) (get|have|buy|pick|grab|take)\b/.test(text)) return undefined;
  if (base === 'get' && c.prt.some(p => /^(out|off|apart|loose)$/.test(p))) return undefined; // "got the shaft out in one lump"
  if (/^(get|have)$/.test(base) && /^(price|quote|quotation|estimate|figure|prices|number)\b/.test(c.obj[0]?.np?.said ?? '')) return undefined;
  const money = moneyClause(t, c) || nextMoney(t) || bareSeller(t, [c]) !== undefined && dims(c.items, 'number').length === 1;
  const pays = /^(buy|purchase)$/.test(base) && done || money && (base === 'treat' && /\b(my|me|our)sel(f|ves) to\b/.test(text) || /^(win|invest)$/.test(base) && done);
  const paid = paysOut(t, c, money) || costs(t, c, money);
  const got = money && GETS.test(base) && !c.prt.includes('off') && (base !== 'find' || sourceIn(t.sheet, c.items) !== undefined)
    || base === 'come' && money && /\b(home|away|back)\b.* with\b/.test(text) || base === 'get' && sourceIn(t.sheet, c.items) !== undefined && c.obj.length > 0 && !c.obj[0]!.carried && /^(from|off)$/.test(c.items[sourceIn(t.sheet, c.items)!.at]!.low) && (isShopSource(t) || c.items[sourceIn(t.sheet, c.items)!.at]!.low === 'from') && !/back|quote|price/.test(text);
  if (pricedAfter(t, c)) return [];
  const took = tookQuoted(t) ?? charged(t) ?? theirWork(t) ?? pricedFirst(t) ?? overTheCounter(t) ?? soldMe(t);
  if (took) return took;
  const cash = cashed(t);
  if (!pays && !paid && !got && !cash) return undefined;
  if (base === 'spend' && (!money || dims(c.items, 'span').length)) return undefined;
  const last = spanForward(t, n => goesOn(t, n));
  const reach = t.clauses.slice(t.at, last + 1);
  const priced = paid || base === 'buy' && dims(c.items, 'money').length ? pricedThings(t, c.items).filter(p => !isSeller(p.item) && !LABOUR.test(p.item)) : [];
  if (priced.length > 1) { // "paid 30 for the seat, 12 for the bracket"
    const source = sourceIn(t.sheet, c.items)?.source ?? before(t) ?? paidTo(c) ?? sellerBefore(t), more = paid ? [] : reachGoods(t, c, false, [c]).filter(g => !priced.some(p => p.item === g.item));
    return [...priced, ...more.map(g => ({ item: g.item, price: undefined, qty: g.qty }))].map(p => trim({ kind: 'bought', item: p.item, source, price: p.price, qty: p.qty }) as Entry);
  }
  const all = reachGoods(t, c, paid || cash || base === 'spend', reach), goods = all.filter(g => !LABOUR.test(g.item.split(' ').at(-1)!) && !/^(bill|invoice|total|damage|tab|account)$/.test(g.item));
  const sums = sumsIn(t, c.from, reach.at(-1)!.to, true);
  if (paid && sums.price === undefined) return undefined;
  const source = reach.map(r => sourceIn(t.sheet, r.items)?.source).find(Boolean) ?? before(t) ?? bareSeller(t, reach) ?? reach.map(r => pricedAt(t, r)).find(Boolean) ?? (paid && /^(charge|bill|invoice)$/.test(base) ? sourceSubject(t, [c]) : undefined) ?? (paid ? paidTo(c) ?? (/\bpaid (them|him|her)\b/.test(lowText(t)) ? t.clauses.slice(0, t.at).map(x => sourceIn(t.sheet, x.items)?.source).findLast(Boolean) : undefined) : undefined) ?? sellerBefore(t);
  if (paid && costs(t, c, money) && !c.subj.some(s => !s.carried) && !c.items.some(i => i.low === 'for') && [...t.prior, ...t.told.map(x => x.entry)].some(e => e.kind === 'arrival' || e.kind === 'out')) return outside(t, sums.price, source); // "the injector's home… cost me 48"
  if (!goods.length) return paid ? outside(t, sums.price, source) ?? all.filter(g => !/^(trouble|pains|time|effort|favou?r|work|job|labou?r|bill|invoice|total|damage|tab|account)$/.test(g.item)).map(g => make(t, g, sums.price, source, sums)) : undefined;
  for (const x of t.told.filter(y => y.entry.kind === 'want' && y.entry.qty === undefined && goods.some(g => g.item.endsWith((y.entry as { item: string }).item)))) t.told.splice(t.told.indexOf(x), 1); // "ran out of wire and bought a spool"
  if (goods.length > 1) return several(t, reach, goods, source);
  return goods.map(g => make(t, g, total(sums, g.qty), source, sums));
};

/** "I bought oil and pins. The oil was $9.49 and the pins were $4.25.": what was bought or ordered gets the price that is told of it after. */
function pricedAfter(t: Telling, c: Clause): boolean {
  const of = c.subj.length === 1 && !c.subj[0]!.carried ? nameWords(c.subj[0]!.name) : [], { price } = sumsIn(t, c.from, c.to, true);
  if (c.pred !== 'be' || !of.length || price === undefined || dims(c.items, 'measure').length || !c.items.some(i => /^(was|were)$/.test(i.low))) return false;
  const had = t.told.map(x => x.entry).filter(e => (e.kind === 'bought' || e.kind === 'order') && e.price === undefined && of.every(w => nameWords(e.item).includes(w)));
  if (had.length !== 1) return false;
  (had[0] as { price?: number }).price = price;
  return true;
}

const GETS = /^(snaffle|wangle|acquire|secure|procure|get|grab|pick|score|snag|nab|find|collect|bag|hand|spend|fork|lay)$/;
/** Whether the source is a known seller rather than what a part came off. */
const isShopSource = (t: Telling): boolean => { const s = sourceIn(t.sheet, t.clause.items); const np = s && t.clause.items[s.at + 1]?.np; return np !== undefined && isSeller(np.said); };

function make(t: Telling, g: Goods, price: number | undefined, source: string | undefined, sums: { shipping?: number; core?: number; tax?: number }): Entry {
  const once = price !== undefined && price === g.qty && !t.sheet.found.some(f => f.dim === 'money' && f.value.certainCurrency && f.value.value === price), asPrice = once && source !== undefined && g.thing.np !== undefined && g.thing.np.count === undefined; // "bought the seat, ninety, from the yard": one figure is one thing
  const paid = once && !asPrice ? undefined : price, qty = asPrice || !g.qty || g.qty < 2 ? undefined : g.qty;
  return trim({ kind: 'bought', item: g.item, source, price: paid, shipping: sums.shipping, qty, core: sums.core, tax: sums.tax }) as Entry;
}

/** Several things in one breath: each with the money named after it, up to the next thing. */
function several(t: Telling, reach: readonly Clause[], goods: Goods[], source: string | undefined): Entry[] {
  const first = sumsIn(t, reach[0]!.from, goods[0]!.from, true), later = sumsIn(t, goods[0]!.to, reach.at(-1)!.to, true);
  if (first.price !== undefined && later.price === undefined) return goods.map((g, i) => make(t, g, i ? undefined : first.price, source, i ? {} : first)); // "$11.40 spent on hose and clamps"
  const whole = sumsIn(t, goods.at(-1)!.to, reach.at(-1)!.to, true);
  if (whole.price !== undefined && goods.every((g, i) => i === goods.length - 1 || sumsIn(t, g.to, goods[i + 1]!.from, true).price === undefined) && /\b(the lot|all in|altogether|all told|in all|for both|for the (lot|two|pair|three)|together|the pair of them|between them|total)\b/.test(reach.map(r => lowText(t, r)).join(' '))) return goods.map((g, i) => make(t, g, i ? undefined : whole.price, source, i ? {} : whole)); // "ties and a roll of tape, 17 bucks the lot"
  return goods.map((g, i) => {
    const sums = sumsIn(t, g.to, goods[i + 1]?.from ?? reach.at(-1)!.to, true);
    return make(t, g, total(sums, g.qty), source, sums);
  });
}

/** "At the feed store I got…": the seller stands in front. */
function before(t: Telling): string | undefined {
  const prev = t.clauses[t.at - 1];
  return prev && !prev.verb ? sourceIn(t.sheet, prev.items)?.source : undefined;
}

const nextMoney = (t: Telling): boolean => { const n = t.clauses[t.at + 1]; return n !== undefined && !n.asks && moneyClause(t, n) && (n.pred === 'none' || paysForIt(t, n)); };
/** "gave 18 quid for it", "it cost me a tenner", "paid 30": what the thing just named was had for. */
const paysForIt = (t: Telling, n: Clause): boolean => /^(give|pay|cost|set|stand|hand)$/.test(n.verb?.base ?? '') && /^(past|part)$/.test(n.verb!.form ?? '') && !n.neg && (/\b(for it|for them|for the (lot|pair|two))\b/.test(lowText(t, n)) || /^(pay|cost|set)$/.test(n.verb!.base!)) && !n.obj.some(o => !o.carried && !isSeller(o.name));

function goesOn(t: Telling, c: Clause): boolean {
  if (c.asks) return false;
  if (/^(and )?(all )?paid( for(?= *$|,)| cash| up| in cash| already| on the nail)?$/.test(lowText(t, c))) return true;
  if (moneyClause(t, c) && paysForIt(t, c)) return true;
  return (c.pred === 'none' || c.verb?.base === 'pay' || c.verb?.base === 'cost') && (moneyClause(t, c) || tailText(lowText(t, c)) || sourceIn(t.sheet, c.items) !== undefined && c.pred === 'none') && !c.subj.some(s => !s.carried && c.pred !== 'none');
}
