import type { Clause } from '../clauses/clause.ts';
import type { Sheet } from '../types.ts';

/** Where a clause stands in the words of its note, as characters [start, end); nowhere where it has none. */
export const stretchOf = (sheet: Sheet, c: Clause): [start: number, end: number] => (c.to > c.from ? [sheet.tokens[c.from]!.start, sheet.tokens[c.to - 1]!.end] : [0, 0]);
