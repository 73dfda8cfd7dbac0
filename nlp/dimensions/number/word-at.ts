/** A word, a figure or a sign of the line, characters [start, end). */
export interface Word { text: string; start: number; end: number }
/** Cuts a line in low case into them: a figure with its point, stroke or ending is one ("1.5", "3/4", "5ths", "mm2"). */
export const WORD = /(?:mm|cm|ft|in|m)[23](?![\da-z])|[a-z]+|\d+(?:st|nd|rd|ths?)\b|\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d/])|\d+\/\d+(?!\d)|\d+\.\d+|\.\d+|\d+|[^\sa-z\d]/g;

/** The text of word `i`; empty past either end. */
export const at = (words: Word[], i: number): string => words[i]?.text ?? '';
export const isDigits = (s: string): boolean => /^(?:\d|\.\d)/.test(s) && !/[a-z/]/.test(s);
export const digits = (s: string): number => Number(s.replace(/,/g, ''));
/** Whether nothing stands between word `i` and the next. */
export const touches = (words: Word[], i: number): boolean => words[i]?.end === words[i + 1]?.start;
