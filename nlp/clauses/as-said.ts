import { textOf } from '../dimensions/part/text-of.ts';
import type { Sheet } from '../types.ts';

/** Words without a leading article. */
export const bare = (s: string): string => s.replace(/^(?:the|a|an|my|some|his|her|its|our|that|this|those|these)\s+/i, '').trim();
/** The tokens [from, to) as said, without a leading article or a stop at the end. */
export const said = (sheet: Sheet, from: number, to: number): string => bare(textOf(sheet, from, to)).replace(/[\s,;:.!?]+$/, '');
