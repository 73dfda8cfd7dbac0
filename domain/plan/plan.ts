import { layOut, NEVER, type Bench, type BenchResult } from './bench.ts';
import { drawer, type Drawer } from './draw.ts';
import { newTimes, type Draw, type Times } from './course.ts';
import { bestList, drawMiddling } from './improve.ts';
import { inOrderOfIds, type PlanInput } from './input.ts';
import { benchBuilder } from './pass.ts';
import { seeded } from './random.ts';
import type { Reason } from './reason.ts';
import { explainer, type Piece } from './explain.ts';

export interface PlannedJob {
  id: string;
  /** ms UTC. */
  start: number;
  end: number;
  /** Stretches of work, in order; none for what goes on by itself. */
  pieces: { from: number; to: number }[];
  why: Reason[];
}

export interface WorkPlan {
  ok: true;
  /** In the order in which they start. */
  jobs: PlannedJob[];
  /** What can't be given a date, and why not. */
  stuck: { id: string; why: Reason[] }[];
  /** End of the last job that has a date (ms UTC), `undefined` when none has. */
  finish: number | undefined;
  /** Ids in the order of priority that gave this plan; a hint for the plan of a case that differs little. */
  order: string[];
  /** The path of weather beyond the forecast that it was made on. */
  weatherSeed: number;
}

export type PlanResult = WorkPlan | Extract<BenchResult, { ok: false }>;

export interface PlanOptions {
  /** Passes to spend on the search. */
  schedules?: number;
  seed?: number;
  /** Orders of plans it will be compared with: a list scheduler can do worse with less to do, so each case tries the other's list. */
  orders?: readonly (readonly string[])[];
  /** Path of weather beyond the forecast; left out, a middling one is chosen. Plans to be compared need the same. */
  weatherSeed?: number;
}

/**
 * One plan of the person's work from middling durations and arrivals, with a reason for each start. It is too early as a
 * forecast of the finish (means do not add up that way): `simulate` answers that.
 */
export function planWork(given: PlanInput, { schedules = 120, seed = 1, orders = [], weatherSeed }: PlanOptions = {}): PlanResult {
  const input = inOrderOfIds(given);
  const laid = layOut(input);
  if (!laid.ok) return laid;
  const { bench } = laid;
  const drawn = drawer(input, bench);
  const path = weatherSeed ?? drawMiddling(bench, drawn, seed);
  drawn.middling(path);
  const hints = orders.map((order) => asList(bench, order));
  const { list } = bestList(bench, drawn.draw, schedules, seeded(seed), hints);
  return { ...described(input, bench, drawn, built(bench, drawn.draw, list)), weatherSeed: path };
}

/** A finished pass: the list it was built from, times of all jobs, and every stretch of work. */
interface Built { list: Int32Array; times: Times; pieces: Piece[] }

function built(bench: Bench, draw: Draw, list: Int32Array): Built {
  const times = newTimes(list.length);
  const pieces: Piece[] = [];
  benchBuilder(bench).build(list, draw, times, 0, (job, from, to) => pieces.push({ job, from, to }));
  return { list, times, pieces };
}

/** Turns a finished pass into moments, names and reasons. */
export function described(input: PlanInput, bench: Bench, drawn: Drawer, { list, times, pieces }: Built): Omit<WorkPlan, 'weatherSeed'> {
  const explain = explainer(input, bench, drawn, times, pieces);
  const at = (minute: number) => bench.slots.origin + minute * 60_000;
  const plan: Omit<WorkPlan, 'weatherSeed'> = { ok: true, jobs: [], stuck: [], finish: undefined, order: Array.from(list, (i) => bench.network.ids[i]!) };
  for (const [i, { id }] of input.jobs.entries()) {
    if (times.end[i]! >= NEVER) {
      plan.stuck.push({ id, why: explain(i) });
      continue;
    }
    const end = at(times.end[i]!);
    plan.jobs.push({ id, start: at(times.start[i]!), end, pieces: joined(pieces, i).map(({ from, to }) => ({ from: at(from), to: at(to) })), why: explain(i) });
    plan.finish = Math.max(plan.finish ?? end, end);
  }
  plan.jobs.sort((a, b) => a.start - b.start || a.end - b.end);
  return plan;
}

/** The pieces of one job, adjoining ones made one. */
function joined(pieces: readonly Piece[], job: number): Piece[] {
  const out: Piece[] = [];
  for (const piece of pieces) {
    if (piece.job !== job) continue;
    const before = out.at(-1);
    if (before && before.to === piece.from) before.to = piece.to;
    else out.push({ ...piece });
  }
  return out;
}

/**
 * An order of another plan as a list for this one: jobs it does not know come where their place in the precedence puts
 * them, and every job waits for its predecessors.
 */
export function asList({ network }: Bench, order: readonly string[]): Int32Array {
  const place = new Map(order.map((id, at) => [id, at]));
  const wish = network.ids.map((id) => place.get(id) ?? order.length);
  const waiting = Int32Array.from({ length: network.count }, (_, i) => network.predStart[i + 1]! - network.predStart[i]!);
  const eligible = Array.from(network.topological).filter((i) => waiting[i] === 0);
  const list = new Int32Array(network.count);
  for (let at = 0; at < list.length; at++) {
    let pick = 0;
    for (let k = 1; k < eligible.length; k++) if (wish[eligible[k]!]! < wish[eligible[pick]!]!) pick = k;
    const i = eligible.splice(pick, 1)[0]!;
    list[at] = i;
    for (let e = network.succStart[i]!; e < network.succStart[i + 1]!; e++) {
      if (--waiting[network.succ[e]!]! === 0) eligible.push(network.succ[e]!);
    }
  }
  return list;
}
