import { entriesOfNote, amendsOf } from '../domain/store/entries.ts';
import { noteById } from '../domain/store/notes.ts';
import type { Store } from '../domain/store/open.ts';
import { answeredAfter, repliesTo } from '../domain/store/replies.ts';
import type { Reply } from './incoming.ts';
import type { Talk } from './service.ts';

/** What of a reply is kept: all but the entries and the unread words, which have tables of their own. */
type Kept = Pick<Reply, 'say' | 'buttons' | 'files'> & Partial<Pick<Reply, 'asks' | 'answers' | 'warnings' | 'question'>>;

export function keptForm({ say, buttons, files, asks, answers, warnings, question }: Kept): string {
  const kept: Kept = { say, buttons, files };
  if (asks?.length) Object.assign(kept, { asks, answers });
  if (warnings?.length) kept.warnings = warnings;
  if (question) kept.question = question;
  return JSON.stringify(kept);
}

/** A reply put together again from what is kept; undefined while the note has none. */
export function replyAgain(store: Store, note: number): Reply | undefined {
  const [first] = repliesTo(store, note);
  if (first === undefined) return undefined;
  const kept = JSON.parse(first) as Kept;
  return {
    note, entries: entriesOfNote(store, note), asks: kept.asks ?? [], answers: kept.answers ?? [], warnings: kept.warnings ?? [], question: kept.question ?? null,
    unread: noteById(store, note)?.unread ?? [], say: kept.say, buttons: kept.buttons, files: kept.files,
  };
}

/** One exchange as a door can show it again, with what was said after it; undefined while it has no reply. */
export function talkOf(store: Store, id: number): Talk | undefined {
  const note = noteById(store, id);
  const parts = repliesTo(store, id).map(body => JSON.parse(body) as Kept);
  if (!note || !parts.length) return undefined;
  return {
    id, at: note.at, door: note.door, text: note.text, say: parts.map(p => p.say).join('\n'), buttons: parts.at(-1)!.buttons,
    files: [...(note.media ?? []), ...parts.flatMap(p => p.files)], struck: isStruck(store, id),
  };
}

/** Struck: everything the note logged was undone since. */
function isStruck(store: Store, note: number): boolean {
  const entries = entriesOfNote(store, note).filter(e => e.entry.kind !== 'amend');
  return entries.length > 0 && entries.every(e => amendsOf(store, e.id).some(a => a.entry.kind === 'amend' && a.entry.undo));
}

export const talks = (store: Store, after: number | undefined, limit: number): Talk[] =>
  answeredAfter(store, after, limit).flatMap(note => talkOf(store, note) ?? []);
