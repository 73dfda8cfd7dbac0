import type { NumberValue } from '../../types.ts';

/**
 * A number of the line, characters [start, end). `pair`: said as two halves ("twelve fifty": money 12.50, else 1250; "one seventy five").
 * `frac`: as written or said, top and bottom, when it is or ends in a fraction; `whole` what stood before it.
 */
export interface Num {
  start: number; end: number; value: number; form: NumberValue['form']; about?: boolean;
  pair?: [number, number]; frac?: [number, number]; whole?: number; loose?: boolean;
}

/** What a number is, before it is known where in the line it stands. */
export type Part = Omit<Num, 'start' | 'end'>;

/** A number that takes the next `n` words. */
export interface Got { n: number; num: Part }
