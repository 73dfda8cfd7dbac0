import type { ThreePoint } from '../three-point.ts';

/** How long things usually take to come, in days. All of it common practice, no source: a date that was said beats it. */

/** Not ordered yet, bought at a counter or sent for. */
export const TO_GET: ThreePoint = { low: 1, likely: 5, high: 18 };

/** Ordered, no day said: counted from the order. */
export const ON_ORDER: ThreePoint = { low: 2, likely: 7, high: 21 };

/** Said for a day: what is sent comes a day early at best and up to ten late. */
export const ROUND_DAY: ThreePoint = { low: -1, likely: 0, high: 10 };

/** Past its day: counted from now. */
export const LATE: ThreePoint = { low: 1, likely: 5, high: 21 };

/** Out for work, no day said: counted from when it left. */
export const OUT: ThreePoint = { low: 5, likely: 14, high: 42 };

/** A shop outside is not done before the day it named, and often later. */
export const ROUND_BACK: ThreePoint = { low: 0, likely: 1, high: 14 };

/** Left alone for no said time: counted from when that was said. */
export const LEFT_ALONE: ThreePoint = { low: 0.5, likely: 1, high: 4 };
