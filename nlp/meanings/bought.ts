import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { isMachine } from '../clauses/things.ts';
import { trim, sourceIn } from './lib/fields.ts';
import { goodsIn, isSeller, type Goods } from './lib/goods.ts';
import { sumsIn, total, moneyClause } from './lib/money.ts';
import { spanForward, tailText } from './lib/reach.ts';
import { bareSeller, sellerBefore } from './lib/sellers.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';
import { isClass } from '../words/verbs.ts';
import { work } from './work.ts';

/** Bought and in hand, with what was paid: "bought", "paid forty quid for", "picked up", "got … for 19". */
export const bought: Meaning = t => {
  const c = t.clause;
  if (c.neg || c.asks || c.reality !== 'deed' || c.passive && !/^(buy|set)$/.test(c.verb?.base ?? '') || c.sub && /^(if|unless|until|till|when|before|that|so)$/.test(c.sub)) return undefined;
  const base = c.verb?.base ?? '';
  const end = (): number => spanForward(t, n => goesOn(t, n));
  const money = moneyClause(t, c) || nextMoney(t) || bareSeller(t, [c]) !== undefined && dims(c.items, 'number').length === 1;
  const pays = /^(buy|purchase)$/.test(base) && c.verb!.form !== 'base' && c.verb!.form !== 'ing';
  const paid = base === 'pay' && c.verb!.form !== 'base' || (base === 'cost' || (base === 'set' || c.verb?.low === 'set') && /\bback\b/.test(lowText(t)) || base === 'rush' || base === 'sting') && /\b(me|us)\b/.test(lowText(t)) && money || base === 'give' && c.verb!.form !== 'base' && money && c.obj.some(o => isSeller(o.name)) && /\bfor\b/.test(lowText(t));
  if (/^(get|have)$/.test(base) && /^(price|quote|quotation|estimate|figure|prices|number)\b/.test(c.obj[0]?.np?.said ?? '') || /\b(almost|nearly)\b/.test(lowText(t))) return undefined;
  const got = /^(get|grab|pick|score|snag|nab|find|collect|have|bag|give|hand|spend|fork|lay|come|be|run|knock)$/.test(base) && money && !c.prt.includes('off') && (base !== 'have' || false) && (base !== 'find' || sourceIn(t.sheet, c.items) !== undefined) && !/^(come|be|run|give|knock)$/.test(base)
    || base === 'come' && money && /\b(home|away|back)\b.* with\b/.test(lowText(t)) || base === 'get' && sourceIn(t.sheet, c.items) !== undefined && c.obj.length > 0 && !c.obj[0]!.carried && /^(from|off)$/.test(c.items[sourceIn(t.sheet, c.items)!.at]!.low) && !/back|quote|price/.test(lowText(t));
  const took = tookQuoted(t) ?? charged(t) ?? theirWork(t) ?? pricedFirst(t);
  if (took) return took;
  const cash = cashed(t);
  if (!pays && !paid && !got && !cash) return undefined;
  if (base === 'spend' && (!money || dims(c.items, 'span').length)) return undefined;
  const last = end();
  const reach = t.clauses.slice(t.at, last + 1);
  const goods = reachGoods(t, c, paid || cash || base === 'spend', reach);
  const sums = sumsIn(t, c.from, reach.at(-1)!.to, true);
  if (paid && sums.price === undefined) return undefined;
  const source = reach.map(r => sourceIn(t.sheet, r.items)?.source).find(Boolean) ?? before(t) ?? bareSeller(t, reach) ?? (paid ? paidTo(c) ?? (/\bpaid (them|him|her)\b/.test(lowText(t)) ? t.clauses.slice(0, t.at).map(x => sourceIn(t.sheet, x.items)?.source).findLast(Boolean) : undefined) : undefined) ?? sellerBefore(t);
  if (!goods.length) return paid ? outside(t, sums.price) : undefined;
  for (const x of t.told.filter(y => y.entry.kind === 'want' && y.entry.qty === undefined && goods.some(g => g.item.endsWith((y.entry as { item: string }).item)))) t.told.splice(t.told.indexOf(x), 1); // "ran out of wire and bought a spool"
  if (goods.length > 1) return several(t, reach, goods, source);
  return goods.map(g => make(g, total(sums, g.qty), source, sums));
};

/** "Paid the magneto man 120 for it". */
const paidTo = (c: Clause): string | undefined => c.obj.find(o => isSeller(o.name))?.name;

/** "I paid the 210": outside work just come back, from where it was. */
function outside(t: Telling, price: number | undefined): Entry[] | undefined {
  const seen = [...t.prior, ...t.told.map(x => x.entry)];
  const back = seen.findLast(e => e.kind === 'arrival' || e.kind === 'out' || e.kind === 'work');
  const item = back ? ('item' in back ? back.item : 'part' in back ? back.part : undefined) : t.memory.topic()?.name;
  const gone = seen.findLast(e => e.kind === 'out' && (!item || e.part === item));
  const here = t.clauses.slice(0, t.at).map(x => sourceIn(t.sheet, x.items)?.source).findLast(Boolean);
  return item && price !== undefined ? [trim({ kind: 'bought', item, source: (gone?.kind === 'out' ? gone.where : undefined) ?? here, price }) as Entry] : undefined;
}

/** "He rewound it, sixty quid": what a shop's own work cost, said straight after it. */
function charged(t: Telling): Entry[] | undefined {
  const c = t.clause, prev = t.clauses[t.at - 1], last = t.told.at(-1);
  if (c.verb || c.pred !== 'none' || !prev || !/^(he|they|she|person)$/.test(prev.who ?? '') || last?.clause !== prev || last.entry.kind !== 'work' || !c.items.some(i => i.f?.dim === 'money') || c.items.some(i => i.np)) return undefined;
  return outside(t, sumsIn(t, c.from, c.to, true).price);
}

