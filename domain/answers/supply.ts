import type { BuyItem } from '../model/answer.ts';
import { phraseOf } from '../log/phrase.ts';
import type { OpenOrder, Thing } from '../log/shop.ts';

/**
 * What of a thing is still to come: each open order (late once its day is past), and what is wanted beyond what was ordered.
 * `today`: YYYY-MM-DD.
 */
export function supplies(thing: Thing, today: string): BuyItem[] {
  const lastOrder = Math.max(0, ...thing.orders.map(o => o.id));
  const needed = thing.wants.filter(w => w.id > lastOrder);
  return [...thing.orders.map(order => onOrder(thing, order, today)), ...needed.map((w): BuyItem => ({
    item: thing.name, status: 'needed', ...some({ qty: w.qty, spec: w.spec, for: w.for && phraseOf(w.for) }),
  }))];
}

function onOrder(thing: Thing, order: OpenOrder, today: string): BuyItem {
  const want = thing.wants.find(w => w.id < order.id);
  return {
    item: thing.name,
    status: order.expected !== undefined && order.expected < today ? 'late' : 'ordered',
    ...some({
      qty: order.qty ?? want?.qty, spec: want?.spec, for: want?.for && phraseOf(want.for),
      expected: order.expected, price: order.price && order.price.cents / 100, source: order.source,
    }),
  };
}

/** Leaves out what is not known. */
export function some<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as { [K in keyof T]?: Exclude<T[K], undefined> };
}
