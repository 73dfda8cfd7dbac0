import type { CheapestAnswer, LandedQuote } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { candidates, keyOn } from '../log/naming.ts';
import type { HeardPrice, Shop, Thing } from '../log/shop.ts';
import type { More } from './given.ts';
import { amount, landedCents } from './money.ts';
import { some } from './supply.ts';

/** The best price heard, landed at the shop, on any machine; where nothing was quoted, what was ordered or paid for it. */
export function cheapest(shop: Shop, ask: AskOf<'cheapest'>, more: More): CheapestAnswer {
  const things = [...shop.machines.values()].flatMap(m => candidates(m, keyOn(m, ask.item)).flatMap(k => m.things.get(k) ?? []));
  const quoted = things.flatMap(t => t.quotes);
  const heard = (quoted.length ? quoted : things.flatMap(paidOrOrdered)).map(q => landed(q, more.mileRate ?? 0)).sort((a, b) => a.landed - b.landed);
  return { kind: 'cheapest', item: ask.item, best: heard[0] ?? null, others: heard.slice(1) };
}

const paidOrOrdered = (t: Thing): HeardPrice[] => [...t.orders, ...t.paid].flatMap(p => p.price ? [{ id: p.id, at: p.at, source: p.source, price: p.price }] : []);

const landed = ({ source, price, at }: HeardPrice, rate: number): LandedQuote => ({
  landed: amount(landedCents(price, rate)), price: amount(price.cents),
  ...some({ source, shipping: price.shippingCents === undefined ? undefined : amount(price.shippingCents), qty: price.qty, at }),
});
