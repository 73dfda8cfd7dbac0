import { NEVER, type Bench } from './bench.ts';
import { FIT, SAMPLED } from './conditions.ts';
import type { Drawer } from './draw.ts';
import type { PlanInput } from './input.ts';
import type { Times } from './course.ts';

/** What may decide a date: a job, a supply, or the weather beyond the forecast. */
export type Driver = { kind: 'job'; id: string } | { kind: 'supply'; id: string } | { kind: 'weather' };

/** Watches the runs of a simulation for what the finish hangs on. */
export interface Watch {
  /** For each slot the job last worked in it, -1 where none; filled by the pass. */
  readonly worked: Int32Array;
  /** Takes in one finished run; `last` is the job that ended it, `finish` its end in minutes. */
  see(last: number, finish: number): void;
  /** Share of runs in which the job was on the chain that led to the finish. */
  critical(job: number): number;
  /** What moved the finish most: the greatest covariance with it, among what was on the chain. */
  driver(): Driver | undefined;
}

export function watch(input: PlanInput, bench: Bench, drawn: Drawer, times: Times, wetUntilDay: number): Watch {
  const { jobs, supplies } = input;
  const { slots, masks, network, lag } = bench;
  const size = jobs.length + supplies.length + 1;
  const onChain = new Int32Array(size);
  const [sum, product] = [new Float64Array(size), new Float64Array(size)];
  const supplyPlace = new Map(supplies.map(({ id }, s) => [id, jobs.length + s]));
  const needs = jobs.map((job) => job.needs.map((id) => supplyPlace.get(id)!));
  const worked = new Int32Array(slots.count).fill(-1);
  let runs = 0;
  let finishes = 0;

  /** Index of what made the job ready: a job before it, a supply; -1 for a date or nothing. */
  function source(job: number): { ready: number; from: number } {
    let [ready, from] = [0, -1];
    for (let e = network.predStart[job]!; e < network.predStart[job + 1]!; e++) {
      const end = times.end[network.pred[e]!]! + lag[e]!;
      if (end > ready) [ready, from] = [end, network.pred[e]!];
    }
    for (const s of needs[job]!) {
      const arrival = drawn.arrival[s - jobs.length]!;
      if (arrival > ready) [ready, from] = [arrival, s];
    }
    return drawn.draw.release[job]! > ready ? { ready: drawn.draw.release[job]!, from: -1 } : { ready, from };
  }

  /** The job that took the last fit hour before the start, or -1; marks the weather when wet days stood in between. */
  function holder(job: number, ready: number): number {
    const fit = masks.fit[bench.row[job]!]!;
    let wet = false;
    for (let k = slotBefore(times.start[job]!); k >= 0 && slots.end[k]! > ready; k--) {
      const isWet = fit[k] === SAMPLED && drawn.draw.wet[slots.day[k]!] === 1;
      if (isWet) wet = true;
      else if ((fit[k] === FIT || fit[k] === SAMPLED) && worked[k]! >= 0 && worked[k] !== job) return worked[k]!;
    }
    if (wet) onChain[size - 1]!++;
    return -1;
  }

  function slotBefore(minute: number): number {
    let low = 0;
    let high = slots.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (slots.start[middle]! < minute) low = middle + 1;
      else high = middle;
    }
    return low - 1;
  }

  function follow(last: number): void {
    const seen = new Set<number>();
    for (let job = last; job >= 0 && job < jobs.length && !seen.has(job); ) {
      seen.add(job);
      onChain[job]!++;
      const { ready, from } = source(job);
      const held = jobs[job]!.conditions.hands > 0 ? holder(job, ready) : -1;
      job = held >= 0 ? held : from;
      if (job >= jobs.length) onChain[job]!++;
    }
  }

  const valueOf = (k: number) => {
    if (k < jobs.length) return drawn.draw.minutes[k]!;
    if (k < size - 1) return drawn.arrival[k - jobs.length]!;
    let wet = 0;
    for (let d = 0; d <= wetUntilDay; d++) wet += drawn.draw.wet[d]!;
    return wet;
  };
  /** Covariance over the standard deviation of the value: minutes by which a usual deviation of it moves the finish. */
  const squares = new Float64Array(size);
  const pull = (k: number) => {
    const variance = squares[k]! / runs - (sum[k]! / runs) ** 2;
    const covariance = product[k]! / runs - (sum[k]! / runs) * (finishes / runs);
    return variance > 1e-9 ? covariance / Math.sqrt(variance) : 0;
  };

  return {
    worked,
    see(last, finish) {
      if (finish >= NEVER) return;
      runs++;
      finishes += finish;
      follow(last);
      for (let k = 0; k < size; k++) {
        const value = valueOf(k);
        sum[k]! += value;
        squares[k]! += value * value;
        product[k]! += value * finish;
      }
    },
    critical: (job) => (runs === 0 ? 0 : onChain[job]! / runs),
    driver() {
      let [best, most] = [-1, 0];
      for (let k = 0; k < size; k++) if (onChain[k]! > 0 && pull(k) > most) [best, most] = [k, pull(k)];
      // Nothing varies: the longest of what is always on the chain.
      if (best < 0) for (let k = 0; k < size - 1; k++) if (onChain[k]! * sum[k]! > most) [best, most] = [k, onChain[k]! * sum[k]!];
      if (best < 0) return undefined;
      if (best < jobs.length) return { kind: 'job', id: jobs[best]!.id };
      return best < size - 1 ? { kind: 'supply', id: supplies[best - jobs.length]!.id } : { kind: 'weather' };
    },
  };
}
