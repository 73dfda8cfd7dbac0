import { layOut, type Bench } from './bench.ts';
import { FIT, SAMPLED } from './conditions.ts';
import { drawer } from './draw.ts';
import type { Piece } from './explain.ts';
import { newTimes, type Draw, type Times } from './course.ts';
import { inOrderOfIds, type PlanInput } from './input.ts';
import { described, type WorkPlan } from './plan.ts';

/**
 * Takes over another case's plan, job by job and hour by hour, if it holds in this one too; `undefined` if it does not.
 * It is what makes comparisons fair: whatever can be done with a blocker can be done without it.
 */
export function adopt(given: PlanInput, plan: WorkPlan): WorkPlan | undefined {
  const input = inOrderOfIds(given);
  const laid = layOut(input);
  if (!laid.ok) return undefined;
  const { bench } = laid;
  const drawn = drawer(input, bench);
  drawn.middling(plan.weatherSeed);
  const times = newTimes(input.jobs.length);
  const pieces: Piece[] = [];
  const planned = new Map(plan.jobs.map((job) => [job.id, job]));
  const minute = (at: number) => Math.round((at - input.now) / 60_000);
  for (const [i, { id }] of input.jobs.entries()) {
    const job = planned.get(id);
    if (!job) return undefined;
    times.start[i] = minute(job.start);
    times.end[i] = minute(job.end);
    for (const { from, to } of job.pieces) pieces.push({ job: i, from: minute(from), to: minute(to) });
  }
  if (!holds(bench, drawn.draw, times, pieces)) return undefined;
  const list = Int32Array.from(input.jobs.keys()).sort((a, b) => times.start[a]! - times.start[b]!);
  return { ...described(input, bench, drawn, { list, times, pieces }), weatherSeed: plan.weatherSeed };
}

/** Checks everything that a plan must keep, without building it again. */
function holds(bench: Bench, draw: Draw, times: Times, pieces: readonly Piece[]): boolean {
  const { network, lag } = bench;
  for (let i = 0; i < network.count; i++) {
    const start = times.start[i]!;
    if (start < draw.release[i]!) return false;
    for (let e = network.predStart[i]!; e < network.predStart[i + 1]!; e++) {
      if (start < times.end[network.pred[e]!]! + lag[e]!) return false;
    }
    if (!isWorked(bench, draw, times, i, pieces.filter(({ job }) => job === i))) return false;
  }
  const inTime = pieces.toSorted((a, b) => a.from - b.from);
  return inTime.every(({ from }, k) => k === 0 || inTime[k - 1]!.to <= from);
}

function isWorked({ hands, unbroken, masks, row, slots }: Bench, draw: Draw, times: Times, job: number, pieces: readonly Piece[]): boolean {
  const minutes = draw.minutes[job]!;
  const [start, end] = [times.start[job]!, times.end[job]!];
  if (hands[job] === 0 || minutes === 0) return end - start === minutes;
  if (pieces.reduce((sum, { from, to }) => sum + to - from, 0) !== minutes) return false;
  if (pieces[0]!.from !== start || pieces.at(-1)!.to !== end) return false;
  if (unbroken[job] && minutes <= masks.longest[row[job]!]! && end - start !== minutes) return false;
  return pieces.every(({ from, to }) => {
    for (let k = slots.end.findIndex((slotEnd) => slotEnd > from), at = from; at < to; at = slots.end[k++]!) {
      if (k < 0 || k >= slots.count || slots.start[k]! > at || !isFit(k, job)) return false;
    }
    return true;
  });

  function isFit(k: number, i: number): boolean {
    const fit = masks.fit[row[i]!]![k]!;
    if (fit !== SAMPLED) return fit === FIT;
    for (let d = slots.day[k]!; d <= masks.lastDay[row[i]!]![k]!; d++) if (draw.wet[d]) return false;
    return true;
  }
}
