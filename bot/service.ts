import type { Incoming, Reply } from './incoming.ts';

/** A message as a door brings it: words, or sound or photos as bytes; `Incoming` is made of it once the bytes are kept and heard. */
export interface DoorMessage {
  key: string;
  door: Incoming['door'];
  chat: string;
  at: string;
  text: string;
  edits?: string;
  files?: { bytes: Uint8Array; /** What the sender says it is; the bytes decide. */ claims?: string; use: 'photo' | 'sound' }[];
  /** Where the reply goes at that door (a chat id); kept with the outgoing row. */
  target?: string;
}

/** One exchange as the page shows it; `id` is the note's number, which only grows. */
export interface Talk { id: number; at: string; door: string; text: string; say: string; buttons: Reply['buttons']; files: string[]; struck?: boolean }

/** What stands beside the talk at a glance, from the same answers and in the same words. */
export interface Glance { title: 'Next' | 'Holding up' | 'To get' | 'Not for good' | 'Look again'; say: string; lines: string[] }

/** `key`: the message that is worked for, `target`: where its door would call back, `done`: there is no more to come of it. */
export interface Progress { key: string; door: string; text: string; target?: string; done?: boolean }

/** The program behind every door. */
export interface Service {
  /** Keeps the message durably, then reads and answers it. Rejects only when it could not be kept: then it must be sent again. */
  take(m: DoorMessage): Promise<Reply>;
  glance(at: string): Glance[];
  /** Exchanges after note `after`, oldest first; without it the last `limit`. */
  talk(after: number | undefined, limit: number): Talk[];
  /** Told of every exchange when it is done, whichever door it came by. Returns how to stop listening. */
  onTalk(listener: (t: Talk) => void): () => void;
  /** A kept file by its hash name; undefined when there is none of that name. */
  media(name: string): { bytes: Uint8Array; type: string } | undefined;
  /** How far long work for a message is ("Hearing 3 min of talk… 40 %"), for doors that can show it. */
  onProgress(listener: (p: Progress) => void): () => void;
}
