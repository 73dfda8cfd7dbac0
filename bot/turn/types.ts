import type { Entry } from '../../domain/model/entry.ts';
import type { Reading } from '../../domain/model/reading.ts';
import type { Note } from '../../domain/model/stored.ts';
import type { Incoming, Reply } from '../incoming.ts';
import type { Deps } from './deps.ts';
import type { OpenQuestion } from './open-question.ts';
import type { Page } from './pages.ts';

/** What a turn starts from: the message, its note as it is kept, and what the chat remembers. */
export interface Turn {
  incoming: Incoming;
  deps: Deps;
  note: Note;
  /** The machine that the talk is about. */
  machine?: string;
  open?: OpenQuestion;
  /** What "more" and "longer" go on from. */
  page?: Page;
  /** The last sum, as the chat holds it; `lastSum` reads it. */
  kept?: unknown;
  /** What was said of a sum before these words. */
  sumSaid?: string[];
}

/** What a turn leaves behind: the reply, and what the chat remembers. */
export interface TurnOut { reply: Reply; machine?: string; open?: OpenQuestion; page?: Page; kept?: unknown }

/** What `recorded` needs of a reading. */
export type Said = Partial<Reading>;
/** Reads words as said in a note, records what they say and answers what they ask. */
export type ReadAndRecord = (turn: Turn, text: string, note: Note) => TurnOut;
/** Records entries and answers the asks of a reading. */
export type Recorded = (turn: Turn, entries: readonly Entry[], note: Note, reading: Said) => TurnOut;
/** One whole turn. */
export type TakeTurn = (incoming: Incoming, deps: Deps, aside?: string) => Reply;
