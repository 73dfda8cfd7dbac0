/** A usual order of two acts: the first is done before the second. Proposed, never imposed: the person's own rules win. */
export interface OrderRule {
  /** Stays the same when the words of `why` change: a rule once refused stays refused under it. */
  id: string;
  /** Each an act: `paint the hood`, or a part alone for its fitting for good. `*` is any part, the same on both sides. */
  first: string;
  then: string;
  why: string;
  source: string;
}

export const COMMON_PRACTICE = 'common practice, no source';

/** Rows of one topic: first, then, why, and the source where there is one. */
export function usual(topic: string, rows: readonly (readonly [first: string, then: string, why: string, source?: string])[]): OrderRule[] {
  return rows.map(([first, then, why, source = COMMON_PRACTICE]) => ({ id: `${topic}: ${first} > ${then}`, first, then, why, source }));
}
