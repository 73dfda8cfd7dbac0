import { entriesOfNote, remarksAbout } from '../store/entries.ts';
import { mediaOfPart, mediaPath } from '../store/media.ts';
import { plain } from '../store/notes.ts';
import type { Store } from '../store/open.ts';
import type { Note, StoredEntry } from '../model/stored.ts';
import { amendsIn, standing } from './amend.ts';

/**
 * What was said, word for word: answers ask it for history, which the folded state does not hold. Keys as in the shop: a machine key
 * (empty: no named machine) and name keys. Days are YYYY-MM-DD, both ends included.
 */
export interface Past {
  /** Notes that speak of one of these things, oldest first: the newest `limit` of them. */
  notesAbout(machine: string, keys: readonly string[], days: Days, limit: number): Notes;
  /** Notes of those days, of all machines or of the one of that name. */
  notesOn(days: Days, limit: number, machine?: string): Notes;
  /** What a note says as it stands today; struck entries left out. */
  entriesOf(note: number): StoredEntry[];
  /** Remarks that speak of a thing, oldest first. */
  remarksAbout(machine: string, key: string): StoredEntry[];
  /** Paths of the files tied to a thing, oldest first. */
  filesOf(machine: string, key: string): string[];
}
/** `older`: there are older ones that the limit left out. */
export interface Notes { notes: Note[]; older: boolean }
interface Days { from?: string; to?: string }

type NoteRow = Parameters<typeof plain>[0];
const EARLIEST = '0000-00-00';
const LATEST = '9999-99-99';

export function pastOf(store: Store): Past {
  const newest = (rows: NoteRow[], limit: number): Notes => ({ notes: rows.slice(0, limit).reverse().map(plain), older: rows.length > limit });
  const amends = amendsIn(store);
  return {
    notesAbout: (machine, keys, { from = EARLIEST, to = LATEST }, limit) => newest(store.all<NoteRow>(
      `SELECT * FROM note WHERE id IN (SELECT note FROM subject WHERE machine = ? AND key IN (SELECT value FROM json_each(?))) AND day BETWEEN ? AND ? ORDER BY id DESC LIMIT ?`,
      machine, JSON.stringify(keys), from, to, limit + 1), limit),
    notesOn: ({ from = EARLIEST, to = LATEST }, limit, machine) => newest(machine === undefined
      ? store.all<NoteRow>('SELECT * FROM note WHERE day BETWEEN ? AND ? ORDER BY day DESC, id DESC LIMIT ?', from, to, limit + 1)
      : store.all<NoteRow>('SELECT * FROM note WHERE day BETWEEN ? AND ? AND EXISTS (SELECT 1 FROM entry WHERE note = note.id AND entry.machine = ?) ORDER BY day DESC, id DESC LIMIT ?', from, to, machine, limit + 1), limit),
    entriesOf: note => entriesOfNote(store, note).flatMap(e => standing(e, amends) ?? []),
    remarksAbout: (machine, key) => remarksAbout(store, { machine, key }).flatMap(e => standing(e, amends) ?? []),
    filesOf: (machine, key) => mediaOfPart(store, machine, key).map(m => mediaPath(store, m)),
  };
}
