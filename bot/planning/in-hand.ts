import { z } from 'zod';
import { readSetting, writeSetting } from '../../domain/store/settings.ts';
import type { Store } from '../../domain/store/open.ts';
import type { Later } from '../incoming.ts';

/** A task that a turn handed out and whose answer has not left yet, with where it goes. Kept, so that a program cut off gives it after its next start. */
const InHand = z.object({
  key: z.string(), note: z.number().int(), at: z.string(), door: z.string(), target: z.string().optional(),
  task: z.custom<Later>(t => ['finish', 'whatIf', 'draw', 'orderBy', 'ahead', 'model'].includes((t as Later | null)?.kind as string)),
});
export type InHand = z.infer<typeof InHand>;

const SETTING = 'tasks in hand';

/** Oldest first; what can't be read is nothing to do. */
export function tasksInHand(store: Store): InHand[] {
  try { return z.array(InHand).catch([]).parse(JSON.parse(readSetting(store, SETTING) ?? '[]')); } catch { return []; }
}

/** Keeps a task; call it in the transaction of the turn that hands it out. */
export const takeInHand = (store: Store, one: InHand): void => keep(store, [...tasksInHand(store), one]);

/** Lets go of a task, in the transaction that keeps its answer. False: another program has answered it. */
export function letGo(store: Store, key: string): boolean {
  const [held, rest] = [tasksInHand(store), tasksInHand(store).filter(t => t.key !== key)];
  if (rest.length === held.length) return false;
  keep(store, rest);
  return true;
}

const keep = (store: Store, tasks: readonly InHand[]): void => writeSetting(store, SETTING, tasks.length ? JSON.stringify(tasks) : undefined);
