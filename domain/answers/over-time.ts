import type { SpentAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { HoursSaid, Shop } from '../log/shop.ts';
import type { More } from './given.ts';
import { coveredBy } from './find.ts';

/** A sum as it stood from a moment (ISO) on; `what`: what made the step, where it has a name, and by how much. */
export interface Step { at: string; sum: number; what?: string; by: number }

/** Money as it was spent, from an answer about it; what is older than its items is the height that the first one starts from. */
export function moneyOverTime({ items, total }: SpentAnswer): Step[] {
  let cents = Math.round(total * 100) - items.reduce((sum, i) => sum + Math.round(i.price * 100), 0);
  return items.map(({ at, item, price }) => { cents += Math.round(price * 100); return { at, sum: cents / 100, what: item, by: price }; });
}

/** Hours as they were noted. "Nine hours all told" sets the sum of its part, or of its machine, from then on: a step may go down. */
export function hoursOverTime(shop: Shop, ask: Pick<AskOf<'timeSpent'>, 'part'>, more: More): Step[] {
  const said = coveredBy(shop, ask.part, more.machine).flatMap(({ machine, things }) => things.flatMap(t => t.hours.map(h => ({ ...h, machine: machine.key, thing: t.key }))));
  const sums = new Map<string, Map<string, number>>();
  let before = 0;
  return said.sort((a, b) => a.id - b.id).map(h => {
    const own = sums.get(h.machine) ?? new Map<string, number>();
    sums.set(h.machine, after(own, h));
    const sum = [...sums.values()].flatMap(s => [...s.values()]).reduce((a, b) => a + b, 0);
    const step = { at: h.at, sum: Math.round(sum * 1e4) / 1e4, by: Math.round((sum - before) * 1e4) / 1e4 };
    before = sum;
    return step;
  });
}

function after(own: Map<string, number>, { thing, hours, total }: HoursSaid & { thing: string }): Map<string, number> {
  if (total && thing === '') own.clear();
  return own.set(thing, total ? hours : (own.get(thing) ?? 0) + hours);
}
