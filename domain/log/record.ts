import type { Entry } from '../model/entry.ts';
import type { Note, StoredEntry } from '../model/stored.ts';
import type { Log } from './keeper.ts';

/**
 * Records what a note was understood to say and folds it into the state, in one transaction (joined to the caller's, if one is open).
 * An entry belongs to the machine named in it, else to the note's. An `amend` gets its `of` here: given by the caller, or found
 * (see targets in amend.ts); an undo of a note with several entries is recorded as one amend for each. A note that `edits` another
 * strikes what that one said. Returns what was recorded, amends that found nothing to change (no `of`) included.
 */
export function record(_log: Log, _note: Note, _entries: readonly Entry[]): StoredEntry[] {
  return [];
}
