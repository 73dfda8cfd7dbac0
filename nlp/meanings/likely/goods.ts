import { nameKey } from '../../../domain/model/names.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { dayIn } from '../lib/day.ts';
import { isTool, sourceIn, trim } from '../lib/fields.ts';
import { goodsIn, isSeller, type Goods } from '../lib/goods.ts';
import { moneyClause, sumsIn, total } from '../lib/money.ts';
import { bareSeller, pricedAt, sellerBefore, sellersIn } from '../lib/sellers.ts';
import { sourceSubject } from '../lib/source.ts';
import { whence } from '../bought/came-back.ts';
import { next, type Telling } from '../telling.ts';

/** The goods that a clause names beside who sells them, else what was spoken of before. */
function goods(t: Telling): Goods[] {
  const own = t.pointed && !named(t).some(g => t.pointed!.some(p => nameKey(g.item) === nameKey(p.name))) ? t.pointed.map(p => ({ item: p.name, from: p.from, to: p.to, thing: p })) : named(t);
  if (own.length) return own;
  const topic = t.memory.topic();
  return topic && !isSeller(topic.name) ? [{ item: topic.name, from: t.clause.from, to: t.clause.from, thing: topic }] : [];
}

/** What is named and can be sold: no seller, nor a word of where he is. */
function named(t: Telling): Goods[] {
  const { items } = t.clause, sellers = sellersIn(t, items).map(([k, to]) => [items[k]!.from, items[to - 1]!.to] as const);
  return goodsIn(t, items, 0).filter(g => (partLike(t.sheet, g.item) || isTool(g.item)) && !isSeller(g.item) && g.thing.np?.quant !== 'no' && !NO_GOODS.test(g.item) && !sellers.some(([a, b]) => g.from >= a && g.to <= b));
}

/** Words beside goods that are none: where and when they were got, what was paid with. */
const NO_GOODS = /^(?:town|village|city|web|internet|net|cash|change|card|hand|pocket|list|price|order|post|mail|shipping|carriage|freight|delivery|evening?|evenin|morning|arvo|day|lot|pair|set|bill|invoice|six pack|pint)s?$/;

/** Things to be got. */
export const wanted = (t: Telling): Entry[] => (t.pointed ? goods(t) : named(t)).map(g => trim({ kind: 'want', item: g.item, qty: g.qty !== undefined && g.qty > 1 ? g.qty : undefined, spec: g.spec }) as Entry);

/** Ordered, bought or priced: the goods with the seller and the money that the clause names, or the one after it that says no more than these. */
export function traded(t: Telling, kind: 'order' | 'bought' | 'quote'): Entry[] {
  const c = t.clause, after = next(t), more = after && (tail(t, after) || kind === 'quote' && asks(t, after)) ? [c, after] : [c];
  const sums = sumsIn(t, c.from, more.at(-1)!.to, true), list = goods(t);
  if (kind === 'quote' && sums.price === undefined) return [];
  const source = more.map(x => sourceIn(t.sheet, x.items)?.source ?? pricedAt(t, x)).find(Boolean) ?? bareSeller(t, more) ?? sourceSubject(t, [c]) ?? sellerBefore(t) ?? (list[0]?.thing.carried || !named(t).length ? whence(t, list[0]?.item ?? '') : undefined);
  return list.slice(0, sums.price === undefined ? undefined : 1).map(g => trim({
    kind, item: g.item, source, price: kind === 'quote' ? sums.price : total(sums, g.qty),
    ...(kind === 'bought' ? {} : { shipping: sums.shipping }), ...(kind === 'order' ? { expected: more.map(x => dayIn(t, x, true)).find(Boolean) } : {}),
  }) as Entry);
}

/** ", $118.40, farm store": a clause without a verb or a thing of its own that says what was asked or who sold it. */
const tail = (t: Telling, c: Clause): boolean => c.pred === 'none' && !c.verb && !c.asks && !c.subj.some(s => !s.carried && !isSeller(s.name)) && (moneyClause(t, c) || bareSeller(t, [c]) !== undefined);

/** "…has a used pump he'd let go for 250": what he asks for what he was just said to have. */
const asks = (t: Telling, c: Clause): boolean => /^(he|she|they|person)$/.test(c.who ?? '') && !c.neg && !c.asks && moneyClause(t, c) && /^(let|want|ask|sell|take|part|say)$/.test(c.verb?.base ?? '') && !c.obj.some(o => !o.carried);

/** What came. */
export const came = (t: Telling): Entry[] => goods(t).map(g => ({ kind: 'arrival', item: g.item }) as Entry);
