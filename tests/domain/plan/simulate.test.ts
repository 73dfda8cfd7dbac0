import { describe, expect, it } from 'vitest';
import type { PlanInput, PlanJob } from '../../../domain/plan/input.ts';
import { wetDays } from '../../../domain/plan/draw.ts';
import { seeded } from '../../../domain/plan/random.ts';
import { chanceBy, simulate, type SimulateOptions, type Simulation } from '../../../domain/plan/simulate.ts';
import { drawThreePoint, type ThreePoint } from '../../../domain/plan/three-point.ts';
import { at, clock, job, shop, zone } from './tools/jobs.ts';
import { madeUpShop } from './tools/made-up-shop.ts';
import { cases } from './tools/published.ts';

function simulated(input: PlanInput, options?: SimulateOptions): Simulation {
  const result = simulate(input, options);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}
const spread = (low: number, likely: number, high: number): ThreePoint => ({ low, likely, high });
const hoursFrom = (input: PlanInput, moment: number) => (moment - input.now) / 3_600_000;

/** A PERT network: every activity passes by itself, one unit of it an hour. */
function network(activities: (typeof cases)[number]['activities']): PlanInput {
  return {
    now: at('2026-05-04 08:00'), supplies: [], hours: { zone, weekly: [], exceptions: [] },
    jobs: activities.map(({ id, points, after }): PlanJob => ({
      id, hours: points, needs: [], conditions: { place: 'either', hands: 0 }, after: after.map((before) => ({ job: before })),
    })),
  };
}

// Reference: 40,000 runs of another program, beta-PERT with λ = 4. Tolerances are four standard errors of 10,000 runs and more.
describe.each(cases)('Monte Carlo over $name', ({ activities, reference, length }) => {
  const input = network(activities);
  const result = simulated(input, { runs: 10_000 });
  const hours = result.finishes.map((moment) => hoursFrom(input, moment));
  const deviation = Math.sqrt(hours.reduce((sum, h) => sum + (h - reference.mean) ** 2, 0) / hours.length);

  it('agrees with the reference', () => {
    const close = deviation * 0.08;
    expect(Math.abs(hours.reduce((sum, h) => sum + h, 0) / hours.length - reference.mean)).toBeLessThan(close);
    expect(Math.abs(hoursFrom(input, result.p50!) - reference.p50)).toBeLessThan(close);
    expect(Math.abs(hoursFrom(input, result.p80!) - reference.p80)).toBeLessThan(close);
    expect(Math.abs(chanceBy(result, input.now + reference.due * 3_600_000) - reference.chance)).toBeLessThan(0.025);
  });

  it('is less hopeful than the normal formula where paths merge', () => {
    expect(chanceBy(result, input.now + reference.due * 3_600_000)).toBeLessThan(reference.classicalChance - 0.005);
    expect(hours.reduce((sum, h) => sum + h, 0) / hours.length).toBeGreaterThan(length - 0.03);
  });
});

describe('draws', () => {
  it('of three points have the mean (a + 4m + b) / 6 and keep within them', () => {
    const random = seeded(3);
    const draws = Array.from({ length: 20_000 }, () => drawThreePoint(spread(2, 3, 10), random));
    expect(draws.reduce((sum, x) => sum + x, 0) / draws.length).toBeCloseTo(4, 1);
    expect(Math.min(...draws)).toBeGreaterThanOrEqual(2);
    expect(Math.max(...draws)).toBeLessThanOrEqual(10);
    expect(drawThreePoint(spread(5, 5, 5), random)).toBe(5);
  });

  it('of weather have the long-run share of wet days, and wet days in rows', () => {
    const wet = new Uint8Array(50_000);
    wetDays(wet, { wetAfterDry: 0.2, wetAfterWet: 0.6 }, seeded(4));
    const share = wet.reduce((sum, day) => sum + day, 0) / wet.length;
    expect(share).toBeCloseTo(0.2 / (1 + 0.2 - 0.6), 1.7); // stationary share of a two-state chain
    const pairs = wet.reduce((sum, day, d) => sum + (d > 0 && day && wet[d - 1] ? 1 : 0), 0);
    expect(pairs / (share * wet.length)).toBeCloseTo(0.6, 1.7);
  });

  it('go on from the last day that is known', () => {
    const climate = { wetAfterDry: 0.1, wetAfterWet: 0.9 };
    const wet = new Uint8Array(2);
    const second = (known: number) => Array.from({ length: 2000 }, (_, k) => {
      wetDays(wet, climate, seeded(k), Int8Array.of(known, -1));
      return wet[1]!;
    }).reduce((sum, day) => sum + day, 0) / 2000;
    expect(second(1)).toBeGreaterThan(0.85);
    expect(second(0)).toBeLessThan(0.15);
  });
});

