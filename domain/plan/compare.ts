import { adopt } from './adopt.ts';
import type { PlanInput } from './input.ts';
import { planWork, type PlannedJob, type PlanOptions, type PlanResult, type WorkPlan } from './plan.ts';
import { simulate, type SimulateOptions, type SimulationResult } from './simulate.ts';

/**
 * Plans two cases to be compared: the shop as it is and as it is supposed to be. A list scheduler has anomalies (with less
 * to do it may end later, Graham 1969, SIAM J. Appl. Math. 17:416-429), so each case also tries the other's orders:
 * by priority, by start and by end, and takes over the other's whole plan where that holds and ends sooner. Both are made
 * on the same path of weather.
 */
export function planBoth(one: PlanInput, other: PlanInput, options: PlanOptions = {}): [PlanResult, PlanResult] {
  const first = planWork(one, options);
  if (!first.ok) return [first, planWork(other, options)];
  const same = { ...options, weatherSeed: first.weatherSeed };
  const second = planWork(other, { ...same, orders: ordersOf(first) });
  if (!second.ok) return [first, second];
  const again = planWork(one, { ...same, orders: [...ordersOf(first), ...ordersOf(second)] });
  if (!again.ok) return [again, second];
  return [sooner(again, adopt(one, second)), sooner(second, adopt(other, again))];
}

function sooner(plan: WorkPlan, taken: WorkPlan | undefined): WorkPlan {
  if (!taken || taken.stuck.length > plan.stuck.length) return plan;
  return (taken.finish ?? Infinity) < (plan.finish ?? Infinity) ? taken : plan;
}

/** The orders worth trying on a case that differs little. */
function ordersOf({ jobs, order }: WorkPlan): string[][] {
  const by = (key: (job: PlannedJob) => number) => jobs.toSorted((a, b) => key(a) - key(b)).map(({ id }) => id);
  return [order, by(({ start }) => start), by(({ end }) => end)];
}

/**
 * Simulates two cases with the same luck. The other tries the order of the one; where it then ends sooner anywhere, the one tries its order
 * too, so that it is not the order alone that was better. Otherwise the one stays what it is when it is asked about by itself.
 */
export function simulateBoth(one: PlanInput, other: PlanInput, options: SimulateOptions = {}): [SimulationResult, SimulationResult] {
  const first = simulate(one, options);
  if (!first.ok) return [first, simulate(other, options)];
  const second = simulate(other, { ...options, orders: [first.order] });
  const isSooner = second.ok && ((second.p50 ?? Infinity) < (first.p50 ?? Infinity) || (second.p80 ?? Infinity) < (first.p80 ?? Infinity));
  return [second.ok && isSooner ? simulate(one, { ...options, orders: [second.order] }) : first, second];
}
