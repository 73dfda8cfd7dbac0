import type { Clause } from '../../clauses/clause.ts';
import { isMachine } from '../../clauses/name-kinds.ts';
import { goodsIn, isSeller, type Goods } from '../lib/goods.ts';
import { lowText, type Telling } from '../telling.ts';

/** What was had: the things that the clause names, or those of `reach`, the clauses that belong to it; empty where none is meant. `paid`: it tells first what left the pocket. */
export function reachGoods(t: Telling, c: Clause, paid: boolean, reach: readonly Clause[]): Goods[] {
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
export function goodsAfterMoney(t: Telling, c: Clause, have: readonly Goods[]): Goods[] {
  const sum = (k: number): boolean => c.items[k]?.f?.dim === 'money' || c.items[k]?.f?.dim === 'number' && /^(at|for)$/.test(c.items[k - 1]?.low ?? ''), paid = c.items.findIndex((_, k) => sum(k));
  const more = c.items.flatMap((i, k) => (k > paid && paid >= 0 && (i.t === 'cc' || i.low === ',') && c.items[k + 1]?.np && !c.items[k + 1]!.np!.stands && c.items.some((_, n) => n > k && sum(n)) ? [k + 1] : []));
  return more.flatMap(k => goodsIn(t, c.items.slice(0, more.find(m => m > k) ?? c.items.length), k).slice(0, 1)).filter(g => !isSeller(g.item) && !have.some(h => h.from === g.from));
}
