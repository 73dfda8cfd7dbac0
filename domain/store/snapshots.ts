import type { Store } from './open.ts';

/** A fold of the log up to and including `entry`. `form` names the shape of the body; a body of another form is of no use. */
interface Snapshot { entry: number; form: string; body: Uint8Array }

export const newestSnapshot = (store: Store, form: string): Snapshot | undefined =>
  store.get<Snapshot>('SELECT entry, form, body FROM snapshot WHERE form = ? ORDER BY entry DESC LIMIT 1', form);

/** Keeps a snapshot and drops all but it and the one before. */
export function keepSnapshot(store: Store, snapshot: Snapshot): void {
  store.transaction(() => {
    store.run('INSERT INTO snapshot (entry, form, body) VALUES (?, ?, ?) ON CONFLICT (entry) DO UPDATE SET form = excluded.form, body = excluded.body', snapshot.entry, snapshot.form, snapshot.body);
    store.run('DELETE FROM snapshot WHERE entry NOT IN (SELECT entry FROM snapshot ORDER BY entry DESC LIMIT 2)');
  });
}
