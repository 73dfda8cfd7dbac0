import type { Store } from './open.ts';

/** What became of one unasked word, by a key that names its occasion; moments are ISO. */
export interface ReminderMark { key: string; saidAt?: string; putOffUntil?: string; stopped: boolean }

interface Row { key: string; said_at: string | null; put_off_until: string | null; stopped: number }

export function reminderMark(store: Store, key: string): ReminderMark | undefined {
  const row = store.get<Row>('SELECT * FROM reminder WHERE key = ?', key);
  if (!row) return undefined;
  return { key, stopped: row.stopped === 1, ...(row.said_at === null ? {} : { saidAt: row.said_at }), ...(row.put_off_until === null ? {} : { putOffUntil: row.put_off_until }) };
}

/** Marks it said. False: it was said already (by another process, perhaps) and not put off since. */
export const markSaid = (store: Store, key: string, at: string): boolean =>
  store.run(`INSERT INTO reminder (key, said_at) VALUES (?, ?)
    ON CONFLICT (key) DO UPDATE SET said_at = excluded.said_at, put_off_until = NULL WHERE stopped = 0 AND (said_at IS NULL OR put_off_until IS NOT NULL)`, key, at).changes > 0;

/** It may be said once more from that moment on. */
export const putOff = (store: Store, key: string, until: string): void => {
  store.run('INSERT INTO reminder (key, put_off_until) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET put_off_until = excluded.put_off_until', key, until);
};

/** It is never said again. */
export const stopReminder = (store: Store, key: string): void => {
  store.run('INSERT INTO reminder (key, stopped) VALUES (?, 1) ON CONFLICT (key) DO UPDATE SET stopped = 1', key);
};
