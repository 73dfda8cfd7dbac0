import type { Sheet } from '../../types.ts';

/** The tokens [from, to) in low case, a space between. */
export const words = (sheet: Sheet, from: number, to: number): string => sheet.tokens.slice(from, to).map(t => t.low).join(' ');
