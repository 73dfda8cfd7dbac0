import type { Bench } from './bench.ts';
import type { Drawer } from './draw.ts';
import { lastEnd, newTimes } from './course.ts';
import type { PlanInput, Supply } from './input.ts';
import { benchBuilder } from './pass.ts';

/** Latest moment (ms UTC) to order a supply so that the P80 finish stays. `late`: even ordered now it moves the finish. */
export interface OrderBy { supply: string; what: string; by: number; late: boolean }

/** Runs a trial; they use the same luck, so few suffice to see the chance of a date sink. */
const RUNS = 60;
/** Losing no more of them than this counts as staying. */
const NOTICEABLE = 1;
const DAY = 1440;

export interface OrderCase {
  input: PlanInput; bench: Bench; drawn: Drawer; list: Int32Array; seed: number;
  /** The P80 finish, minutes. */
  p80: number;
}

/**
 * For every supply not ordered yet, by halving: the last day on which the order can go out with the P80 finish as likely
 * to be kept as when it goes out now. (Not by moving quantiles: where help comes on Saturdays, finishes lie a week apart
 * and a quantile jumps.) Each supply is judged with all the others in time, so not all can be left to the last day.
 */
export function orderDates({ input, bench, drawn, list, seed, p80 }: OrderCase): OrderBy[] {
  const builder = benchBuilder(bench);
  const times = newTimes(input.jobs.length);

  /**
   * Runs that keep the P80 when the consumers of supply `s` get it `delay` minutes later than drawn; `undefined`: at once.
   * Stops when no more than `enough` - 1 can be reached.
   */
  function kept(s: number, consumers: readonly number[], delay: number | undefined, enough = 0): number {
    let runs = 0;
    for (let run = 0; run < RUNS && runs + RUNS - run >= enough; run++) {
      drawn.chance(seed + run);
      const arrival = delay === undefined ? 0 : drawn.arrival[s]! + delay;
      for (const i of consumers) drawn.draw.release[i] = drawn.releaseWith(i, s, arrival);
      builder.build(list, drawn.draw, times);
      if (lastEnd(times) <= p80) runs++;
    }
    return runs;
  }

  if (!input.supplies.some(isToOrder)) return [];
  // With no delay every supply comes as drawn: the same for all.
  const now = kept(0, [], 0);
  return input.supplies.flatMap((supply, s) => {
    if (!isToOrder(supply)) return [];
    const consumers = [...input.jobs.keys()].filter((i) => input.jobs[i]!.needs.includes(supply.id));
    if (consumers.length === 0) return [];
    const late = kept(s, consumers, undefined) > now + NOTICEABLE;
    const by = late ? 0 : lastThat((days) => kept(s, consumers, days * DAY, now - NOTICEABLE) >= now - NOTICEABLE, Math.ceil(p80 / DAY));
    return [{ supply: supply.id, what: supply.what, by: input.now + by * DAY * 60_000, late }];
  });
}

function isToOrder(supply: Supply): boolean {
  return 'leadDays' in supply && supply.orderedAt === undefined;
}

/** The greatest whole number below `limit` for which `holds`, given that it holds up to some number and not beyond; 0 at least. */
function lastThat(holds: (n: number) => boolean, limit: number): number {
  let [low, high] = [0, limit];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
