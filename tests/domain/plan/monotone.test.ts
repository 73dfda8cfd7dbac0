import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planBoth } from '../../../domain/plan/compare.ts';
import type { PlanInput, PlanJob } from '../../../domain/plan/input.ts';
import { at, job, shop } from './tools/jobs.ts';

const plan = fc.array(fc.record({
  hours: fc.integer({ min: 1, max: 10 }),
  before: fc.array(fc.nat(11), { maxLength: 2 }),
  lag: fc.constantFrom(0, 0, 0, 24, 60),
  outdoors: fc.boolean(),
  unbroken: fc.boolean(),
  days: fc.constantFrom(0, 0, 0, 3, 9),
}), { minLength: 3, maxLength: 12 }).map((rows): PlanInput => {
  const jobs: PlanJob[] = rows.map(({ hours, before, lag, outdoors, unbroken, days }, i) => job(`j${i}`, hours / 2, {
    after: [...new Set(before.filter((b) => b < i))].map((b) => ({ job: `j${b}`, lagHours: lag })),
    needs: days > 0 ? [`s${i}`] : [],
    unbroken: unbroken && hours <= 4,
    conditions: { place: outdoors ? 'outdoors' : 'indoors' },
  }));
  const supplies = rows.flatMap(({ days }, i) => {
    const day = at('2026-05-04 08:00') + days * 864e5;
    return days > 0 ? [{ id: `s${i}`, what: `part ${i}`, arrives: { low: day, likely: day, high: day } }] : [];
  });
  return shop(jobs, { supplies });
});

function finishes(with_: PlanInput, without: PlanInput): [number, number] {
  const [a, b] = planBoth(with_, without, { schedules: 30 });
  if (!a.ok || !b.ok) throw new Error('no plan');
  return [a.finish!, b.finish!];
}

describe('a plan bends the right way', () => {
  it('a blocker more never makes the finish earlier', () => {
    fc.assert(fc.property(plan, fc.nat(11), fc.nat(11), (without, a, b) => {
      const [first, then] = [Math.min(a, b), Math.max(a, b)];
      fc.pre(first !== then && then < without.jobs.length);
      const jobs = without.jobs.map((one, i) => (i === then ? { ...one, after: [...one.after, { job: `j${first}`, lagHours: 12 }] } : one));
      const [blocked, free] = finishes({ ...without, jobs }, without);
      expect(blocked).toBeGreaterThanOrEqual(free);
    }), { numRuns: 100, seed: 5 });
  }, 300_000);

  it('a later arrival never helps', () => {
    fc.assert(fc.property(plan, fc.integer({ min: 1, max: 20 }), (soon, days) => {
      fc.pre(soon.supplies.length > 0);
      const supplies = soon.supplies.map((supply, s) => {
        if (s > 0 || !('arrives' in supply)) return supply;
        const day = supply.arrives.likely + days * 864e5;
        return { ...supply, arrives: { low: day, likely: day, high: day } };
      });
      const [late, early] = finishes({ ...soon, supplies }, soon);
      expect(late).toBeGreaterThanOrEqual(early);
    }), { numRuns: 100, seed: 6 });
  }, 300_000);

  it('more to do never ends sooner', () => {
    fc.assert(fc.property(plan, (more) => {
      const less = { ...more, jobs: more.jobs.slice(0, -1) };
      const [longer, shorter] = finishes(more, less);
      expect(longer).toBeGreaterThanOrEqual(shorter);
    }), { numRuns: 60, seed: 7 });
  }, 300_000);
});
