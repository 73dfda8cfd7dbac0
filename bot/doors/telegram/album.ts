import { setTimeout as after } from 'node:timers/promises';
import type { Message, Update } from 'grammy/types';
import { readSetting, writeSetting } from '../../../domain/store/settings.ts';
import type { Store } from '../../../domain/store/open.ts';
import type { Queued } from '../../../domain/store/queue.ts';
import { rowsAfter } from './rows.ts';

/**
 * The platform sends an album as one message a picture, with the words on one of them. The first one taken gathers the others, so that
 * they are one note; the others, when their turn comes, find themselves gathered. One that comes too late is a note of its own.
 */
interface Gathered { album: string; by: string; keys: string[] }

/** Albums hold at most ten; between them other messages may have come. */
const LOOK = 20;
/** The rest of an album is written down within moments of its first, in ms. */
const PAUSE_MS = 300;
const setting = (chat: number) => `telegram album ${chat}`;

/** Whether a message was gathered by another of its album, whose note is kept. */
export function isGathered(store: Store, key: string, m: Message): boolean {
  const held = m.media_group_id === undefined ? undefined : readSetting(store, setting(m.chat.id));
  const gathered = held === undefined ? undefined : (JSON.parse(held) as Gathered);
  return gathered !== undefined && gathered.album === m.media_group_id && gathered.by !== key && gathered.keys.includes(key);
}

/** Lets the others go their own way after all, as when the first has to wait. */
export const scatter = (store: Store, m: Message): void => writeSetting(store, setting(m.chat.id), undefined);

/** The other messages of an album that came after its first; none for what is no album, or an edit. */
export async function gather(store: Store, row: Queued, m: Message): Promise<Message[]> {
  if (m.media_group_id === undefined || m.edit_date !== undefined) return [];
  await after(PAUSE_MS);
  const rest = rowsAfter(store, row, LOOK).flatMap(({ key, body }) => {
    const { message } = JSON.parse(body) as Update;
    return message && message.media_group_id === m.media_group_id ? [{ key, message }] : [];
  });
  writeSetting(store, setting(m.chat.id), JSON.stringify({ album: m.media_group_id, by: row.key, keys: rest.map(r => r.key) } satisfies Gathered));
  return rest.map(r => r.message);
}
