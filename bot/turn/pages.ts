import { z } from 'zod';
import type { Button } from '../incoming.ts';
import type { Spoken } from '../say/spoken.ts';

/** Lines that a reply gives at once; the rest waits for "more". Five are read at a glance from across the bench. */
const PAGE = 5;

const Held = z.object({ lines: z.array(z.string()), longer: z.string().optional() });

/** What is kept for the next "more" or "longer". */
export type Page = z.infer<typeof Held>;

export function heldPage(held: unknown): Page | undefined {
  const read = Held.safeParse(held);
  return read.success ? read.data : undefined;
}

/** The first page of some lines, and the rest of them. */
export function firstPage(lines: readonly string[]): { now: string[]; rest: string[] } {
  // One line over is given at once rather than kept back behind a word.
  const cut = lines.length <= PAGE + 1 ? lines.length : PAGE;
  return { now: lines.slice(0, cut).map(l => `• ${l}`), rest: lines.slice(cut) };
}

export const moreToCome = (rest: readonly string[]): string => (rest.length ? `… ${rest.length} more; say "more".` : '');

/** The button under a list that goes on. */
export const MORE: Button = { label: 'More', send: 'more' };

/** What is said of an answer at once, and the page that "more" and "longer" go on from, where there is any. */
export function paged({ say, list = [], longer }: Spoken): { say: string; page?: Page; buttons: Button[] } {
  const { now, rest } = firstPage(list);
  const text = [say, ...now, moreToCome(rest)].filter(Boolean).join('\n');
  return { say: text, ...(rest.length || longer ? { page: { lines: rest, ...(longer ? { longer } : {}) } } : {}), buttons: rest.length ? [MORE] : [] };
}
