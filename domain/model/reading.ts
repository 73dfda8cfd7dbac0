import type { Ask } from './ask.ts';
import type { Entry } from './entry.ts';

/** One step of how a note was read: which rule did what to which words. Printed by the trace command and by failing tests. */
export interface TraceLine { stage: string; rule: string; text: string; gave?: string }

/** A reading that could not be decided: what to ask, the choices, and how the answer completes the entry. */
export interface NearMiss {
  /** One short question. */
  text: string;
  choices: string[];
  /** Index into `entries` (or `asks`) of the one to complete, and the field the choice fills. */
  fills?: { list: 'entries' | 'asks'; index: number; field: string };
}

/** What a note was understood to say. `unread`: stretches that nothing covers, word for word. */
export interface Reading {
  entries: Entry[];
  asks: Ask[];
  unread: string[];
  /** The machine that the note names for itself ("on the sawmill: …"), and whether it changes the chat's current one ("switch to …"). */
  machine?: string;
  switches?: boolean;
  questions: NearMiss[];
  /** An act on the conversation itself, not on the shop: the next page of a long list, more words, strike what was logged. */
  act?: 'more' | 'longer' | 'undo' | 'yes' | 'no' | 'keep' | 'help';
  trace: TraceLine[];
}

/** What the reader is told beside the words. `at`: ISO with offset. `prior`: the notes just before, oldest first. */
export interface ReadContext {
  at: string;
  machines?: readonly string[];
  parts?: readonly string[];
  places?: readonly string[];
  sources?: readonly string[];
  prior?: readonly string[];
}
