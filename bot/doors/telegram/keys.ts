import { createHash } from 'node:crypto';
import type { Message, Update } from 'grammy/types';

/**
 * The natural identity of what came. Update numbers are no identity: they begin anew at random after a quiet week, and the same
 * message comes under the same number again only for a while.
 */
export const messageKey = (botId: string, chat: number, message: number): string => `tg:${botId}:m:${chat}:${message}`;

/** The key of an update, or undefined when it is nothing to be kept. */
export function keyOf(botId: string, update: Update): string | undefined {
  if (update.message) return messageKey(botId, update.message.chat.id, update.message.message_id);
  if (update.edited_message) return editKey(botId, update.edited_message);
  if (update.callback_query) return `tg:${botId}:cb:${update.callback_query.id}`;
  const member = update.my_chat_member;
  return member && joined(member) ? `tg:${botId}:j:${member.chat.id}:${member.date}` : undefined;
}

/** An edit's date has a grain of one second, so what it says is part of its identity. */
function editKey(botId: string, m: Message & { edit_date?: number }): string {
  const says = JSON.stringify([m.text, m.caption, m.photo?.at(-1)?.file_unique_id, m.voice?.file_unique_id, m.audio?.file_unique_id, m.document?.file_unique_id]);
  return `tg:${botId}:e:${m.chat.id}:${m.message_id}:${m.edit_date ?? 0}:${createHash('sha256').update(says).digest('hex').slice(0, 16)}`;
}

/** The bot was put into a group. */
function joined({ chat, old_chat_member: was, new_chat_member: is }: NonNullable<Update['my_chat_member']>): boolean {
  const out = ['left', 'kicked'];
  return chat.type !== 'private' && out.includes(was.status) && !out.includes(is.status);
}
