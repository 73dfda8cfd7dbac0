import type { Entry } from '../model/entry.ts';
import type { Ref, StoredEntry } from '../model/stored.ts';
import type { Store } from './open.ts';

/** Entries only ever grow. What an entry speaks of is indexed by machine key and name key (`subject`). */
type NewEntry = Omit<StoredEntry, 'id'>;
export interface Subject { machine: string; key: string }

interface Row { id: number; note: number; at: string; machine: string | null; body: string }
const COLUMNS = 'entry.id, entry.note, entry.at, entry.machine, entry.body';

export function appendEntry(store: Store, entry: NewEntry, subjects: readonly Subject[]): StoredEntry {
  const of = entry.entry.kind === 'amend' ? entry.entry.of ?? null : null;
  const done = store.run('INSERT INTO entry (note, at, machine, kind, of, body) VALUES (?, ?, ?, ?, ?, ?)',
    entry.note, entry.at, entry.machine ?? null, entry.entry.kind, of, JSON.stringify({ entry: entry.entry, refs: entry.refs }));
  const id = Number(done.lastInsertRowid);
  addSubjects(store, { id, note: entry.note }, subjects);
  return { id, ...entry };
}

/** Adds what an entry speaks of, also later, when a correction gives it another name. */
export function addSubjects(store: Store, entry: { id: number; note: number }, subjects: readonly Subject[]): void {
  for (const s of subjects)
    store.run('INSERT INTO subject (machine, key, entry, note) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING', s.machine, s.key, entry.id, entry.note);
}

export function entryById(store: Store, id: number): StoredEntry | undefined {
  const row = store.get<Row>(`SELECT ${COLUMNS} FROM entry WHERE id = ?`, id);
  return row && stored(row);
}

/** The entries of a note, in their order. */
export const entriesOfNote = (store: Store, note: number): StoredEntry[] =>
  store.all<Row>(`SELECT ${COLUMNS} FROM entry WHERE note = ? ORDER BY id`, note).map(stored);

/** The entries above a number, oldest first, at most `limit`. */
export const entriesAfter = (store: Store, id: number, limit: number): StoredEntry[] =>
  store.all<Row>(`SELECT ${COLUMNS} FROM entry WHERE id > ? ORDER BY id LIMIT ?`, id, limit).map(stored);

/**
 * All entries that speak of a part of a machine, oldest first, with the corrections of them, and the corrections of those. (CROSS JOIN
 * holds SQLite to this order of the tables: left free, it reads the whole log.)
 */
export const entriesAbout = (store: Store, subject: Subject): StoredEntry[] =>
  store.all<Row>(`WITH RECURSIVE about (id) AS (
      SELECT entry FROM subject WHERE machine = ? AND key = ?
      UNION SELECT entry.id FROM about CROSS JOIN entry ON entry.of = about.id)
    SELECT ${COLUMNS} FROM about CROSS JOIN entry ON entry.id = about.id ORDER BY entry.id`, subject.machine, subject.key).map(stored);

/** The remarks that speak of a part of a machine, oldest first, as they were said. */
export const remarksAbout = (store: Store, subject: Subject): StoredEntry[] =>
  store.all<Row>(`SELECT ${COLUMNS} FROM subject CROSS JOIN entry ON entry.id = subject.entry WHERE subject.machine = ? AND subject.key = ? AND kind = 'remark' ORDER BY subject.entry`,
    subject.machine, subject.key).map(stored);

/** The corrections made to an entry, oldest first. */
export const amendsOf = (store: Store, id: number): StoredEntry[] =>
  store.all<Row>(`SELECT ${COLUMNS} FROM entry WHERE of = ? ORDER BY id`, id).map(stored);

/** Every correction of another entry above a number in the log, oldest first. */
export const amendsAfter = (store: Store, id: number): StoredEntry[] =>
  store.all<Row>(`SELECT ${COLUMNS} FROM entry WHERE of IS NOT NULL AND id > ? ORDER BY id`, id).map(stored);

export const newestEntry = (store: Store): number => store.get<{ id: number | null }>('SELECT max(id) AS id FROM entry')!.id ?? 0;

function stored(row: Row): StoredEntry {
  const body = JSON.parse(row.body) as { entry: Entry; refs?: Ref[] };
  const entry: StoredEntry = { id: row.id, note: row.note, at: row.at, entry: body.entry };
  if (row.machine !== null) entry.machine = row.machine;
  if (body.refs) entry.refs = body.refs;
  return entry;
}
