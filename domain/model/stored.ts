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

/** An entry as the log holds it. The numbers only grow; nothing is ever taken out. */
export interface StoredEntry {
  id: number;
  note: number;
  at: string;
  /** The machine the entry belongs to: named in the note, else the chat's current one, else none. */
  machine?: string;
  entry: Entry;
}
