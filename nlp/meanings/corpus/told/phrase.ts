/**
 * A phrase of a corpus of statements, with all that a careful reader writes down of it; remarks are left out and not compared.
 * Dates are read against `at` (Thursday 19 March 2026 where left out).
 */
export interface ToldPhrase {
  text: string;
  entries: readonly Record<string, unknown>[];
  parts?: readonly string[];
  machines?: readonly string[];
  prior?: readonly string[];
  at?: string;
}

export interface ToldCorpus { kind: string; phrases: readonly ToldPhrase[]; /** Notes that hold no entry of this kind. */ never: readonly string[] }

/** Many ways to say the same. */
export const told = (entries: readonly Record<string, unknown>[], texts: readonly string[], more: Omit<ToldPhrase, 'text' | 'entries'> = {}): ToldPhrase[] =>
  texts.map(text => ({ text, entries, ...more }));
