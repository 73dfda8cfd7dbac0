import { nameKey } from '../model/names.ts';
import type { Entry, EntryOf } from '../model/entry.ts';
import type { Note, Ref, StoredEntry } from '../model/stored.ts';
import { addSubjects, appendEntry, entriesOfNote, entryById, type Subject } from '../store/entries.ts';
import { amendsIn, corrected, standing, targets } from './amend.ts';
import { foldNew, type Log } from './keeper.ts';
import { machineNamed } from './naming.ts';
import { refsOf } from './refs.ts';
import { emptyMachine, type Machine } from './shop.ts';

/**
 * Records what a note was understood to say and folds it into the state, in one transaction (joined to the caller's, if one is open).
 * An entry belongs to the machine named in it, else to the note's. An `amend` without `of` gets it here (see targets in amend.ts); an
 * undo of a note with several entries is recorded as one amend for each. A note that `edits` another strikes what that one said.
 * Returns what was recorded, amends that found nothing to change (no `of`) included.
 */
export function record(log: Log, note: Note, entries: readonly Entry[]): StoredEntry[] {
  return log.store.transaction(() => {
    foldNew(log);
    const struck = note.edits === undefined ? [] : strikeNote(log, note, note.edits);
    return [...struck, ...entries.flatMap(entry => entry.kind === 'amend' ? recordAmend(log, note, entry) : [recordOne(log, note, entry)])];
  });
}

/** Strikes all that an earlier note said, on behalf of `by`: an edit of it, or a new reading. */
function strikeNote(log: Log, by: Note, earlier: number): StoredEntry[] {
  const amends = amendsIn(log.store);
  const inForce = entriesOfNote(log.store, earlier).filter(e => standing(e, amends));
  return log.store.transaction(() => inForce.map(e => recordOf(log, by, { kind: 'amend', undo: true }, e)));
}

function recordOne(log: Log, note: Note, entry: Entry): StoredEntry {
  const machine = awaitedOn(log, entry) ?? machineMeant(log, entry.machine ?? note.machine);
  const refs = refsOf(machine, entry);
  const made = appendEntry(log.store, { note: note.id, at: note.at, machine: machine.name || undefined, entry, refs }, subjectsOf(machine.key, refs));
  foldNew(log);
  return made;
}

/**
 * What arrives is what was ordered or sent out: where the note names no machine, and the one in hand waits for no such thing, it belongs
 * to the one other machine that does.
 */
function awaitedOn(log: Log, entry: Entry): Machine | undefined {
  if (entry.kind !== 'arrival' || entry.machine !== undefined) return undefined;
  const waiting = [...log.shop.machines.values()].filter(m => awaits(m, entry.item));
  return waiting.length === 1 ? waiting[0] : undefined;
}
function awaits(machine: Machine, item: string): boolean {
  const thing = machine.things.get(refsOf(machine, { kind: 'arrival', item })[0]!.key);
  return thing !== undefined && (thing.orders.length > 0 || thing.out !== undefined);
}

/** The known machine that a name means, else a new one of that name; it enters the state with its first entry. */
function machineMeant(log: Log, name: string | undefined): Machine {
  const key = nameKey(name ?? '');
  return (name ? machineNamed(log.shop, name) : log.shop.machines.get('')) ?? emptyMachine(key, key ? name! : '');
}

const subjectsOf = (machine: string, refs: readonly Ref[]): Subject[] => refs.map(r => ({ machine, key: r.key }));

function recordAmend(log: Log, note: Note, amend: EntryOf<'amend'>): StoredEntry[] {
  const named = amend.of === undefined ? undefined : entryById(log.store, amend.of);
  const found = named ? [named] : targets(log, note.chat, amend);
  if (found.length) return found.map(target => recordOf(log, note, amend, target));
  const made = appendEntry(log.store, { note: note.id, at: note.at, machine: note.machine, entry: { ...amend, of: undefined } }, []);
  foldNew(log);
  return [made];
}

/** The correction of one entry; it speaks of the same parts as that one did and, if it changes the name, of those that it now means. */
function recordOf(log: Log, note: Note, amend: EntryOf<'amend'>, target: StoredEntry): StoredEntry {
  const now = standing(target, amendsIn(log.store)) ?? target;
  const machine = amend.field === 'machine' ? machineMeant(log, String(amend.value)) : machineMeant(log, now.machine);
  const entry: Entry = { ...amend, ...(amend.field === 'machine' ? { value: machine.name } : {}), of: target.id };
  const change = corrected(now, { ...target, entry });
  const refs = change && amend.field !== undefined && now.entry.kind !== 'amend' ? refsOf(machine, change.entry) : now.refs;
  const subjects = [...subjectsOf(nameKey(now.machine ?? ''), now.refs ?? []), ...subjectsOf(machine.key, refs ?? [])];
  const made = appendEntry(log.store, { note: note.id, at: note.at, machine: now.machine, entry, refs }, subjects);
  addSubjects(log.store, target, subjects);
  foldNew(log);
  return made;
}
