import type { Store } from './open.ts';

/** How a spoken note was heard: the recogniser's own words, and whether it was in doubt. */
export interface Heard { raw: string; doubtful: boolean }

export const keepHeard = (store: Store, note: number, heard: Heard): void => {
  store.run('INSERT INTO heard (note, raw, doubtful) VALUES (?, ?, ?) ON CONFLICT (note) DO NOTHING', note, heard.raw, heard.doubtful ? 1 : 0);
};

export function heardOf(store: Store, note: number): Heard | undefined {
  const row = store.get<{ raw: string; doubtful: number }>('SELECT raw, doubtful FROM heard WHERE note = ?', note);
  return row && { raw: row.raw, doubtful: row.doubtful === 1 };
}
