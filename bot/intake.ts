import { intake } from '../domain/store/intake.ts';
import { StoreError } from '../domain/store/errors.ts';
import type { Store } from '../domain/store/open.ts';
import { backOff, type NewQueued, type Queued } from '../domain/store/queue.ts';
import { startLoop, type Loop } from './loop.ts';

/** Failed tries after which a message is set aside and shown; it is never dropped. */
const MOST_TRIES = 8;

export interface Intake extends Loop {
  /** Writes the message down, durably; false when its key was there already. Throws StoreError when it can't: then it must come again. */
  put(m: NewQueued): boolean;
}

/**
 * The durable way in. A row is handled in order per chat; `handle` must mark it done in the same transaction as what it logs.
 */
export function openIntake(store: Store, handle: (row: Queued) => Promise<void>, now: () => number = Date.now): Intake {
  const step = async (): Promise<number | undefined> => {
    const row = intake.next(store, now());
    if (!row) {
      const due = intake.nextDue(store);
      return due === undefined ? undefined : Math.max(50, due - now());
    }
    try { await handle(row); } catch (error) { failed(store, row, error, now()); }
    return 0;
  };
  const loop = startLoop(step);
  return {
    ...loop,
    put(m) {
      const { fresh } = intake.put(store, m);
      loop.wake();
      return fresh;
    },
  };
}

/** A full disk or a held database is waited out for as long as it takes; anything else that fails again and again is set aside. */
function failed(store: Store, row: Queued, error: unknown, now: number): void {
  const why = error instanceof Error ? error.message : String(error);
  if (!(error instanceof StoreError) && row.tries + 1 >= MOST_TRIES) intake.park(store, row.seq, why);
  else intake.again(store, row.seq, why, now + backOff(row.tries + 1));
}
