import { describe, expect, it } from 'vitest';
import { adopt } from '../../../domain/plan/adopt.ts';
import { layOut } from '../../../domain/plan/bench.ts';
import { planBoth, simulateBoth } from '../../../domain/plan/compare.ts';
import { drawer } from '../../../domain/plan/draw.ts';
import { newTimes } from '../../../domain/plan/course.ts';
import type { PlanInput } from '../../../domain/plan/input.ts';
import { benchBuilder } from '../../../domain/plan/pass.ts';
import { faultInShop } from './tools/check-shop.ts';
import { job, planned, shop } from './tools/jobs.ts';
import { madeUpShop } from './tools/made-up-shop.ts';

/** Soonest finish over all orders of the jobs that keep to the precedence, minutes. */
function soonest(input: PlanInput, weatherSeed: number): number {
  const laid = layOut(input);
  if (!laid.ok) throw new Error('no bench');
  const drawn = drawer(input, laid.bench);
  drawn.middling(weatherSeed);
  const builder = benchBuilder(laid.bench);
  const times = newTimes(input.jobs.length);
  const { predStart, pred } = laid.bench.network;
  let best = Infinity;
  const extend = (list: number[]) => {
    if (list.length === input.jobs.length) best = Math.min(best, builder.build(Int32Array.from(list), drawn.draw, times));
    for (let i = 0; i < input.jobs.length; i++) {
      if (list.includes(i) || pred.slice(predStart[i], predStart[i + 1]).some((p) => !list.includes(p))) continue;
      extend([...list, i]);
    }
  };
  extend([]);
  return best;
}

describe('plans of made-up shops', () => {
  it.each([1, 2, 3, 4, 5, 6])('hold when checked by the clock on the wall (shop %i)', (seed) => {
    const input = madeUpShop(50, seed);
    const plan = planned(input, { schedules: 40 });
    expect(faultInShop(input, plan)).toBeUndefined();
    expect(plan.jobs.length + plan.stuck.length).toBe(50);
  });

  it('the checker does find faults', () => {
    const input = madeUpShop(20, 1);
    const plan = planned(input);
    const moved = { ...plan, jobs: plan.jobs.map((one, i) => (i === 3 ? { ...one, pieces: one.pieces.map(({ from, to }) => ({ from: from - 6 * 3_600_000, to: to - 6 * 3_600_000 })) } : one)) };
    expect(faultInShop(input, moved)).toBeDefined();
    expect(adopt(input, moved)).toBeUndefined();
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('of six jobs are as short as the best of all orders (shop %i)', (seed) => {
    const six = madeUpShop(6, seed);
    const input = { ...six, supplies: [], jobs: six.jobs.map((one) => ({ ...one, needs: [] })) };
    const plan = planned(input);
    expect((plan.finish! - input.now) / 60_000).toBe(soonest(input, plan.weatherSeed));
  });

  it('take over a plan that holds, and only then', () => {
    const input = madeUpShop(25, 2);
    const plan = planned(input);
    expect(adopt(input, plan)?.finish).toBe(plan.finish);
    const last = plan.jobs.at(-1)!.id;
    const blocked = { ...input, jobs: input.jobs.map((one) => (one.id === last ? { ...one, notBefore: { at: plan.finish! + 864e5, what: 'a word' } } : one)) };
    expect(adopt(blocked, plan)).toBeUndefined();
  });
});

describe('two cases side by side', () => {
  it('a supposed arrival moves what hangs on it and nothing else', () => {
    const supply = (days: number): PlanInput['supplies'] => [{ id: 'coupling', what: 'coupling', leadDays: { low: days, likely: days, high: days } }];
    const jobs = [job('pump', 1, { needs: ['coupling'] }), job('radiator', 2, { after: [{ job: 'pump' }] }), job('seat', 1)];
    const [late, soon] = planBoth(shop(jobs, { supplies: supply(12) }), shop(jobs, { supplies: supply(3) }));
    if (!late.ok || !soon.ok) throw new Error('no plan');
    expect(soon.finish! - late.finish!).toBeLessThan(-7 * 864e5);
    const seat = (plan: typeof late) => plan.jobs.find(({ id }) => id === 'seat')!.end;
    expect(seat(soon)).toBe(seat(late));
  });

  it.each([1, 2, 3])('the P50 and P80 of a shop with a later delivery are no earlier (shop %i)', (seed) => {
    const input = madeUpShop(40, seed);
    const late = { ...input, supplies: input.supplies.map((one, s) => (s === 0 && 'arrives' in one ? { ...one, arrives: { low: one.arrives.low + 3e9, likely: one.arrives.likely + 3e9, high: one.arrives.high + 3e9 } }
      : s === 0 && 'leadDays' in one ? { ...one, leadDays: { low: 40, likely: 45, high: 60 } } : one)) };
    const [before, after] = simulateBoth(input, late, { runs: 200 });
    if (!before.ok || !after.ok) throw new Error('no simulation');
    expect(after.p50!).toBeGreaterThanOrEqual(before.p50!);
    expect(after.p80!).toBeGreaterThanOrEqual(before.p80!);
  });
});
