import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { isMachine } from '../clauses/things.ts';
import { trim, sourceIn } from './lib/fields.ts';
import { goodsIn, isSeller, pricedThings, type Goods } from './lib/goods.ts';
import { sumsIn, total, moneyClause } from './lib/money.ts';
import { spanForward, tailText } from './lib/reach.ts';
import { bareSeller, pricedAt, sellerBefore } from './lib/sellers.ts';
import { sourceSubject } from './lib/source.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';
import { charged, LABOUR, outside, theirWork } from './bought/outside.ts';
import { tookQuoted } from './bought/offer.ts';
import { soldMe } from './bought/sold-me.ts';

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
  const took = tookQuoted(t) ?? charged(t) ?? theirWork(t) ?? pricedFirst(t) ?? overTheCounter(t) ?? soldMe(t);
  if (took) return took;
  const cash = cashed(t);
  if (!pays && !paid && !got && !cash) return undefined;
  if (base === 'spend' && (!money || dims(c.items, 'span').length)) return undefined;
  const last = spanForward(t, n => goesOn(t, n));
  const reach = t.clauses.slice(t.at, last + 1);
  const priced = paid ? pricedThings(t, c.items).filter(p => !isSeller(p.item) && !LABOUR.test(p.item)) : [];
  if (priced.length > 1) return priced.map(p => trim({ kind: 'bought', item: p.item, source: sourceIn(t.sheet, c.items)?.source ?? before(t) ?? paidTo(c) ?? sellerBefore(t), price: p.price, qty: p.qty }) as Entry); // "paid 30 for the seat, 12 for the bracket"
  const all = reachGoods(t, c, paid || cash || base === 'spend', reach), goods = all.filter(g => !LABOUR.test(g.item.split(' ').at(-1)!) && !/^(bill|invoice|total|damage|tab|account)$/.test(g.item));
  const sums = sumsIn(t, c.from, reach.at(-1)!.to, true);
  if (paid && sums.price === undefined) return undefined;
  const source = reach.map(r => sourceIn(t.sheet, r.items)?.source).find(Boolean) ?? before(t) ?? bareSeller(t, reach) ?? reach.map(r => pricedAt(t, r)).find(Boolean) ?? (paid && /^(charge|bill|invoice)$/.test(base) ? sourceSubject(t, [c]) : undefined) ?? (paid ? paidTo(c) ?? (/\bpaid (them|him|her)\b/.test(lowText(t)) ? t.clauses.slice(0, t.at).map(x => sourceIn(t.sheet, x.items)?.source).findLast(Boolean) : undefined) : undefined) ?? sellerBefore(t);
  if (paid && costs(t, c, money) && !c.subj.some(s => !s.carried) && !c.items.some(i => i.low === 'for') && [...t.prior, ...t.told.map(x => x.entry)].some(e => e.kind === 'arrival' || e.kind === 'out')) return outside(t, sums.price, source); // "the injector's home… cost me 48"
  if (!goods.length) return paid ? outside(t, sums.price, source) ?? all.filter(g => !/^(trouble|pains|time|effort|favou?r|work|job|labou?r|bill|invoice|total|damage|tab|account)$/.test(g.item)).map(g => make(g, sums.price, source, sums)) : undefined;
  for (const x of t.told.filter(y => y.entry.kind === 'want' && y.entry.qty === undefined && goods.some(g => g.item.endsWith((y.entry as { item: string }).item)))) t.told.splice(t.told.indexOf(x), 1); // "ran out of wire and bought a spool"
  if (goods.length > 1) return several(t, reach, goods, source);
  return goods.map(g => make(g, total(sums, g.qty), source, sums));
};

const GETS = /^(snaffle|wangle|acquire|secure|procure|get|grab|pick|score|snag|nab|find|collect|bag|hand|spend|fork|lay)$/;
/** Whether the source is a known seller rather than what a part came off. */
const isShopSource = (t: Telling): boolean => { const s = sourceIn(t.sheet, t.clause.items); const np = s && t.clause.items[s.at + 1]?.np; return np !== undefined && isSeller(np.said); };

