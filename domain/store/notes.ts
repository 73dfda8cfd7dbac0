import type { Note } from '../model/stored.ts';
import type { Store } from './open.ts';
import { exactOf, textOf } from './words.ts';

/** A note before the log gave it a number; `unread` and `media` are kept beside it once they are known. */
export type NewNote = Omit<Note, 'id' | 'unread' | 'media'>;

interface Row { id: number; key: string; at: string; door: string; chat: string; text: string; exact: Uint8Array | null; machine: string | null; edits: number | null }

/**
 * Keeps a note word for word. The key is the message's own identity: a repeat gives back the note that is there, `fresh` false.
 */
export function keepNote(store: Store, note: NewNote): { note: Note; fresh: boolean } {
  const done = store.run(
    `INSERT INTO note (key, at, day, door, chat, text, exact, machine, edits) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (key) DO NOTHING`,
    note.key, note.at, note.at.slice(0, 10), note.door, note.chat, note.text, exactOf(note.text), note.machine ?? null, note.edits ?? null);
  const kept = noteByKey(store, note.key);
  if (!kept) throw new Error(`note ${note.key} was not kept`);
  return { note: kept, fresh: done.changes > 0 };
}

/** Keeps the stretches of a note that nothing covered. */
export function keepUnread(store: Store, note: number, unread: readonly string[]): void {
  for (const text of unread) store.run('INSERT INTO unread (note, text, exact) VALUES (?, ?, ?)', note, text, exactOf(text));
}

export const noteById = (store: Store, id: number): Note | undefined => whole(store, store.get<Row>('SELECT * FROM note WHERE id = ?', id));
export const noteByKey = (store: Store, key: string): Note | undefined => whole(store, store.get<Row>('SELECT * FROM note WHERE key = ?', key));

/** The newest notes of a chat, oldest first; `before`: only notes older than that one. */
export function lastNotes(store: Store, chat: string, count: number, before = Number.MAX_SAFE_INTEGER): Note[] {
  return store.all<Row>('SELECT * FROM note WHERE chat = ? AND id < ? ORDER BY id DESC LIMIT ?', chat, before, count).reverse().map(r => whole(store, r)!);
}

/** Every note from the oldest on, without what is kept beside it; for reading the log anew. */
export function* allNotes(store: Store): Generator<Note> {
  for (const row of store.each<Row>('SELECT * FROM note ORDER BY id')) yield plain(row);
}

export const noteCount = (store: Store): number => store.get<{ n: number }>('SELECT count(*) AS n FROM note')!.n;

export const unreadOf = (store: Store, note: number): string[] =>
  store.all<{ text: string; exact: Uint8Array | null }>('SELECT text, exact FROM unread WHERE note = ? ORDER BY rowid', note).map(textOf);

/** The bare note of a row; `whole` adds what is kept beside it. */
export function plain(row: Row): Note {
  const note: Note = { id: row.id, key: row.key, at: row.at, door: row.door, chat: row.chat, text: textOf(row) };
  if (row.machine !== null) note.machine = row.machine;
  if (row.edits !== null) note.edits = row.edits;
  return note;
}

function whole(store: Store, row: Row | undefined): Note | undefined {
  if (!row) return undefined;
  const note = plain(row);
  const unread = unreadOf(store, row.id);
  if (unread.length) note.unread = unread;
  const media = store.all<{ hash: string }>('SELECT DISTINCT hash FROM media_link WHERE note = ? ORDER BY rowid', row.id).map(m => m.hash);
  if (media.length) note.media = media;
  return note;
}
