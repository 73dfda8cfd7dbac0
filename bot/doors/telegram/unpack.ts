import type { CallbackQuery, ChatMemberUpdated, Message, Update } from 'grammy/types';
import { intake } from '../../../domain/store/intake.ts';
import type { Store } from '../../../domain/store/open.ts';
import type { Queued } from '../../../domain/store/queue.ts';
import { putOut } from '../../outbox.ts';
import type { DoorMessage } from '../../service.ts';
import { gather, isGathered, scatter } from './album.ts';
import { wordsBehind } from './buttons.ts';
import { fetchFile } from './download.ts';
import { fileOf, unreadable } from './files.ts';
import { messageKey } from './keys.ts';
import type { Line } from './line.ts';
import { conversationOf } from './moved.ts';
import { DOOR } from './who.ts';
import { isStart, wordsOf } from './words.ts';

/** `onOut`: something waits in the outbox. */
interface Deps { store: Store; line: Line; onOut?: () => void }
/** One kept row on its way to a DoorMessage; `tell` puts a sentence of the door's own on its way, once. */
interface Unpacking extends Deps { row: Queued; key: string; tell(target: number, say: string): void }

const LATE = ':late';
const START = 'Say what you do, as you would to a helper at the bench, and ask what you need: what is next, what to buy, what holds up a part, where a thing is.';

/**
 * Makes of a kept update what the turn works with: words, and photos or sound as bytes. Undefined when there is nothing to take a turn
 * on; whatever the person should hear about that is in the outbox by then, so the row is done.
 * @throws when the platform can't be reached for what is needed: the row is tried again later.
 */
export function unpackTelegram(deps: Deps): (row: Queued) => Promise<DoorMessage | undefined> {
  return async row => {
    const key = row.key.replace(LATE, '');
    const tell = (target: number, say: string) => {
      putOut(deps.store, { key: `${row.key}:door`, door: DOOR, at: row.at }, { target: String(target), say, buttons: [], files: [] });
      deps.onOut?.();
    };
    const u: Unpacking = { ...deps, row, key, tell };
    const update = JSON.parse(row.body) as Update;
    if (update.callback_query) return pressed(u, update.callback_query);
    if (update.my_chat_member) return joined(u, update.my_chat_member);
    const message = update.message ?? update.edited_message;
    return message && said(u, message);
  };
}

async function said(u: Unpacking, m: Message): Promise<DoorMessage | undefined> {
  if (isStart(m)) return void u.tell(m.chat.id, START);
  if (isGathered(u.store, u.key, m)) return undefined;
  const all = u.row.key === u.key ? [m, ...await gather(u.store, u.row, m)] : [m];
  const text = all.map(wordsOf).filter(w => w.trim() !== '').join('\n') || wordsOf(m);
  const files: NonNullable<DoorMessage['files']> = [];
  for (const one of all) {
    const got = await filesIn(u, one, text);
    if (!got) return undefined;
    files.push(...got);
  }
  if (!files.length && text.trim() === '') return undefined;
  // An edit is the same note said better: it belongs to the moment the note was said.
  const edits = m.edit_date === undefined ? {} : { edits: messageKey(u.line.botId, m.chat.id, m.message_id) };
  return { ...base(u, m.chat), at: u.line.moment(m.date), text, ...edits, ...(files.length ? { files } : {}) };
}

const base = (u: Unpacking, chat: Message['chat']) =>
  ({ key: u.key, door: DOOR, chat: conversationOf(u.store, chat), target: String(chat.id) } as const);

/** The files of a message, fetched; undefined when the whole message waits for them in another line. */
async function filesIn(u: Unpacking, m: Message, text: string): Promise<NonNullable<DoorMessage['files']> | undefined> {
  const file = fileOf(m);
  const words = text.trim() === '' ? '' : ' Your words with it are kept.';
  if (!file) {
    const what = unreadable(m);
    if (what) u.tell(m.chat.id, `I can't read ${what}; say it in words, or send a photo or a voice message.${words}`);
    return [];
  }
  try {
    const got = await fetchFile(u.line, file);
    if ('bytes' in got) return [{ bytes: got.bytes, claims: file.claims, use: file.use }];
    u.tell(m.chat.id, got.not === 'too big' ? `That file is larger than 20 MB, more than I can fetch from the chat; it is not kept. Send it smaller or in pieces.${words}`
      : `The chat no longer has that file; send it again.${words}`);
    return [];
  } catch (error) { return later(u, m, error); }
}

/**
 * A file that can't be fetched now must not hold up the talk at every door, so the message goes on in a line of its own and is tried
 * there again and again. Put before this row is done, and under a key of its own: a fault in between doubles nothing.
 */
function later(u: Unpacking, m: Message, error: unknown): undefined {
  if (u.row.key.endsWith(LATE)) throw error;
  const { key, door, at, body } = u.row;
  scatter(u.store, m);
  intake.put(u.store, { key: `${key}${LATE}`, door, chat: `tg:late:${m.chat.id}`, at, body });
  u.tell(m.chat.id, 'I can\'t fetch that from the chat just now. It is written down, and I keep trying.');
  return undefined;
}

/** A tap says exactly what its button's words say. */
function pressed(u: Unpacking, tap: CallbackQuery): DoorMessage | undefined {
  if (!tap.message) return undefined;
  const { chat } = tap.message;
  const text = wordsBehind(u.store, tap.data, chat.id);
  if (text === undefined) return void u.tell(chat.id, 'I no longer know what that button meant; say it in words.');
  return { ...base(u, chat), at: u.row.at, text };
}

/** On being put into a group: what is heard there, as by default a bot is shown little of it (getMe.can_read_all_group_messages). */
async function joined(u: Unpacking, { chat }: ChatMemberUpdated): Promise<undefined> {
  const all = (await u.line.me()).can_read_all_group_messages;
  u.tell(chat.id, all ? 'I hear this group, but only people who are paired with me; what is said here is a talk of its own.'
    : 'Here I hear only people who are paired with me, and only what begins with / or with my name, or answers one of my messages. '
      + 'To let me hear all they say, turn off group privacy for the bot with the bot\'s maker account, then add me again.');
}
