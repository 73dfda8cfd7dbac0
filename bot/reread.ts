import type { Entry } from '../domain/model/entry.ts';
import type { Note, StoredEntry } from '../domain/model/stored.ts';
import { amendsIn, standing } from '../domain/log/amend.ts';
import type { Log } from '../domain/log/keeper.ts';
import { record } from '../domain/log/record.ts';
import { apply } from '../domain/log/replay.ts';
import { emptyShop } from '../domain/log/shop.ts';
import { entriesOfNote } from '../domain/store/entries.ts';
import { allNotes } from '../domain/store/notes.ts';
import { readModelWish } from '../nlp/hear/hub-models.ts';
import { readCoatWeather } from './planning/coat-measured.ts';
import { helpHereIn } from './planning/help-here.ts';
import { wasAboutThePlan } from './planning/ways.ts';
import { sayEntry } from './say/entry.ts';
import { readContext } from './turn/context.ts';
import type { Deps } from './turn/deps.ts';
import { readSafely } from './turn/read-safely.ts';

/** A note that today's reader reads otherwise than the log holds it; entries in the words of the read-back. */
export interface Difference { note: Note; gone: string[]; come: string[] }

/**
 * Reads every kept note again. A correction, and a note that the person has since corrected, is left as it stands: their word beats the reader's.
 * With `keep`, what is gone is struck and what has come is recorded, as entries of the same note.
 */
export function rereadAll(deps: Deps, options: { keep: boolean; onDifference: (d: Difference) => void }): { notes: number; changed: number; kept: boolean } {
  let changed = 0;
  const notes = [...allNotes(deps.log.store)];
  // The names that the shop had when each note was said: what it learned later must not change how the note is read.
  const then: Log = { ...deps.log, shop: emptyShop() };
  for (const note of notes) {
    const held = entriesOfNote(deps.log.store, note.id);
    const difference = reread(note, held, then, deps);
    held.filter(e => e.entry.kind !== 'amend').forEach(e => apply(then.shop, e));
    if (!difference) continue;
    changed++;
    options.onDifference(difference.shown);
    if (options.keep) record(deps.log, note, difference.entries);
  }
  return { notes: notes.length, changed, kept: options.keep && changed > 0 };
}

function reread(note: Note, held: readonly StoredEntry[], then: Log, deps: Deps): { shown: Difference; entries: Entry[] } | undefined {
  if (held.some(e => e.entry.kind === 'amend' || !untouched(e, deps))) return undefined;
  if (readCoatWeather(note.text)) return undefined;
  if (!held.length && (wasAboutThePlan(note.text) || readModelWish(note.text))) return undefined;
  const ctx = readContext(then, { key: note.key, door: 'command', chat: note.chat, at: note.at, text: note.text }, note.machine, note.id);
  const here = helpHereIn(note.text, note.at, then.shop);
  const rest = readSafely(here ? here.rest : note.text, ctx, deps);
  const reading = { ...rest, entries: [...(here?.found ?? []), ...rest.entries] };
  if (reading.entries.some(e => e.kind === 'amend')) return undefined;
  const words = (e: Entry): string => sayEntry(e, { at: note.at });
  const before = held.map(e => words(e.entry));
  const after = reading.entries.map(words);
  const gone = held.filter(e => !after.includes(words(e.entry)));
  const come = reading.entries.filter(e => !before.includes(words(e)));
  if (!gone.length && !come.length) return undefined;
  return {
    shown: { note, gone: gone.map(e => words(e.entry)), come: come.map(words) },
    entries: [...gone.map(e => ({ kind: 'amend' as const, undo: true, of: e.id })), ...come],
  };
}

/** As it was first recorded: neither struck nor changed. */
const untouched = (e: StoredEntry, deps: Deps): boolean => {
  const now = standing(e, amendsIn(deps.log.store));
  return now !== undefined && JSON.stringify(now.entry) === JSON.stringify(e.entry);
};
