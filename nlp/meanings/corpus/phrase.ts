/**
 * A phrase of a corpus of questions, with what it asks. `parts`, `machines`, `prior`: what the shop knows and said before.
 * Dates are read against `at` (Thursday 19 March 2026 where left out).
 */
export interface AskPhrase {
  text: string;
  asks: readonly Record<string, unknown>[];
  parts?: readonly string[];
  machines?: readonly string[];
  prior?: readonly string[];
  at?: string;
}

export interface AskCorpus { phrases: readonly AskPhrase[]; /** Notes that ask nothing of this kind. */ never: readonly string[] }

/** Many ways to ask the same. */
export const same = (ask: Record<string, unknown>, texts: readonly string[], more: Omit<AskPhrase, 'text' | 'asks'> = {}): AskPhrase[] =>
  texts.map(text => ({ text, asks: [ask], ...more }));

/** Many ways to ask the same sum. */
export const sums = (of: string, given: Record<string, unknown>, texts: readonly string[], more: Omit<AskPhrase, 'text' | 'asks'> = {}): AskPhrase[] =>
  same({ kind: 'sum', of, given }, texts, more);
