import type { Sheet, Token } from '../types.ts';

/** Has a word read as another; what was said stays in `text`, and the change is traced. */
export function change(sheet: Sheet, t: Token, low: string, rule: string): void {
  sheet.trace.push({ stage: 'mend', rule, text: t.text, gave: low });
  t.low = low;
  t.mended = true;
}
