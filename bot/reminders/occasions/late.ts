import { phraseOf } from '../../../domain/log/phrase.ts';
import { allThings, keyOf, type Look, type Occasion } from '../occasion.ts';

/** An order whose day is past. */
export const late: Look = ({ shop, today }) => allThings(shop).flatMap(({ machine, thing, name }) =>
  thing.orders.filter(o => o.expected !== undefined && o.expected < today).map((o): Occasion => {
    const key = keyOf('late', machine, thing, o.id);
    const use = thing.wants.find(w => w.for)?.for;
    return { topic: 'late', key, stop: key, item: name, expected: o.expected!, ...(o.source ? { source: o.source } : {}), ...(use ? { for: phraseOf(use) } : {}) };
  }));
