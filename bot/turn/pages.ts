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

/** The first page of some lines as it is said, with a word of how many are to come, and those. */
export function firstPage(lines: readonly string[]): { said: string; rest: string[] } {
  // One line over is given at once rather than kept back behind a word.
  const cut = lines.length <= PAGE + 1 ? lines.length : PAGE;
  const rest = lines.slice(cut);
  return { said: [...lines.slice(0, cut).map(l => `• ${l}`), ...(rest.length ? [`… ${rest.length} more; say "more".`] : [])].join('\n'), rest };
}

/** The button under a list that goes on. */
export const MORE: Button = { label: 'More', send: 'more' };

/** What is said of an answer at once, the page that "more" and "longer" go on from, where there is any, and its button. */
export function paged({ say, list = [], longer }: Spoken): { say: string; page?: Page; buttons: Button[] } {
  const { said, rest } = firstPage(list);
  return { say: [say, said].filter(Boolean).join('\n'), ...(rest.length || longer ? { page: { lines: rest, ...(longer ? { longer } : {}) } } : {}), buttons: rest.length ? [MORE] : [] };
}
