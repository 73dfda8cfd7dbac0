import { intake } from '../domain/store/intake.ts';
import { StoreError } from '../domain/store/errors.ts';
import type { Store } from '../domain/store/open.ts';
import { backOff, type NewQueued, type Queued } from '../domain/store/queue.ts';
import { startLoop, type Loop } from './loop.ts';

/** Failed tries after which a message is set aside and shown; it is never dropped. */
const MOST_TRIES = 8;
/** A message in hand for longer than this is taken for forgotten, ms. */
const IN_HAND_MS = 3_600_000;

export interface Handling {
  /** Handles a row; it must mark it done in the same transaction as what it logs. */
  handle: (row: Queued) => Promise<void>;
  /** Rows that take long (sound): they are handled beside the loop, and hold back the later ones of their chat. */
  isSlow?: (row: Queued) => boolean;
  /** Rows that only ask: they need not wait behind a slow one, for their answer changes nothing. */
  onlyAsks?: (row: Queued) => Promise<boolean>;
  now?: () => number;
}

export interface Intake extends Loop {
  /** Writes the message down, durably; false when its key was there already. Throws StoreError when it can't: then it must come again. */
  put(m: NewQueued): boolean;
}

/** The durable way in. Rows are handled in order per chat; what takes long in one chat keeps no other waiting. */
export function openIntake(store: Store, { handle, isSlow, onlyAsks, now = Date.now }: Handling): Intake {
  const inHand = new Map<string, Promise<void>>();
  // Only true failures are counted: a row that waited out a full disk has its whole allowance left.
  const failures = new Map<number, number>();
  const tried = async (row: Queued): Promise<void> => {
    try { await handle(row); failures.delete(row.seq); } catch (error) { failed(store, row, failures, error, now()); }
  };
  const beside = (row: Queued): void => {
    intake.hold(store, row.seq, now() + IN_HAND_MS);
    inHand.set(row.chat, tried(row).finally(() => { inHand.delete(row.chat); loop.wake(); }));
  };
  const step = async (): Promise<number | undefined> => {
    const row = intake.next(store, now());
    if (!row) {
      const due = intake.nextDue(store);
      return due === undefined ? undefined : Math.max(50, due - now());
    }
    if (isSlow?.(row)) beside(row);
    else await tried(row);
    return 0;
  };
  const askedMeanwhile = async (key: string): Promise<void> => {
    const row = intake.byKey(store, key);
    if (row && await onlyAsks?.(row)) await tried(row);
  };
  const loop = startLoop(step);
  return {
    ...loop,
    put(m) {
      const { fresh } = intake.put(store, m);
      if (fresh && inHand.has(m.chat)) void askedMeanwhile(m.key).catch(() => {});
      loop.wake();
      return fresh;
    },
    async idle() {
      await loop.idle();
      while (inHand.size) { await Promise.all(inHand.values()); await loop.idle(); }
    },
    async close() {
      // The loop first: until it stands it may take up another long one.
      await loop.close();
      await Promise.all(inHand.values());
    },
  };
}

/** A full disk or a held database is waited out for as long as it takes; anything else that fails again and again is set aside. */
function failed(store: Store, row: Queued, failures: Map<number, number>, error: unknown, now: number): void {
  const why = error instanceof Error ? error.message : String(error);
  if (error instanceof StoreError) return intake.again(store, row.seq, why, now + backOff(row.tries + 1));
  const count = (failures.get(row.seq) ?? 0) + 1;
  failures.set(row.seq, count);
  if (count >= MOST_TRIES) intake.park(store, row.seq, why);
  else intake.again(store, row.seq, why, now + backOff(count));
}
