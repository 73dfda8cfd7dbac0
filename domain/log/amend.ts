import { Entry, type EntryOf } from '../model/entry.ts';
import { nameKey, nameWords } from '../model/names.ts';
import type { StoredEntry } from '../model/stored.ts';
import { amendsOf, entriesOfNote, entryById } from '../store/entries.ts';
import { lastNotes } from '../store/notes.ts';
import type { Store } from '../store/open.ts';
import type { Log } from './keeper.ts';

/** How far back in a chat a correction looks, in notes. */
const LOOK_BACK = 60;

/** Looks up the corrections made to an entry. */
export type AmendsOf = (id: number) => readonly StoredEntry[];
export const amendsIn = (store: Store): AmendsOf => id => amendsOf(store, id);

/** An entry as it stands after the corrections in force; undefined when it is struck. A struck correction has no force. */
export function standing(stored: StoredEntry, amends: AmendsOf): StoredEntry | undefined {
  let now = stored;
  for (const amend of amends(stored.id)) {
    if (!standing(amend, amends)) continue;
    const changed = corrected(now, amend);
    if (!changed) return undefined;
    now = changed;
  }
  return now;
}

/** An entry with one correction made to it; undefined when it strikes it. A value that the field can't take leaves it as it was. */
export function corrected(stored: StoredEntry, amend: StoredEntry): StoredEntry | undefined {
  const { entry } = amend;
  if (entry.kind !== 'amend') return stored;
  if (entry.undo) return undefined;
  if (entry.field === undefined || entry.value === undefined) return stored;
  if (entry.field === 'machine') return { ...stored, machine: String(entry.value), refs: amend.refs ?? stored.refs };
  const changed = withField(stored.entry, entry.field, entry.value);
  return changed ? { ...stored, entry: changed, refs: amend.refs ?? stored.refs } : stored;
}

/** The entry with another value in a field, or undefined when its kind has no such field or can't take the value. */
function withField(entry: Entry, field: string, value: string | number | boolean): Entry | undefined {
  if (!fieldsOf(entry).has(field)) return undefined;
  const parsed = Entry.safeParse({ ...entry, [field]: value });
  return parsed.success ? parsed.data : undefined;
}

const FIELDS = new Map(Entry.options.map(option => [option.shape.kind.value as string, new Set(Object.keys(option.shape))]));
const NOT_CORRECTED = new Set(['kind', 'span', 'sure', 'of']);
const fieldsOf = (entry: Entry): Set<string> => {
  const all = FIELDS.get(entry.kind) ?? new Set<string>();
  return new Set([...all].filter(f => !NOT_CORRECTED.has(f)));
};

/**
 * The entries that a correction said in a chat means. With `field`: the newest entry in force that can take it (and is about `part`,
 * when one is named), one that has the field rather than one that could. With `undo`: all that the newest note in force said (about
 * `part`, or with `value` in it); the corrections of a note count too, so that an undo can be undone. None found: an empty list.
 */
export function targets({ store }: Log, chat: string, amend: EntryOf<'amend'>): StoredEntry[] {
  const amends = amendsIn(store);
  const about = (e: StoredEntry): boolean => amend.part === undefined || isAbout(store, e, amend.part);
  for (const has of amend.undo ? [false] : [true, false]) {
    for (const note of lastNotes(store, chat, LOOK_BACK).reverse()) {
      const inForce = entriesOfNote(store, note.id).filter(e => standing(e, amends) && about(e));
      const fitting = amend.undo ? inForce.filter(e => amend.value === undefined || says(standing(e, amends)!, amend.value)) : inForce.filter(e => canTake(standing(e, amends)!, amend, has)).slice(-1);
      if (fitting.length) return fitting;
    }
  }
  return [];
}

/** Whether an entry has the value in one of its fields: "strike the 61" means the reading of 61, however long ago. */
const says = (now: StoredEntry, value: string | number | boolean): boolean => Object.entries(now.entry).some(([field, v]) => !NOT_CORRECTED.has(field) && v === value);

function canTake(now: StoredEntry, amend: EntryOf<'amend'>, mustHave: boolean): boolean {
  if (amend.field === undefined || amend.value === undefined || now.entry.kind === 'amend') return false;
  if (mustHave && !(amend.field in now.entry)) return false;
  return withField(now.entry, amend.field, amend.value) !== undefined;
}

/** Whether an entry, or the one that it corrects, names that part: every word of the shorter name is in the longer one. */
function isAbout(store: Store, stored: StoredEntry, part: string): boolean {
  const { entry } = stored;
  if (entry.kind === 'amend') {
    const target = entry.of === undefined ? undefined : entryById(store, entry.of);
    return target !== undefined && isAbout(store, target, part);
  }
  const names = (stored.refs ?? []).flatMap(r => [r.key, nameKey(r.name)]).filter(Boolean);
  const wanted = nameWords(part);
  return names.some(n => { const have = n.split(' '); return wanted.every(w => have.includes(w)) || have.every(w => wanted.includes(w)); });
}
