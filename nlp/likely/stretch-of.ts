import type { Sheet } from '../types.ts';

/** Where tokens stand in the words of their note, as characters [start, end); nowhere where there are none. */
export const stretchOf = (sheet: Sheet, c: { from: number; to: number }): [start: number, end: number] => (c.to > c.from ? [sheet.tokens[c.from]!.start, sheet.tokens[c.to - 1]!.end] : [0, 0]);
