import { NEVER, type Bench } from './bench.ts';
import { FIT, OBSTACLES, SAMPLED, type Obstacle } from './conditions.ts';
import type { Drawer } from './draw.ts';
import type { PlanInput } from './input.ts';
import type { Times } from './course.ts';
import type { Reason } from './reason.ts';

/** Minutes from `from` to `to` worked on a job. */
export interface Piece { job: number; from: number; to: number }

/**
 * Answers, for a job of a finished pass, why it starts no earlier: first what it was ready for last (a job before it, a
 * cure, a supply, a date), then what stood in the way from then to its start, in the order met, each with until when.
 */
export function explainer(input: PlanInput, bench: Bench, drawn: Drawer, times: Times, pieces: readonly Piece[]): (job: number) => Reason[] {
  const { slots, masks } = bench;
  const at = (minute: number) => (minute >= NEVER ? undefined : slots.origin + minute * 60_000);
  const place = new Map(input.jobs.map(({ id }, i) => [id, i]));
  const supplyPlace = new Map(input.supplies.map(({ id }, s) => [id, s]));
  const workedIn = lastWorkedIn(bench, pieces);

  function readiness(job: number): { ready: number; reason: Reason | undefined } {
    let ready = 0;
    let reason: Reason | undefined;
    const offer = (minute: number, found: Reason) => {
      if (minute > ready) [ready, reason] = [minute, found];
    };
    const { after, needs, notBefore } = input.jobs[job]!;
    for (const { job: before, lagHours = 0, lag = 'cure' } of after) {
      const end = times.end[place.get(before)!]!;
      const until = at(end >= NEVER ? NEVER : end + Math.round(lagHours * 60));
      const bound = lagHours > 0 && end < NEVER;
      offer(end + Math.round(lagHours * 60), bound ? { why: 'lag', job: before, lag, hours: lagHours, until } : { why: 'after', job: before, until });
    }
    for (const supply of needs) {
      const minute = supplyPlace.has(supply) ? drawn.arrival[supplyPlace.get(supply)!]! : NEVER;
      offer(minute, { why: 'supply', supply, until: at(minute) });
    }
    if (notBefore) {
      const minute = Math.ceil((notBefore.at - slots.origin) / 60_000);
      offer(minute, { why: 'date', what: notBefore.what, until: notBefore.at });
    }
    return { ready, reason };
  }

  function obstacleAt(k: number, job: number): Obstacle | 'expected' | undefined {
    const mask = masks.fit[bench.row[job]!]!;
    if (mask[k] === FIT) return undefined;
    if (mask[k] !== SAMPLED) return OBSTACLES[mask[k]!] as Obstacle;
    for (let d = slots.day[k]!; d <= masks.lastDay[bench.row[job]!]![k]!; d++) if (drawn.draw.wet[d]) return 'expected';
    return undefined;
  }

  /** The slots from `ready` to the start, each with what was in the way there. */
  function between(job: number, ready: number): Reason[] {
    const start = times.start[job]!;
    const seen = new Map<string, Reason>();
    let any = false;
    let k = slots.end.findIndex((end) => end > ready);
    for (; k >= 0 && k < slots.count && slots.start[k]! < start; k++) {
      any = true;
      const until = start >= NEVER ? undefined : at(slots.end[k]!);
      const obstacle = obstacleAt(k, job);
      if (obstacle === 'expected') seen.set('wet', { why: 'wet', expected: true, until });
      else if (obstacle) seen.set(obstacle, { why: obstacle, until });
      else if (start < NEVER && workedIn[k]! >= 0) seen.set('busy', { why: 'busy', job: input.jobs[workedIn[k]!]!.id, until });
    }
    const next = slots.start.findIndex((from) => from >= ready);
    const late = start < NEVER && next >= 0 && slots.start[next]! > ready && slots.start[next]! <= start;
    if (!any && (late || start >= NEVER)) seen.set('hours', { why: 'hours', until: at(start) });
    if (any && seen.size === 0 && start > ready) seen.set('stretch', { why: 'stretch', until: at(start) });
    return [...seen.values()];
  }

  return (job) => {
    const { ready, reason } = readiness(job);
    const waits = reason ? [reason] : [];
    if (ready >= NEVER || input.jobs[job]!.conditions.hands === 0) return waits;
    const longest = masks.longest[bench.row[job]!]!;
    const inPieces: Reason[] = bench.unbroken[job] && drawn.draw.minutes[job]! > longest && longest > 0 ? [{ why: 'tooLong', hours: longest / 60 }] : [];
    return [...waits, ...between(job, ready), ...inPieces];
  };
}

/** The job last worked in each slot, -1 where none; a piece never reaches over the end of its slot. */
function lastWorkedIn({ slots }: Bench, pieces: readonly Piece[]): Int32Array {
  const job = new Int32Array(slots.count).fill(-1);
  let k = 0;
  for (const piece of pieces.toSorted((a, b) => a.from - b.from)) {
    while (slots.end[k]! <= piece.from) k++;
    job[k] = piece.job;
  }
  return job;
}
