import type { Entry } from '../../../domain/model/entry.ts';
import { partLike } from '../../clauses/things.ts';
import { dayIn } from '../lib/day.ts';
import { isTool, sourceIn, trim } from '../lib/fields.ts';
import { goodsIn, type Goods } from '../lib/goods.ts';
import { sumsIn, total } from '../lib/money.ts';
import { bareSeller } from '../lib/sellers.ts';
import { sourceSubject } from '../lib/source.ts';
import type { Telling } from '../telling.ts';

/** The goods that a clause names, else what was spoken of before. */
function goods(t: Telling): Goods[] {
  const own = goodsIn(t, t.clause.items, 0).filter(g => partLike(t.sheet, g.item) || isTool(g.item));
  if (own.length) return own;
  const topic = t.memory.topic();
  return topic ? [{ item: topic.name, from: t.clause.from, to: t.clause.from, thing: topic }] : [];
}

/** Things to be got. */
export const wanted = (t: Telling): Entry[] => goodsIn(t, t.clause.items, 0).filter(g => partLike(t.sheet, g.item) || isTool(g.item)).map(g => trim({ kind: 'want', item: g.item, qty: g.qty !== undefined && g.qty > 1 ? g.qty : undefined, spec: g.spec }) as Entry);

/** Ordered, bought or priced: the goods with the seller and the money that the clause names. */
export function traded(t: Telling, kind: 'order' | 'bought' | 'quote'): Entry[] {
  const c = t.clause, sums = sumsIn(t, c.from, c.to, true), source = sourceIn(t.sheet, c.items)?.source ?? bareSeller(t, [c]) ?? sourceSubject(t, [c]);
  if (kind === 'quote' && sums.price === undefined) return [];
  return goods(t).slice(0, sums.price === undefined ? undefined : 1).map(g => trim({
    kind, item: g.item, source, price: kind === 'quote' ? sums.price : total(sums, g.qty),
    ...(kind === 'bought' ? {} : { shipping: sums.shipping }), ...(kind === 'order' ? { expected: dayIn(t, c, true) } : {}),
  }) as Entry);
}

/** What came. */
export const came = (t: Telling): Entry[] => goods(t).map(g => ({ kind: 'arrival', item: g.item }) as Entry);
