import { textOf } from '../dimensions/part/text-of.ts';
import type { Sheet } from '../types.ts';

/** Words without a leading article. */
export const bare = (s: string): string => s.replace(/^(?:the|a|an|my|some|his|her|its|our|that|this|those|these)\s+/i, '').trim();
/** The tokens [from, to) as said, without a stop at the end. */
export const saidWhole = (sheet: Sheet, from: number, to: number): string => textOf(sheet, from, to).replace(/[\s,;:.!?]+$/, '');
/** The same without a leading article. */
export const said = (sheet: Sheet, from: number, to: number): string => bare(saidWhole(sheet, from, to));
