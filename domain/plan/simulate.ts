import { layOut, NEVER, type Bench, type BenchResult } from './bench.ts';
import { drawer, type Drawer } from './draw.ts';
import { watch, type Driver, type Watch } from './drivers.ts';
import { lastOf, newTimes, type Times } from './course.ts';
import { bestList, drawMiddling, soonestList } from './improve.ts';
import { inOrderOfIds, type PlanInput } from './input.ts';
import { dayAt } from './masks.ts';
import { orderDates, type OrderBy } from './order-by.ts';
import { benchBuilder } from './pass.ts';
import { asList } from './plan.ts';
import { countUpTo, quantile, shareUpTo } from './quantile.ts';
import { seeded } from './random.ts';

export interface SimulateOptions {
  runs?: number;
  seed?: number;
  /** Passes spent on finding the order of the jobs before the runs. */
  schedules?: number;
  /** The jobs whose last end is the finish asked for; left out: all. */
  targets?: readonly string[];
  /** Orders of jobs to be tried as well; see `PlanOptions`. */
  orders?: readonly (readonly string[])[];
  /** Work out order-by dates too, for the whole of the work only (not with `targets`); takes several times as long. */
  orderBy?: boolean;
}

/** ms UTC; `undefined` where that share of runs has no date at all. */
interface Spread { p50: number | undefined; p80: number | undefined }

export interface Simulation extends Spread {
  ok: true;
  runs: number;
  /** Finish of each run, sorted (ms UTC, Infinity for none): `chanceBy` reads it. Plain data, so that a worker can send it. */
  finishes: Float64Array;
  driver: Driver | undefined;
  /** For each job its own spread, and in which share of runs it was on the chain that led to the finish. */
  jobs: ({ id: string; critical: number } & Spread)[];
  orderBy: OrderBy[];
  /** Jobs that have no date in any run. */
  stuck: string[];
  /** The order of priority used. */
  order: string[];
}

export type SimulationResult = Simulation | Extract<BenchResult, { ok: false }>;

/**
 * Monte Carlo over the calendar: durations and arrivals from beta-PERT (λ = 4), wet days beyond the forecast from a chain
 * of dry and wet days, the same priority list in every run. The same input and seed give the same answer; no clock, no I/O.
 */
export function simulate(given: PlanInput, options: SimulateOptions = {}): SimulationResult {
  const { runs = 1000, seed = 1, schedules = 60, orders = [], targets } = options;
  const input = inOrderOfIds(given);
  const laid = layOut(input);
  if (!laid.ok) return laid;
  const { bench } = laid;
  const drawn = drawer(input, bench);
  drawMiddling(bench, drawn, seed);
  const hints = orders.map((order) => asList(bench, order));
  const { list: best, last } = bestList(bench, drawn.draw, schedules, seeded(seed), hints);
  const aim = aimOf(input, targets);
  const list = soonestList(bench, drawn, [best, ...hints], aim, seed);
  const times = newTimes(input.jobs.length);
  const watching = watch(input, bench, drawn, times, dayAt(bench.slots.days, last));
  const ends = runAll(bench, drawn, list, times, watching, aim, runs, seed);
  return summed({ input, bench, drawn, list, aim, ends, watching, runs, seed, orderBy: (options.orderBy ?? false) && !targets });
}

/** Share of runs finished by a moment (ms UTC). */
export function chanceBy({ finishes }: Pick<Simulation, 'finishes'>, moment: number): number {
  return shareUpTo(finishes, moment);
}

function aimOf({ jobs }: PlanInput, targets: readonly string[] | undefined): Int32Array {
  const wanted = targets && new Set(targets);
  return Int32Array.from(jobs.keys()).filter((i) => !wanted || wanted.has(jobs[i]!.id));
}

/** Ends of all jobs in all runs: job by job, `runs` numbers each. */
function runAll(bench: Bench, drawn: Drawer, list: Int32Array, times: Times, watching: Watch, aim: Int32Array, runs: number, seed: number): Int32Array {
  const builder = benchBuilder(bench);
  const { slots } = bench;
  const ends = new Int32Array(times.end.length * runs);
  let k = 0;
  // A job takes its pieces in the order of time, so the slot is looked for from where the last one was.
  const onPiece = (job: number, from: number) => {
    if (k >= slots.count || slots.start[k]! > from) k = 0;
    if (k === 0) k = countUpTo(slots.end, from);
    while (slots.end[k]! <= from) k++;
    watching.worked[k] = job;
  };
  for (let run = 0; run < runs; run++) {
    drawn.chance(seed + run);
    watching.worked.fill(-1);
    builder.build(list, drawn.draw, times, 0, onPiece);
    for (let i = 0; i < times.end.length; i++) ends[i * runs + run] = Math.min(NEVER, times.end[i]!);
    const last = lastOf(aim, times);
    if (last >= 0) watching.see(last, times.end[last]!);
  }
  return ends;
}

interface Runs {
  input: PlanInput; bench: Bench; drawn: Drawer; list: Int32Array; aim: Int32Array; ends: Int32Array; watching: Watch;
  runs: number; seed: number; orderBy: boolean;
}

function summed(all: Runs): Simulation {
  const { input, bench, ends, aim, runs, watching } = all;
  const moment = (minute: number | undefined) => (minute === undefined || minute >= NEVER ? undefined : bench.slots.origin + minute * 60_000);
  const finish = new Int32Array(aim.length > 0 ? runs : 0);
  for (const i of aim) for (let run = 0; run < runs; run++) finish[run] = Math.max(finish[run]!, ends[i * runs + run]!);
  const sorted = finish.sort();
  const spread = (minutes: Int32Array): Spread => ({ p50: moment(quantile(minutes, 0.5)), p80: moment(quantile(minutes, 0.8)) });
  const jobs = input.jobs.map(({ id }, i) => ({ id, critical: watching.critical(i), ...spread(ends.slice(i * runs, (i + 1) * runs).sort()) }));
  const p80 = quantile(sorted, 0.8);
  const canWait = all.orderBy && p80 !== undefined && p80 < NEVER;
  return {
    ok: true, runs, ...spread(sorted), driver: watching.driver(), jobs,
    finishes: Float64Array.from(sorted, (minute) => moment(minute) ?? Infinity),
    orderBy: canWait ? orderDates({ ...all, p80 }) : [],
    stuck: input.jobs.filter((_, i) => ends.subarray(i * runs, (i + 1) * runs).every((end) => end >= NEVER)).map(({ id }) => id),
    order: Array.from(all.list, (i) => bench.network.ids[i]!),
  };
}
