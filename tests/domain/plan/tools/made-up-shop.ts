import { seeded } from '../../../../domain/plan/random.ts';
import type { PlanInput, PlanJob } from '../../../../domain/plan/input.ts';
import { at, zone } from './jobs.ts';

/**
 * A made-up shop with `count` jobs: three hours each evening, six on weekend days, help on Saturday mornings, wet days, a
 * fifth of the jobs out of doors, one in sixteen for two people, cures of one to three days on some links, and parts on order.
 */
export function madeUpShop(count: number, seed = 1): PlanInput {
  const random = seeded(seed);
  const now = at('2026-04-06 08:00');
  const jobs: PlanJob[] = [];
  const supplies: PlanInput['supplies'][number][] = [];
  for (let i = 0; i < count; i++) {
    const likely = 0.5 + 3 * random.unit();
    const before = new Set<number>();
    for (let k = random.below(3); k > 0 && i > 0; k--) before.add(Math.max(0, i - 1 - random.below(15)));
    const needs: string[] = [];
    if (random.unit() < 0.1) {
      const id = `s${i}`;
      supplies.push(random.unit() < 0.5
        ? { id, what: `part ${i}`, leadDays: { low: 5, likely: 10, high: 30 } }
        : { id, what: `part ${i}`, arrives: { low: now + 4 * 864e5, likely: now + 7 * 864e5, high: now + 20 * 864e5 } });
      needs.push(id);
    }
    jobs.push({
      id: `j${i}`, hours: { low: likely / 2, likely, high: likely * 2.5 }, needs,
      after: [...before].map((b) => ({ job: `j${b}`, lagHours: random.unit() < 0.15 ? 24 + 48 * random.unit() : 0 })),
      conditions: { place: random.unit() < 0.2 ? 'outdoors' : 'indoors', hands: random.unit() < 0.06 ? 2 : 1 },
    });
  }
  return {
    now, jobs, supplies, helpUsually: [{ weekday: 6, from: '08:00', to: '12:00' }],
    hours: {
      zone, exceptions: [],
      weekly: [1, 2, 3, 4, 5].map((weekday) => ({ weekday, from: '18:00', to: '21:00' })).concat([6, 7].map((weekday) => ({ weekday, from: '09:00', to: '15:00' }))),
    },
    weather: { climate: { wetAfterDry: 0.35, wetAfterWet: 0.57 } },
  };
}
