/** One course of the future: how long each job takes, when it is released, which days are wet. Minutes and day indexes. */
export interface Draw {
  minutes: Int32Array;
  /** Earliest start by arrivals and dates; `NEVER` when one has none. */
  release: Int32Array;
  wet: Uint8Array;
}

/** Times of all jobs, minutes; `NEVER` for a job that finds no room. */
export interface Times { start: Int32Array; end: Int32Array }

/** End of the last job; `NEVER` when one has none. */
export function lastEnd({ end }: Times): number {
  let last = 0;
  for (let i = 0; i < end.length; i++) if (end[i]! > last) last = end[i]!;
  return last;
}

export function newTimes(count: number): Times {
  return { start: new Int32Array(count), end: new Int32Array(count) };
}

/** The job among `aim` that ends last, -1 when there is none. */
export function lastOf(aim: Int32Array, { end }: Times): number {
  let last = -1;
  for (const i of aim) if (last < 0 || end[i]! > end[last]!) last = i;
  return last;
}