/** "paid", "gave him twenty for", "handed over", "shelled out": money that left the pocket. */
function paysOut(t: Telling, c: Clause, money: boolean): boolean {
  const base = c.verb?.base ?? '', text = lowText(t);
  const ended = /\b(ended|wound|finished) up (paying|giving|forking|shelling|costing me)\b/.test(text);
  if (!ended && /^(base|ing)$/.test(c.verb?.form ?? 'base') && c.verb?.low !== 'put') return false;
  if (base === 'pay' || ended) return true;
  if (!/\b(for|on)\b/.test(text) || !money && !c.items.some((i, k) => i.f?.dim === 'number' && /^(for|on)$/.test(c.items[k + 1]?.low ?? ''))) return false;
  return base === 'give' && (c.obj.some(o => isSeller(o.name)) || /\bgave (him|her|them|the \S+( \S+)?) /.test(text)) || base === 'hand' && /\bover\b/.test(text) || /^(shell|fork|stump|cough|splash|lay|part|dish)$/.test(base) && /\b(out|over|up|with|down)\b/.test(text);
}

/** "cost me 165", "set me back forty", "the shop charged 120 for the rebore", "that belt cost nine dollars": what was asked and paid. */
function costs(t: Telling, c: Clause, money: boolean): boolean {
  const base = c.verb?.base ?? '', text = lowText(t), me = /\b(me|us)\b/.test(text);
  if (!money && !dims(c.items, 'number').length || /\b(last (time|year)|years ago|back then|used to be|in (19|20)\d\d)\b/.test(text)) return false;
  if (me && (base === 'cost' || (base === 'set' || c.verb?.low === 'set') && /\bback\b/.test(text) || /^(rush|sting|charge|skin|bill|invoice|relieve)$/.test(base))) return true;
  if (/^(bill|invoice|total|damage|job|labou?r|tab|account)$/.test(c.subj[0]?.np?.said ?? '') || LABOUR.test(c.subj[0]?.np?.said ?? '')) return /^(come|run|be)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : '')) && c.items.some(i => /^(was|were|came|ran)$/.test(i.low));
  const past = /^(past|part)$/.test(c.verb?.form ?? '') && !c.items.some(i => /^(would|could|used)$/.test(i.low));
  return past && (base === 'cost' && c.subj.some(s => !s.carried && !isSeller(s.name)) && !/\b(new|when|originally|back then|in nineteen)\b/.test(text) || /^(charge|bill|invoice)$/.test(base) && /\bfor\b/.test(text));
}

/** "Stopped at the mower shop. 18.40 for knife sections, six bucks for the rivets": paid at a counter that he stood at. */
function overTheCounter(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.pred !== 'none' || c.verb || !moneyClause(t, c) || !/^(money|number)$/.test(c.items.find(i => i.t !== 'mark' && i.t !== 'cc')?.f?.dim ?? '')) return undefined;
  const visit = t.clauses.slice(Math.max(0, t.at - 2), t.at).findLast(p => /^(stop|drop|swing|pop|nip|call|go|drive|run|walk|be)$/.test(p.verb?.base ?? '') && /^(past|part)$/.test(p.verb!.form ?? '') && p.items.some(i => /^(at|in|by|into|to|past)$/.test(i.low)));
  const source = visit && sellerBefore(t), pairs = source ? pricedThings(t, c.items).filter(p => !isSeller(p.item)) : [];
  return pairs.length ? pairs.map(p => trim({ kind: 'bought', item: p.item, source, price: p.price, qty: p.qty }) as Entry) : undefined;
}

/** "Paid the magneto man 120 for it". */
const paidTo = (c: Clause): string | undefined => c.obj.find(o => isSeller(o.name))?.name;

