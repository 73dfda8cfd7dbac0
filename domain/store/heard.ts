import type { Note } from '../model/stored.ts';
import { SOUND } from './media.ts';
import { noteById } from './notes.ts';
import type { Store } from './open.ts';

/** How a spoken note was heard: the recogniser's own words, and whether it was in doubt. */
interface Heard { raw: string; doubtful: boolean }

export const keepHeard = (store: Store, note: number, heard: Heard): void => {
  store.run('INSERT INTO heard (note, raw, doubtful) VALUES (?, ?, ?) ON CONFLICT (note) DO NOTHING', note, heard.raw, heard.doubtful ? 1 : 0);
};

/** Notes with sound that was never heard, for want of a model, oldest first; one that was heard since, as an edit of it, is left out. */
export function unheardNotes(store: Store): Note[] {
  const rows = store.all<{ id: number }>(`SELECT DISTINCT note.id FROM note JOIN media_link ON media_link.note = note.id JOIN media USING (hash)
    WHERE ${SOUND} AND NOT EXISTS (SELECT 1 FROM heard WHERE heard.note = note.id) AND NOT EXISTS (SELECT 1 FROM note AS later WHERE later.edits = note.id)
    ORDER BY note.id`);
  return rows.flatMap(r => noteById(store, r.id) ?? []);
}
