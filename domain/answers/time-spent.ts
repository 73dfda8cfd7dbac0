import type { TimeSpentAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { dayOf } from '../log/days.ts';
import type { HoursSaid, Shop, Thing } from '../log/shop.ts';
import type { More } from './given.ts';
import { coveredBy } from './find.ts';
import { some } from './supply.ts';

/**
 * Hours so far. "Nine hours all told" sets the sum of its part (or of the machine) up to then; in a stretch of days only hours added
 * in it count, for a sum doesn't say when they were spent.
 */
export function timeSpent(shop: Shop, ask: AskOf<'timeSpent'>, more: More): TimeSpentAnswer {
  const sums = coveredBy(shop, ask.part, more.machine).map(({ things }) => sumOf(things, ask.from, ask.to));
  return { kind: 'timeSpent', ...some({ part: ask.part, from: ask.from, to: ask.to }), hours: Math.round(sums.reduce((a, b) => a + b, 0) * 10_000) / 10_000 };
}

function sumOf(things: readonly Thing[], from: string | undefined, to: string | undefined): number {
  const said = things.flatMap(t => t.hours.map(h => ({ ...h, key: t.key }))).sort((a, b) => a.id - b.id);
  if (from !== undefined || to !== undefined) return said.filter(h => !h.total && within(h, from, to)).reduce((sum, h) => sum + h.hours, 0);
  return running(said);
}
const within = (h: HoursSaid, from = '', to = '9'): boolean => dayOf(h.at) >= from && dayOf(h.at) <= to;

function running(said: readonly (HoursSaid & { key: string })[]): number {
  const byThing = new Map<string, number>();
  for (const h of said) {
    if (h.total && h.key === '') byThing.clear();
    byThing.set(h.key, h.total ? h.hours : (byThing.get(h.key) ?? 0) + h.hours);
  }
  return [...byThing.values()].reduce((a, b) => a + b, 0);
}
