import type { Entry } from './entry.ts';

/** A note as it is kept: word for word, before anything is understood. `at` is ISO with the offset of the place it was said in. */
export interface Note {
  id: number;
  /** The message's own identity at its door; a repeat of it is the same note. */
  key: string;
  at: string;
  door: string;
  chat: string;
  text: string;
  /** The machine that the chat was at when the note was said. */
  machine?: string;
  /** The words that nothing in the note covered. */
  unread?: string[];
  /** Hash names of kept photos or sound. */
  media?: string[];
  /** The note that this one replaces (an edited message). */
  edits?: number;
}

/**
 * A name in an entry as it was resolved when the entry was recorded: which part, item or job of the machine is meant.
 * `key` is a name key (empty: the machine itself); `verb` where a phrase names a work on it; `off` where it says that the thing comes off.
 */
export interface Ref { key: string; name: string; verb?: string; off?: boolean }

/** An entry as the log holds it. The numbers only grow; nothing is ever taken out. */
export interface StoredEntry {
  id: number;
  note: number;
  at: string;
  /** The machine the entry belongs to: named in the note, else the chat's current one, else none. */
  machine?: string;
  entry: Entry;
  /** What the entry's names mean: the naming field first, then `for`, or the `then` of a rule. Written once, so that a replay never guesses again. */
  refs?: Ref[];
}
