import { entriesAbout } from '../store/entries.ts';
import { mediaOfPart, mediaPath } from '../store/media.ts';
import { plain } from '../store/notes.ts';
import type { Store } from '../store/open.ts';
import type { Note, StoredEntry } from '../model/stored.ts';

/**
 * What was said, word for word: answers ask it for history, which the folded state does not hold. Keys as in the shop: a machine key
 * (empty: no named machine) and name keys. Days are YYYY-MM-DD, both ends included.
 */
export interface Past {
  /** Notes that speak of one of these things, oldest first: the newest `limit` of them, and how many older ones there are. */
  notesAbout(machine: string, keys: readonly string[], days: Days, limit: number): { notes: Note[]; older: number };
  /** Notes of all machines in those days. */
  notesOn(days: Days, limit: number): { notes: Note[]; older: number };
  /** Remarks that speak of a thing, oldest first, those struck left out. */
  remarksAbout(machine: string, key: string): StoredEntry[];
  /** Files tied to a thing, oldest first. */
  filesOf(machine: string, key: string): string[];
}
export interface Days { from?: string; to?: string }

type NoteRow = Parameters<typeof plain>[0];
const EARLIEST = '0000-00-00';
const LATEST = '9999-99-99';

export function pastOf(store: Store): Past {
  const newest = (rows: NoteRow[], total: number): { notes: Note[]; older: number } => ({ notes: rows.reverse().map(plain), older: Math.max(0, total - rows.length) });
  return {
    notesAbout(machine, keys, { from = EARLIEST, to = LATEST }, limit) {
      const where = `FROM note WHERE id IN (SELECT note FROM subject WHERE machine = ?1 AND key IN (SELECT value FROM json_each(?2))) AND day BETWEEN ?3 AND ?4`;
      const values = [machine, JSON.stringify(keys), from, to];
      return newest(store.all<NoteRow>(`SELECT * ${where} ORDER BY id DESC LIMIT ?5`, ...values, limit), store.get<{ n: number }>(`SELECT count(*) AS n ${where}`, ...values)!.n);
    },
    notesOn({ from = EARLIEST, to = LATEST }, limit) {
      const where = 'FROM note WHERE day BETWEEN ? AND ?';
      return newest(store.all<NoteRow>(`SELECT * ${where} ORDER BY day DESC, id DESC LIMIT ?`, from, to, limit), store.get<{ n: number }>(`SELECT count(*) AS n ${where}`, from, to)!.n);
    },
    remarksAbout: (machine, key) => entriesAbout(store, { machine, key }).filter(e => e.entry.kind === 'remark'),
    filesOf: (machine, key) => mediaOfPart(store, machine, key).map(m => mediaPath(store, m)),
  };
}
