import type { InlineKeyboardMarkup, Message } from 'grammy/types';
import type { Cloud, SentMessage } from './cloud.ts';
import { done, refuse, type Answer } from './refuse.ts';

/** A call as it arrived: its fields, and the files that came with it by their field name. */
export interface Call { fields: Record<string, unknown>; uploads: Map<string, { bytes: Uint8Array; name: string }> }
type Method = (cloud: Cloud, call: Call) => Answer;

const TEXT_LIMIT = 4096;
const DOWNLOAD_LIMIT = 20 * 1024 * 1024;
const bytes = (text: string) => Buffer.byteLength(text, 'utf8');

/** Why a message can't go to that chat, or undefined. */
function shut(cloud: Cloud, chat: number): Answer | undefined {
  const to = cloud.moved.get(chat);
  if (to !== undefined) return refuse(400, 'Bad Request: group chat was upgraded to a supergroup chat', { migrate_to_chat_id: to });
  if (cloud.blocked.has(chat)) return refuse(403, 'Forbidden: bot was blocked by the user');
  return cloud.chats.has(chat) ? undefined : refuse(400, 'Bad Request: chat not found');
}
const buttonsOf = (markup: unknown): SentMessage['buttons'] =>
  ((markup as InlineKeyboardMarkup | undefined)?.inline_keyboard ?? []).flat().map(b => ({ text: b.text, data: 'callback_data' in b ? b.callback_data : '' }));
/** callback_data is 1-64 bytes, not signs (Bot API, InlineKeyboardButton). */
const badButton = (buttons: SentMessage['buttons']) => (buttons.some(b => bytes(b.data) < 1 || bytes(b.data) > 64) ? refuse(400, 'Bad Request: BUTTON_DATA_INVALID') : undefined);
const badText = (text: string) =>
  text.trim() === '' ? refuse(400, 'Bad Request: message text is empty') : text.length > TEXT_LIMIT ? refuse(400, 'Bad Request: message is too long') : undefined;

function post(cloud: Cloud, chat: number, m: Omit<SentMessage, 'id' | 'chat'>, markup?: unknown): Message {
  const sent: SentMessage = { id: cloud.nextMessageId(chat), chat, ...m };
  cloud.sent.push(sent);
  const kept = { message_id: sent.id, date: cloud.now(), chat: cloud.chats.get(chat)!, from: cloud.bot, text: m.text, ...(markup ? { reply_markup: markup } : {}) };
  return cloud.keep(kept as unknown as Message);
}

const sendMessage: Method = (cloud, { fields }) => {
  const chat = Number(fields.chat_id);
  const text = String(fields.text ?? '');
  const buttons = buttonsOf(fields.reply_markup);
  return shut(cloud, chat) ?? badText(text) ?? badButton(buttons) ?? done(post(cloud, chat, { text, buttons, files: [] }, fields.reply_markup));
};

/** A file field holds "attach://name" of an upload beside it. */
const upload = (call: Call, field: unknown) => call.uploads.get(String(field).replace('attach://', ''));

const sendFile = (kind: 'photo' | 'document', limit: number): Method => (cloud, call) => {
  const chat = Number(call.fields.chat_id);
  const file = upload(call, call.fields[kind]);
  const no = shut(cloud, chat) ?? (file ? undefined : refuse(400, `Bad Request: there is no ${kind} in the request`))
    ?? (file!.bytes.length > limit ? refuse(413, 'Request Entity Too Large') : undefined);
  return no ?? done(post(cloud, chat, { text: String(call.fields.caption ?? ''), buttons: [], files: [{ kind, ...file! }] }));
};

const sendMediaGroup: Method = (cloud, call) => {
  const chat = Number(call.fields.chat_id);
  const media = call.fields.media as { type: string; media: string }[];
  const no = shut(cloud, chat) ?? (media.length < 2 || media.length > 10 ? refuse(400, 'Bad Request: group send failed') : undefined);
  if (no) return no;
  return done(media.map(m => post(cloud, chat, { text: '', buttons: [], files: [{ kind: m.type, ...upload(call, m.media)! }] })));
};

const editMessageText: Method = (cloud, { fields }) => {
  const chat = Number(fields.chat_id);
  const old = cloud.message(chat, Number(fields.message_id));
  const text = String(fields.text ?? '');
  if (!old) return refuse(400, 'Bad Request: message to edit not found');
  if (old.text === text && JSON.stringify(old.reply_markup) === JSON.stringify(fields.reply_markup))
    return refuse(400, 'Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message');
  return badText(text) ?? done(cloud.keep({ ...old, text } as Message));
};

const answerCallbackQuery: Method = (cloud, { fields }) =>
  (cloud.answerPress(String(fields.callback_query_id), fields.text === undefined ? undefined : String(fields.text)) ? done()
    : refuse(400, 'Bad Request: query is too old and response timeout expired or query ID is invalid'));

const getFile: Method = (cloud, { fields }) => {
  const file = cloud.files.get(String(fields.file_id));
  if (!file) return refuse(400, 'Bad Request: wrong file_id or the file is temporarily unavailable');
  if ((file.says ?? 0) > DOWNLOAD_LIMIT) return refuse(400, 'Bad Request: file is too big');
  return done({ file_id: fields.file_id, file_unique_id: `u${String(fields.file_id)}`, ...(file.says === undefined ? {} : { file_size: file.says }), file_path: file.path });
};

export const METHODS: Record<string, Method> = {
  getMe: cloud => done({ ...cloud.bot, can_join_groups: true, can_read_all_group_messages: cloud.readsAll, supports_inline_queries: false }),
  deleteWebhook: () => done(),
  sendMessage,
  sendPhoto: sendFile('photo', 10 * 1024 * 1024),
  sendDocument: sendFile('document', 50 * 1024 * 1024),
  sendMediaGroup,
  editMessageText,
  answerCallbackQuery,
  getFile,
};