describe('a simulated shop', () => {
  const weld = job('weld', 0, { hours: spread(2, 4, 12) });
  const file = job('file', 0, { hours: spread(1, 1, 1.5) });

  it('is the same for the same seed, and in whatever order jobs were noted', () => {
    const input = madeUpShop(40);
    const once = simulated(input, { runs: 100, seed: 9 });
    expect(simulated(input, { runs: 100, seed: 9 })).toEqual(once);
    expect(simulated({ ...input, jobs: input.jobs.toReversed() }, { runs: 100, seed: 9 })).toEqual(once);
  });

  it('names the job that decides, and how often each was on the way to the finish', () => {
    const result = simulated(shop([weld, file, job('paint', 1, { after: [{ job: 'weld' }, { job: 'file' }] })]), { runs: 300 });
    expect(result.driver).toEqual({ kind: 'job', id: 'weld' });
    expect(result.jobs.find(({ id }) => id === 'paint')!.critical).toBe(1);
    expect(result.p50!).toBeLessThan(result.p80!);
  });

  it('names a delivery, or the weather, where that decides', () => {
    const belt = { id: 'belt', what: 'belt', leadDays: spread(4, 10, 40) };
    const late = simulated(shop([job('fit', 1, { needs: ['belt'] }), file], { supplies: [belt] }), { runs: 300 });
    expect(late.driver).toEqual({ kind: 'supply', id: 'belt' });
    const wet = shop([job('wash', 8, { conditions: { place: 'outdoors' } })], { weather: { climate: { wetAfterDry: 0.5, wetAfterWet: 0.8 } } });
    expect(simulated(wet, { runs: 300 }).driver).toEqual({ kind: 'weather' });
  });

  it('answers for a part alone, when asked', () => {
    const input = shop([weld, job('paint', 10, { after: [{ job: 'weld' }] }), file]);
    const part = simulated(input, { runs: 200, targets: ['weld'] });
    expect(part.p80!).toBeLessThan(simulated(input, { runs: 200 }).p50!);
    expect(part.driver).toEqual({ kind: 'job', id: 'weld' });
    expect(part.p50).toBe(part.jobs.find(({ id }) => id === 'weld')!.p50);
  });

  it('has no date for the whole while something is stuck, and says what', () => {
    const result = simulated(shop([file, job('lift', 1, { conditions: { hands: 2 } })]), { runs: 50 });
    expect(result).toMatchObject({ p50: undefined, p80: undefined, stuck: ['lift'] });
    expect(result.jobs.find(({ id }) => id === 'file')!.p50).toBeDefined();
    expect(chanceBy(result, at('2036-01-01'))).toBe(0);
  });

  it('has nothing to say of an empty shop', () => {
    expect(simulated(shop([]), { runs: 10 })).toMatchObject({ p50: undefined, driver: undefined, jobs: [], orderBy: [], stuck: [] });
  });

  it('refuses a circle with its path', () => {
    expect(simulate(shop([job('a', 1, { after: [{ job: 'a' }] })]))).toEqual({ ok: false, why: 'circle', path: ['a', 'a'] });
  });
});

describe('order-by dates', () => {
  // Four weeks of other work stand before the fitting; the seal takes five days to come.
  const other = job('other', 56);
  const input = shop([other, job('fit', 1, { needs: ['seal'], after: [{ job: 'other' }] })], {
    supplies: [{ id: 'seal', what: 'seal', leadDays: spread(5, 5, 5) }],
  });

  it('leave room for the delivery and no more', () => {
    const { orderBy, p80 } = simulated(input, { runs: 50, orderBy: true });
    // 56 h at 14 h a week end on Saturday 30 May at 12:00, fitting is Monday 1 June 18:00: to be ordered by 27 May 18:00 or before.
    expect(clock(p80)).toBe('Mon 2026-06-01 19:00');
    expect(orderBy).toMatchObject([{ supply: 'seal', what: 'seal', late: false }]);
    expect(clock(orderBy[0]!.by)).toBe('Wed 2026-05-27 08:00');
  });

  it('keep the chance of the P80 when kept, and cost it when missed by a fortnight', () => {
    const busy = madeUpShop(40, 3);
    const { orderBy, p80, order } = simulated(busy, { runs: 300, orderBy: true });
    expect(orderBy.some(({ late }) => !late)).toBe(true);
    for (const { supply, by, late } of orderBy) {
      if (late) continue;
      const chanceWhenOrdered = (when: number) => chanceBy(simulated({
        ...busy, supplies: busy.supplies.map((one) => (one.id === supply && 'leadDays' in one ? { ...one, orderedAt: when } : one)),
      }, { runs: 300, orders: [order] }), p80!);
      expect(chanceWhenOrdered(by), `${supply} kept`).toBeGreaterThan(0.74);
      expect(chanceWhenOrdered(by + 14 * 864e5), `${supply} missed`).toBeLessThan(0.7);
    }
  });

  it('say when it is late already', () => {
    const soon = shop([job('fit', 1, { needs: ['seal'] })], { supplies: [{ id: 'seal', what: 'seal', leadDays: spread(5, 8, 20) }] });
    expect(simulated(soon, { runs: 100, orderBy: true }).orderBy).toMatchObject([{ supply: 'seal', late: true, by: soon.now }]);
  });
});
