import type { EntryOf } from '../model/entry.ts';
import type { StoredEntry } from '../model/stored.ts';
import type { Log } from './keeper.ts';

/**
 * The entries that a correction said in a chat means. With `field`: the newest entry there that has such a field (and is about
 * `part`, when that is named). With `undo`: all that the newest note in force said (about `part`); an undo itself can be undone.
 */
export function targets(_log: Log, _chat: string, _amend: EntryOf<'amend'>): StoredEntry[] {
  return [];
}

/** An entry as it stands after the corrections made to it; undefined when it is struck. */
export function standing(_log: Log, _entry: StoredEntry): StoredEntry | undefined {
  return undefined;
}
