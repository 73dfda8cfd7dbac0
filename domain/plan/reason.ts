import type { Obstacle } from './conditions.ts';

/** Why a job starts no earlier, or can't be given a date (`until` left out). Moments are ms UTC; names are ids of the input. */
export type Reason =
  | { why: 'after'; job: string; until?: number }
  | { why: 'lag'; job: string; lag: string; hours: number; until?: number }
  | { why: 'supply'; supply: string; until?: number }
  | { why: 'date'; what: string; until?: number }
  /** Hours of the person all taken by another job. */
  | { why: 'busy'; job: string; until?: number }
  /** No free hours before. */
  | { why: 'hours'; until?: number }
  /** `expected`: nobody knows the weather of that day yet, the plan allows for wet days. */
  | { why: Obstacle; until?: number; expected?: boolean }
  /** Adjoining hours, long enough to do it in one go. */
  | { why: 'stretch'; until?: number }
  /** To be done in one go, but longer than any stretch there is (`hours`): planned in pieces. */
  | { why: 'tooLong'; hours: number; until?: undefined };
