import { z } from 'zod';
import { readSetting, writeSetting } from '../../domain/store/settings.ts';
import type { Store } from '../../domain/store/open.ts';
import { TOPICS } from '../../nlp/settings/reminders.ts';
import type { Word } from './unasked.ts';

/** The last words that were said unasked, so that "later", "more" and "stop telling me that" know what they are about. */
const Said = z.object({
  n: z.number().int(), at: z.string(), more: z.array(z.string()),
  items: z.array(z.object({ key: z.string(), stop: z.string(), topic: z.enum(TOPICS) })),
});
export type SaidWord = z.infer<typeof Said>;

const SETTING = 'words said unasked';
const MOST_KEPT = 30;

/** Oldest first. */
export function saidWords(store: Store): SaidWord[] {
  try { return z.array(Said).catch([]).parse(JSON.parse(readSetting(store, SETTING) ?? '[]')); } catch { return []; }
}

/** Keeps a word as said and gives it its number. Call it inside the transaction that marks it said. */
export function keepWord(store: Store, { items, more }: Word, at: string): number {
  const before = saidWords(store);
  const n = (before.at(-1)?.n ?? 0) + 1;
  writeSetting(store, SETTING, JSON.stringify([...before, { n, at, items, more }].slice(-MOST_KEPT)));
  return n;
}
