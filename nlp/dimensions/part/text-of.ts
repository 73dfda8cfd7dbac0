import type { Sheet } from '../../types.ts';

/** The words of tokens [from, to), as they were written. */
export const textOf = (sheet: Sheet, from: number, to: number): string =>
  (to > from ? sheet.text.slice(sheet.tokens[from]!.start, sheet.tokens[to - 1]!.end) : '');
