import type { OrderByAnswer } from '../model/answer.ts';
import type { Shop } from '../log/shop.ts';
import { dayIn } from '../plan/from-shop/moments.ts';
import { planOf, type ShopPlan } from '../plan/from-shop/plan-of.ts';
import { simulate, type SimulationResult } from '../plan/simulate.ts';
import { hereOf, lookUp } from './find.ts';
import type { More, Now } from './given.ts';
import { some } from './supply.ts';

/** By when what is wanted has to be ordered: a simulation to be run on the plan. `item`: only that. */
interface OrderByCase { item?: string; key?: string; plan: ShopPlan }

/** The last day to order each thing that is wanted and not ordered, so that the four-in-five finish stays. */
export function orderBy(shop: Shop, item: string | undefined, now: Now, more: More): OrderByAnswer {
  const found = orderByCase(shop, item, now, more);
  return 'kind' in found ? found : orderByFrom(found, simulate(found.plan.input, { orderBy: true }));
}

export function orderByCase(shop: Shop, item: string | undefined, now: Now, more: More): OrderByCase | OrderByAnswer {
  const none = (why: string): OrderByAnswer => ({ kind: 'orderBy', ...some({ item }), items: [], why });
  const found = item === undefined ? undefined : lookUp(shop, item, more.machine, t => t.wants.length > 0);
  if (item !== undefined && !found?.thing) return none(`I know of no ${item} to order.`);
  const here = found?.machine ?? hereOf(shop, more.machine);
  const plan = planOf({ machines: here ? [here] : [...shop.machines.values()], shop, now, settings: more.planning });
  const wanted = [...plan.awaited.values()].filter(a => a.kind === 'want' && (!found || a.thing === found.thing));
  if (wanted.length) return { ...some({ item, key: found?.thing?.key }), plan };
  return none(found ? `The ${found.thing!.name} is not something that has to be ordered now.` : 'Nothing is left to order.');
}

/** Soonest first. */
export function orderByFrom({ item, key, plan }: OrderByCase, result: SimulationResult): OrderByAnswer {
  const { zone } = plan.input.hours;
  const dates = result.ok ? result.orderBy.filter(o => key === undefined || plan.awaited.get(o.supply)?.thing.key === key) : [];
  const items = dates.map(o => ({ item: o.what, by: dayIn(o.by, zone), ...(o.late ? { late: true } : {}) })).sort((a, b) => (a.by < b.by ? -1 : a.by > b.by ? 1 : 0));
  return { kind: 'orderBy', ...some({ item }), items, ...(items.length ? {} : { why: 'There is no end in sight to keep, so there is no day to order by.' }) };
}
