import type { Answer } from '../domain/model/answer.ts';
import type { Ask } from '../domain/model/ask.ts';
import type { HeardWord } from '../nlp/hear/doubt.ts';
import type { Task } from './planning/task.ts';
import type { StoredEntry } from '../domain/model/stored.ts';

/** One message as a door took it, before anything is understood. */
export interface Incoming {
  /** The message's own identity at its door ("tg:m:7:12", "page:<uuid>"): a repeat of it changes nothing. */
  key: string;
  door: 'terminal' | 'page' | 'telegram' | 'command';
  /** The conversation it belongs to. All private doors of the one owner are one conversation, `BENCH`; a group chat is its own. */
  chat: string;
  /** The moment it was said, ISO with the offset of the place. */
  at: string;
  text: string;
  /** The key of the message that this one replaces: an edit. That note is read anew; what it logged before is struck. */
  edits?: string;
  /** Hash names of photos or sound kept with it. */
  media?: string[];
  /** How it was heard, when it was spoken. A doubtful hearing is asked about and not logged; `overNoise`: its words over a running machine, with their scores. */
  spoken?: { raw: string; doubtful: boolean; unsure: string[]; overNoise?: HeardWord[] };
}

export const BENCH = 'bench';

/** A thing to tap, and the same in words: a tap says exactly what `send` says, so that every button also has a typed form. */
export interface Button { label: string; send: string }

/** Another speech model is to be fetched where it is not here, and used; the one that comes along when none is named. */
export interface ChangeModel { kind: 'model'; model: { say: string; model: string } | undefined }

/** What takes longer than a breath; its answer is said after the reply, when it is done. */
export type Later = Task | ChangeModel;

/** What one turn of the conversation gives back; every door says `say` and offers `buttons`. */
export interface Reply {
  note: number;
  entries: StoredEntry[];
  asks: Ask[];
  answers: Answer[];
  warnings: string[];
  question: { text: string; choices: string[] } | null;
  /** The words that nothing covered. */
  unread: string[];
  say: string;
  buttons: Button[];
  /** Hash names of kept pictures to show. */
  files: string[];
  later?: Later[];
}