/** "Sixty quid for a pair of lamps off the stall, and a fiver for the lenses": each price before its thing. */
function pricedFirst(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!cashed(t)) return undefined;
  const source = sourceIn(t.sheet, c.items)?.source;
  const pairs = c.items.flatMap((i, k) => (i.f?.dim === 'money' && c.items[k + 1]?.low === 'for' && c.items[k + 2]?.np ? [{ price: i.f.value.value, np: c.items[k + 2]!.np! }] : []));
  if (pairs.length < 2) return undefined;
  return pairs.map(p => trim({ kind: 'bought', item: p.np.name, source, price: p.price, qty: p.np.count }) as Entry);
}

/** "Sixty quid for a pair of lamps off the stall", "two studs at 3.25 each from the tyre shop, paid cash": bought, without a verb. */
function cashed(t: Telling): boolean {
  const c = t.clause;
  if (c.verb && !/^(pay)$/.test(c.verb.base!) || c.pred !== 'none' || !moneyClause(t, c)) return false;
  const text = lowText(t), next = t.clauses[t.at + 1];
  if (next && /\bpaid\b|\bcash\b/.test(lowText(t, next))) return true;
  const first = c.items.find(i => i.t !== 'mark' && i.t !== 'cc');
  if (first?.f?.dim === 'money' && first.f.value.role === undefined && (/^(spent|gone|went|blown|laid out|parted with)$/.test(c.items[c.items.indexOf(first) + 1]?.low ?? '') && /^(on|for|at)$/.test(c.items[c.items.indexOf(first) + 2]?.low ?? '') || /^(got|bought)$/.test(c.items[c.items.indexOf(first) + 1]?.low ?? '') && /^(me|us)$/.test(c.items[c.items.indexOf(first) + 2]?.low ?? ''))) return true; // "$11.40 spent on fuel line"
  if (first?.f?.dim !== 'money' || !/\bfor\b/.test(text)) return false;
  return c.items.some((i, k) => i.low === 'off' && c.items[k + 1]?.np) || first.f.sure === 'certain' && first.f.value.role === undefined && c.items[c.items.indexOf(first) + 1]?.low === 'for' && /\bat\b/.test(text) && sourceIn(t.sheet, c.items) !== undefined; // "58 dollars for a pail of oil at the marine supply"
}

const make = (g: Goods, price: number | undefined, source: string | undefined, sums: { shipping?: number; core?: number; tax?: number }): Entry =>
  trim({ kind: 'bought', item: g.item, source, price: price !== undefined && price === g.qty && !(source && g.thing.np && g.thing.np.count === undefined) ? undefined : price, shipping: sums.shipping, qty: g.qty && g.qty > 1 ? g.qty : undefined, core: sums.core, tax: sums.tax }) as Entry;

/** Several things in one breath: each with the money named after it, up to the next thing. */
function several(t: Telling, reach: readonly Clause[], goods: Goods[], source: string | undefined): Entry[] {
  const first = sumsIn(t, reach[0]!.from, goods[0]!.from, true), later = sumsIn(t, goods[0]!.to, reach.at(-1)!.to, true);
  if (first.price !== undefined && later.price === undefined) return goods.map((g, i) => make(g, i ? undefined : first.price, source, i ? {} : first)); // "$11.40 spent on hose and clamps"
  const whole = sumsIn(t, goods.at(-1)!.to, reach.at(-1)!.to, true);
  if (whole.price !== undefined && goods.every((g, i) => i === goods.length - 1 || sumsIn(t, g.to, goods[i + 1]!.from, true).price === undefined) && /\b(the lot|all in|altogether|all told|in all|for both|for the (lot|two|pair|three)|together|the pair of them|between them|total)\b/.test(reach.map(r => lowText(t, r)).join(' '))) return goods.map((g, i) => make(g, i ? undefined : whole.price, source, i ? {} : whole)); // "ties and a roll of tape, 17 bucks the lot"
  return goods.map((g, i) => {
    const sums = sumsIn(t, g.to, goods[i + 1]?.from ?? reach.at(-1)!.to, true);
    return make(g, total(sums, g.qty), source, sums);
  });
}

