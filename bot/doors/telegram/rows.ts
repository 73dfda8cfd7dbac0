import type { Store } from '../../../domain/store/open.ts';
import type { Queued } from '../../../domain/store/queue.ts';
import type { Outgoing } from '../../outbox.ts';
import { DOOR } from './who.ts';

/** What went out in that row of the outbox by this door. */
export function sentInRow(store: Store, seq: number): Outgoing | undefined {
  const row = store.get<{ body: string }>('SELECT body FROM outbox WHERE seq = ? AND door = ?', seq, DOOR);
  return row && (JSON.parse(row.body) as Outgoing);
}

/** The rows of the same talk that came next after a row, whatever their state, oldest first. */
export const rowsAfter = (store: Store, row: Queued, count: number): Pick<Queued, 'key' | 'body'>[] =>
  store.all('SELECT key, body FROM intake WHERE seq > ? AND door = ? AND chat = ? ORDER BY seq LIMIT ?', row.seq, DOOR, row.chat, count);
