import { compileNetwork, type Network, type NetworkResult } from './network.ts';
import type { PlanInput } from './input.ts';
import { freeSlots, weeklyHours, type Slots } from './calendar.ts';
import { masksFor, type Masks } from './masks.ts';
import { meanOf } from './three-point.ts';

/** Later than any date the planner deals in, in minutes: "has no date". */
export const NEVER = 0x3fff_ffff;

/**
 * One person's work as flat arrays, times in whole minutes since `slots.origin`. What changes from one simulated year to
 * the next (durations, arrivals, wet days) is not in here but in `Draw`.
 */
export interface Bench {
  readonly slots: Slots;
  /** Precedence and a rough elapsed duration of each job, for priorities. */
  readonly network: Network;
  /** Minutes that pass between a predecessor and the job; beside `network.pred`. */
  readonly lag: Int32Array;
  /** The same, beside `network.succ`. */
  readonly lagAfter: Int32Array;
  /** 0: takes nobody's time. */
  readonly hands: Uint8Array;
  readonly unbroken: Uint8Array;
  /** Row of `masks` for each job. */
  readonly row: Int32Array;
  readonly masks: Masks;
}

export type BenchResult = { ok: true; bench: Bench } | Extract<NetworkResult, { ok: false }>;

/** Lays the input out for the builder. An impossible network is a value that says why. */
export function layOut(input: PlanInput): BenchResult {
  const perWeek = weeklyHours(input.hours);
  // A working hour takes so many hours of the week: what makes a working job comparable with a cure.
  const stretch = perWeek > 0 ? 168 / perWeek : 1;
  const index = new Map(input.jobs.map(({ id }, i) => [id, i]));
  const longestLag = input.jobs.map(() => 0);
  for (const { after } of input.jobs) {
    for (const { job, lagHours = 0 } of after) {
      const i = index.get(job);
      if (i !== undefined) longestLag[i] = Math.max(longestLag[i]!, lagHours);
    }
  }
  const compiled = compileNetwork(input.jobs.map(({ id, hours, conditions, after }, i) => ({
    id, needs: [], after: after.map(({ job }) => job),
    duration: Math.round(meanOf(hours) * (conditions.hands === 0 ? 1 : stretch) + longestLag[i]!),
  })), []);
  if (!compiled.ok) return compiled;
  const { network } = compiled;
  const lag = Int32Array.from(input.jobs.flatMap(({ after }) => after.map(({ lagHours = 0 }) => Math.round(lagHours * 60))));
  const slots = freeSlots(input.hours, input.now, horizonDays(input, perWeek));
  const { masks, row } = masksFor(input, slots);
  return {
    ok: true,
    bench: {
      slots, network, lag, lagAfter: bySuccessor(network, lag), row, masks,
      hands: Uint8Array.from(input.jobs, ({ conditions }) => conditions.hands),
      unbroken: Uint8Array.from(input.jobs, ({ unbroken }) => (unbroken ? 1 : 0)),
    },
  };
}

/** Long enough for twice the work at its worst, every lag and delivery after each other, and half a year; at most six years. */
function horizonDays({ jobs, supplies, now }: PlanInput, perWeek: number): number {
  const work = jobs.reduce((sum, { hours, conditions }) => sum + (conditions.hands > 0 ? hours.high : 0), 0);
  const passing = jobs.reduce((sum, job) => sum + job.after.reduce((most, { lagHours = 0 }) => Math.max(most, lagHours), 0)
    + (job.conditions.hands === 0 ? job.hours.high : 0), 0);
  const latest = Math.max(0, ...supplies.map((s) => ('arrives' in s ? (s.arrives.high - now) / 86_400_000 : s.leadDays.high)),
    ...jobs.map(({ notBefore }) => ((notBefore?.at ?? now) - now) / 86_400_000));
  const weeks = perWeek > 0 ? (2 * work) / perWeek : 0;
  return Math.min(2200, Math.ceil(180 + 7 * weeks + passing / 24 + latest));
}

function bySuccessor(network: Network, lag: Int32Array): Int32Array {
  const out = new Int32Array(lag.length);
  const filled = network.succStart.slice();
  for (let i = 0; i < network.count; i++) {
    for (let e = network.predStart[i]!; e < network.predStart[i + 1]!; e++) out[filled[network.pred[e]!]!++] = lag[e]!;
  }
  return out;
}

/**
 * The same bench seen from the far end of the calendar: minute 0 is the end of the last day, predecessors are successors.
 * A pass over it puts every job as late as it will go.
 */
export function seenFromTheEnd(bench: Bench): { bench: Bench; end: number } {
  const { slots, network, masks } = bench;
  const end = Math.max(slots.days.dayStart.at(-1)!, slots.end.at(-1) ?? 0);
  const turned = (times: Int32Array) => times.map((at) => end - at).reverse();
  return {
    end,
    bench: {
      ...bench, lag: bench.lagAfter, lagAfter: bench.lag,
      slots: { ...slots, start: turned(slots.end), end: turned(slots.start), day: slots.day.slice().reverse() },
      network: {
        ...network, predStart: network.succStart, pred: network.succ, succStart: network.predStart, succ: network.pred,
        topological: network.topological.slice().reverse(),
      },
      masks: { ...masks, fit: masks.fit.map((mask) => mask.slice().reverse()), lastDay: masks.lastDay.map((days) => days.slice().reverse()) },
    },
  };
}