function reachGoods(t: Telling, c: Clause, paid: boolean, reach: readonly Clause[]): Goods[] {
  const names = (list: Goods[]): Goods[] => list.filter(g => !isSeller(g.item) && g.thing.np?.quant !== 'no' && !/^(town|city|village|cash|change|cheque|check|card|hand)$/.test(g.item) && (!isMachine(t.sheet, g.item) || list.length === 1));
  const forAt = c.items.findIndex((i, n) => /^(for|on)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron' || c.items[n + 1]?.f?.dim === 'number'));
  const treating = paid ? c.items.findIndex((i, n) => i.low === 'for' && c.items[n + 1]?.t === 'verb' && c.items[n + 1]!.form === 'ing' && c.items[n + 2]?.np) : -1; // "sixty for rewinding the coils"
  if (treating >= 0) { const list = names(goodsIn(t, c.items, treating + 2)); if (list.length) return list; }
  if (paid && forAt >= 0) {
    const list = goodsIn(t, c.items, forAt + 1);
    if (list.length) return names(list);
  }
  if (paid && c.subj.some(s => !s.carried)) return names(goodsIn(t, c.items, 0));
  const list = paid || c.obj[0]?.carried && !c.obj[0].np ? [] : names(goodsIn(t, c.items, c.vi + 1 + c.prt.length));
  if (list.length) return list.concat(goodsAfterMoney(t, c, list)).concat(reach.slice(1).flatMap(r => (r.pred === 'none' ? goodsIn(t, r.items, 0).filter(g => !list.some(x => x.item === g.item)) : [])));
  if (paid && !c.subj.some(s => !s.carried) && /^(cost|set|stand)$/.test(c.verb?.base ?? '')) { const own = names(goodsIn(t, c.items, c.items.findIndex(i => i.f?.dim === 'money') + 1)); if (own.length) return own.slice(0, 1); } // "set me back sixty bucks, that pin set"
  if (c.passive && c.subj.length && c.carriedSubj) return c.subj.map(s => ({ item: s.name, from: s.from, to: s.to, thing: s, ...(s.count !== undefined ? { qty: s.count } : {}) })); // "bearings, bought and paid for"
  if (paid && c.pred === 'none' && !c.verb) { const own = names(goodsIn(t, c.items, 0)); if (own.length) return own; }
  const fronted = c.subj.filter(s => !s.carried);
  if (fronted.length) return goodsIn(t, c.items, 0);
  const wanted = t.prior.concat(t.told.map(x => x.entry)).findLast(e => e.kind === 'want' || e.kind === 'order' || e.kind === 'quote');
  const topic = t.memory.topic();
  if (c.obj.some(o => o.carried) || /\b(it|one|them|some|those)\b/.test(lowText(t))) {
    if (topic) return [{ item: topic.name, from: c.from, to: c.to, thing: topic }];
    if (wanted && 'item' in wanted) return [{ item: wanted.item, from: c.from, to: c.to, thing: { name: wanted.item, from: c.from, to: c.to, plural: false } }];
  }
  return [];
}

/** "a plug for 5 dollars and a filter for 9": the things that stand after the first one's price. */
function goodsAfterMoney(t: Telling, c: Clause, have: readonly Goods[]): Goods[] {
  const paid = c.items.findIndex(i => i.f?.dim === 'money');
  const more = c.items.flatMap((i, k) => (k > paid && paid >= 0 && (i.t === 'cc' || i.low === ',') && c.items[k + 1]?.np && !c.items[k + 1]!.np!.stands && c.items.slice(k + 1).some(x => x.f?.dim === 'money') ? [k + 1] : []));
  return more.flatMap(k => goodsIn(t, c.items.slice(0, more.find(m => m > k) ?? c.items.length), k).slice(0, 1)).filter(g => !isSeller(g.item) && !have.some(h => h.from === g.from));
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
