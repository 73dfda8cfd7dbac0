import { entriesOfNote, amendsOf } from '../domain/store/entries.ts';
import { noteById } from '../domain/store/notes.ts';
import type { Store } from '../domain/store/open.ts';
import { repliesAfter, replyTo } from '../domain/store/replies.ts';
import type { Reply } from './incoming.ts';
import type { Talk } from './service.ts';

/** One exchange as a door can show it again; undefined while it has no reply. */
export function talkOf(store: Store, id: number, body = replyTo(store, id)): Talk | undefined {
  const note = noteById(store, id);
  if (!note || body === undefined) return undefined;
  const { say, buttons, files } = JSON.parse(body) as Pick<Reply, 'say' | 'buttons' | 'files'>;
  return { id, at: note.at, door: note.door, text: note.text, say, buttons, files: [...(note.media ?? []), ...files], struck: isStruck(store, id) };
}

/** Struck: everything the note logged was undone since. */
function isStruck(store: Store, note: number): boolean {
  const entries = entriesOfNote(store, note).filter(e => e.entry.kind !== 'amend');
  return entries.length > 0 && entries.every(e => amendsOf(store, e.id).some(a => a.entry.kind === 'amend' && a.entry.undo));
}

export const talks = (store: Store, after: number | undefined, limit: number): Talk[] =>
  repliesAfter(store, after, limit).flatMap(r => talkOf(store, r.note, r.body) ?? []);
