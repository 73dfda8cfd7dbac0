import { FIT, SAMPLED } from './conditions.ts';
import { NEVER, type Bench } from './bench.ts';
import { lastEnd, type Draw, type Times } from './course.ts';

/** Told of every stretch of work that is laid down: job, from, to. */
type OnPiece = (job: number, from: number, to: number) => void;

interface BenchBuilder {
  /**
   * Serial schedule generation in free half hours: takes the jobs in the order of `list` and works each as early as it can
   * from `floor` on, in the first half hours that are free, fit for it, and not before what precedes it has ended and
   * cured. A job is laid down when an hour does not fit and taken up again, unless it must be done in one go.
   * Fills `times`, answers the last end (`NEVER` when a job finds no room). A list may leave jobs out, with all that follow them.
   */
  build(list: Int32Array, draw: Draw, times: Times, floor?: number, onPiece?: OnPiece): number;
}

/** Makes a builder; its state is scratch: what is used of each slot, and where the next slot with room is. */
export function benchBuilder(bench: Bench): BenchBuilder {
  const { slots, network, lag, hands, unbroken, row, masks } = bench;
  const { predStart, pred } = network;
  const { count, start: slotStart, end: slotEnd, day } = slots;
  const full = new Int32Array(count);
  const next = new Int32Array(count + 1);
  const inOrder = Int32Array.from({ length: count + 1 }, (_, k) => k);
  let piece: OnPiece | undefined;

  /** First slot from `k` on with room left, shortening the way for the next who asks. */
  function withRoom(k: number): number {
    let root = k;
    while (next[root] !== root) root = next[root]!;
    for (let at = k; at !== root; ) {
      const onward = next[at]!;
      next[at] = root;
      at = onward;
    }
    return root;
  }

  function firstSlot(ready: number): number {
    let low = 0;
    let high = count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (slotEnd[middle]! <= ready) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  function fits(k: number, fit: Uint8Array, lastDay: Int32Array, wet: Uint8Array): boolean {
    if (fit[k] === FIT) return true;
    if (fit[k] !== SAMPLED) return false;
    const [from, to] = day[k]! < lastDay[k]! ? [day[k]!, lastDay[k]!] : [lastDay[k]!, day[k]!];
    for (let d = from; d <= to; d++) if (wet[d]) return false;
    return true;
  }

  function take(job: number, k: number, minutes: number): void {
    const from = slotStart[k]! + full[k]!;
    full[k]! += minutes;
    if (from + minutes >= slotEnd[k]!) next[k] = k + 1;
    piece?.(job, from, from + minutes);
  }

  /** Works the job in whatever half hours fit. */
  function inPieces(job: number, ready: number, minutes: number, draw: Draw, times: Times): void {
    const fit = masks.fit[row[job]!]!;
    const lastDay = masks.lastDay[row[job]!]!;
    let left = minutes;
    let begun = NEVER;
    for (let k = withRoom(firstSlot(ready)); k < count; k = withRoom(k + 1)) {
      const from = slotStart[k]! + full[k]!;
      if (from < ready || !fits(k, fit, lastDay, draw.wet)) continue;
      if (begun === NEVER) begun = from;
      const minutesHere = Math.min(left, slotEnd[k]! - from);
      take(job, k, minutesHere);
      left -= minutesHere;
      if (left > 0) continue;
      times.start[job] = begun;
      times.end[job] = from + minutesHere;
      return;
    }
    times.start[job] = NEVER;
    times.end[job] = NEVER;
  }

  /** Works the job in one go: looks for adjoining slots, all fit, only the first of them perhaps begun by another job. */
  function inOneGo(job: number, ready: number, minutes: number, draw: Draw, times: Times): void {
    const fit = masks.fit[row[job]!]!;
    const lastDay = masks.lastDay[row[job]!]!;
    let first = -1;
    let from = 0;
    let previous = -1;
    for (let k = withRoom(firstSlot(ready)); k < count; k = withRoom(k + 1)) {
      const begin = slotStart[k]! + full[k]!;
      if (begin < ready || !fits(k, fit, lastDay, draw.wet)) {
        first = -1;
        continue;
      }
      const joins = first >= 0 && previous === k - 1 && full[k] === 0 && slotEnd[previous] === slotStart[k];
      previous = k;
      if (!joins) {
        first = k;
        from = begin;
      }
      if (slotEnd[k]! - from < minutes) continue;
      for (let at = first; at <= k; at++) take(job, at, Math.min(from + minutes, slotEnd[at]!) - slotStart[at]! - full[at]!);
      times.start[job] = from;
      times.end[job] = from + minutes;
      return;
    }
    times.start[job] = NEVER;
    times.end[job] = NEVER;
  }

  function place(job: number, ready: number, draw: Draw, times: Times): void {
    const minutes = draw.minutes[job]!;
    if (ready >= NEVER) times.start[job] = times.end[job] = NEVER;
    else if (hands[job] === 0 || minutes === 0) {
      times.start[job] = ready;
      times.end[job] = ready + minutes;
    } else if (unbroken[job] && minutes <= masks.longest[row[job]!]!) inOneGo(job, ready, minutes, draw, times);
    else inPieces(job, ready, minutes, draw, times);
  }

  return {
    build(list, draw, times, floor = 0, onPiece) {
      piece = onPiece;
      full.fill(0);
      next.set(inOrder);
      for (let at = 0; at < list.length; at++) {
        const job = list[at]!;
        let ready = Math.max(floor, draw.release[job]!);
        for (let e = predStart[job]!; e < predStart[job + 1]!; e++) {
          ready = Math.max(ready, times.end[pred[e]!]! + lag[e]!);
        }
        place(job, ready, draw, times);
      }
      return lastEnd(times);
    },
  };
}
