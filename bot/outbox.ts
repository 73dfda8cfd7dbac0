import { outbox } from '../domain/store/outbox.ts';
import type { Store } from '../domain/store/open.ts';
import { backOff, type Queued } from '../domain/store/queue.ts';
import type { Button } from './incoming.ts';
import { startLoop, type Loop } from './loop.ts';

/** What leaves by a door that has to be called: words, things to tap, kept files by hash name. */
export interface Outgoing { target: string; say: string; buttons: Button[]; files: string[] }

/** Thrown by a door's sender: it was told to wait that long. It counts as no failure. */
export class SendLater extends Error {
  readonly waitMs: number;
  constructor(waitMs: number) { super(`told to wait ${waitMs} ms`); this.waitMs = waitMs; }
}
/** Thrown by a door's sender: this can never be delivered (the person blocked the bot, the chat is gone). */
export class SendNever extends Error {}

/** Failed sends in a row after which a reply is set aside and shown in the log of the program. */
const MOST_TRIES = 12;

/**
 * Sends what waits for one door, in order per chat, from a loop of its own: a door that is told to wait never blocks the intake.
 * A reply may go out twice after a fault in between; replies are harmless to repeat.
 */
export function openOutbox(store: Store, door: string, send: (o: Outgoing, row: Queued) => Promise<void>, now: () => number = Date.now): Loop {
  // Only true failures are counted: a row that was told to wait twenty times has its whole allowance left.
  const failures = new Map<number, number>();
  const step = async (): Promise<number | undefined> => {
    const row = outbox.next(store, now(), [door]);
    if (!row) {
      const due = outbox.nextDue(store, [door]);
      return due === undefined ? undefined : Math.max(50, due - now());
    }
    try {
      await send(JSON.parse(row.body) as Outgoing, row);
      outbox.done(store, row.seq);
      failures.delete(row.seq);
    } catch (error) { failed(store, row, failures, error, now()); }
    return 0;
  };
  return startLoop(step);
}

function failed(store: Store, row: Queued, failures: Map<number, number>, error: unknown, now: number): void {
  const why = error instanceof Error ? error.message : String(error);
  // Being told to wait is no failure, but the row must not come up before its time either.
  if (error instanceof SendLater) return outbox.again(store, row.seq, why, now + error.waitMs);
  const count = (failures.get(row.seq) ?? 0) + 1;
  failures.set(row.seq, count);
  if (error instanceof SendNever || count >= MOST_TRIES) outbox.park(store, row.seq, why);
  else outbox.again(store, row.seq, why, now + backOff(count));
}

/** Puts a reply on its way; `key` is the key of the message it answers, so that a second handling adds none. */
export const putOut = (store: Store, m: { key: string; door: string; at: string }, o: Outgoing): void => {
  outbox.put(store, { key: m.key, door: m.door, chat: o.target, at: m.at, body: JSON.stringify(o) });
};