/** The same in one clause: his work, and its price beside it. */
function theirWork(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!/^(he|they|she|person)$/.test(c.who ?? '') || !isClass(c.verb?.base ?? '', 'work') || !c.items.some(i => i.f?.dim === 'money')) return undefined;
  const did = work(t);
  const paid = outside(t, sumsIn(t, c.from, c.to, true).price);
  return did?.length && paid ? [...did, ...paid.map(p => ({ ...p, item: (did[0] as { part: string }).part }) as Entry)] : undefined;
}

/** "Sixty quid for a pair of lamps off the stall, and a fiver for the lenses": each price before its thing. */
function pricedFirst(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!cashed(t)) return undefined;
  const source = sourceIn(t.sheet, c.items)?.source;
  const pairs = c.items.flatMap((i, k) => (i.f?.dim === 'money' && c.items[k + 1]?.low === 'for' && c.items[k + 2]?.np ? [{ price: i.f.value.value, np: c.items[k + 2]!.np! }] : []));
  if (pairs.length < 2) return undefined;
  return pairs.map(p => trim({ kind: 'bought', item: p.np.name, source, price: p.price, qty: p.np.count }) as Entry);
}

/** "Grabbed one": what was just quoted is bought at that price. */
function tookQuoted(t: Telling): Entry[] | undefined {
  const c = t.clause, last = t.told.at(-1);
  if (last?.entry.kind !== 'quote' || !/^(grab|buy|take|get|have|bag|snag)$/.test(c.verb?.base ?? '') || c.verb!.form === 'base' || !/\b(one|it|them|the pair|two|both)\b/.test(lowText(t)) || moneyClause(t, c) && c.obj.some(o => !o.carried)) return undefined;
  const { item, source, price, shipping } = last.entry;
  t.told.splice(t.told.indexOf(last), 1);
  const first = trim({ kind: 'bought', item, source, price, shipping }) as Entry;
  const more = goodsIn(t, c.items, c.vi + 1).filter(g => g.item !== item && !isSeller(g.item));
  return [first, ...more.map(g => { const s = sumsIn(t, g.to, c.to, true); return make(g, total(s, g.qty), source, s); })];
}

/** "Sixty quid for a pair of lamps off the stall", "two studs at 3.25 each from the tyre shop, paid cash": bought, without a verb. */
function cashed(t: Telling): boolean {
  const c = t.clause;
  if (c.verb && !/^(pay)$/.test(c.verb.base!) || c.pred !== 'none' || !moneyClause(t, c)) return false;
  const text = lowText(t), next = t.clauses[t.at + 1];
  if (next && /\bpaid\b|\bcash\b/.test(lowText(t, next))) return true;
  const first = c.items.find(i => i.t !== 'mark' && i.t !== 'cc');
  return first?.f?.dim === 'money' && /\bfor\b/.test(text) && c.items.some((i, k) => i.low === 'off' && c.items[k + 1]?.np);
}

const make = (g: Goods, price: number | undefined, source: string | undefined, sums: { shipping?: number; core?: number; tax?: number }): Entry =>
  trim({ kind: 'bought', item: g.item, source, price: price !== undefined && price === g.qty && !(source && g.thing.np && g.thing.np.count === undefined) ? undefined : price, shipping: sums.shipping, qty: g.qty && g.qty > 1 ? g.qty : undefined, core: sums.core, tax: sums.tax }) as Entry;

/** Several things in one breath: each with the money named after it, up to the next thing. */
function several(t: Telling, reach: readonly Clause[], goods: Goods[], source: string | undefined): Entry[] {
  return goods.map((g, i) => {
    const sums = sumsIn(t, g.to, goods[i + 1]?.from ?? reach.at(-1)!.to, true);
    return make(g, total(sums, g.qty), source, sums);
  });
}

function reachGoods(t: Telling, c: Clause, paid: boolean, reach: readonly Clause[]): Goods[] {
  const names = (list: Goods[]): Goods[] => list.filter(g => !isSeller(g.item) && (!isMachine(t.sheet, g.item) || list.length === 1));
  const forAt = c.items.findIndex((i, n) => /^(for|on)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron' || c.items[n + 1]?.f?.dim === 'number'));
  if (paid && forAt >= 0) {
    const list = goodsIn(t, c.items, forAt + 1);
    if (list.length) return names(list);
  }
  if (paid && c.subj.some(s => !s.carried)) return names(goodsIn(t, c.items, 0));
  const list = paid || c.obj[0]?.carried && !c.obj[0].np ? [] : names(goodsIn(t, c.items, c.vi + 1 + c.prt.length));
  if (list.length) return list.concat(goodsAfterMoney(t, c, list)).concat(reach.slice(1).flatMap(r => (r.pred === 'none' ? goodsIn(t, r.items, 0).filter(g => !list.some(x => x.item === g.item)) : [])));
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

const nextMoney = (t: Telling): boolean => { const n = t.clauses[t.at + 1]; return n !== undefined && n.pred === 'none' && !n.asks && moneyClause(t, n); };

function goesOn(t: Telling, c: Clause): boolean {
  if (c.asks) return false;
  return (c.pred === 'none' || c.verb?.base === 'pay' || c.verb?.base === 'cost') && (moneyClause(t, c) || tailText(lowText(t, c)) || sourceIn(t.sheet, c.items) !== undefined && c.pred === 'none') && !c.subj.some(s => !s.carried && c.pred !== 'none');
}
