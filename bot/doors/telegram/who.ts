import type { Chat, Message, Update } from 'grammy/types';
import { isPaired } from '../../../domain/store/people.ts';
import type { Store } from '../../../domain/store/open.ts';

export const DOOR = 'telegram';

/** The kinds of update that are asked for; nothing else is delivered. */
export const WANTED = ['message', 'edited_message', 'callback_query', 'my_chat_member'] as const;

/** Who did it, and in which chat. `message`: what they said or edited. */
export interface Sender { user: number; chat: Chat; message?: Message }

/**
 * The person behind an update. Undefined when no one person answers for it: posts of a channel, admins who hide behind their group,
 * other bots, taps on a message that is no longer tied to a chat.
 */
export function senderOf(update: Update): Sender | undefined {
  const message = update.message ?? update.edited_message;
  if (message) {
    if (!message.from || message.from.is_bot || message.sender_chat) return undefined;
    return { user: message.from.id, chat: message.chat, message };
  }
  const tap = update.callback_query;
  if (tap?.message && !tap.from.is_bot && tap.message.chat.type !== 'channel') return { user: tap.from.id, chat: tap.message.chat };
  const member = update.my_chat_member;
  return member && member.chat.type !== 'channel' && !member.from.is_bot ? { user: member.from.id, chat: member.chat } : undefined;
}

/** By number alone; names can be changed and taken. Asked of the store each time, so that a revoked person is out at once. */
export const mayEnter = (store: Store, sender: Sender | undefined): boolean => sender !== undefined && isPaired(store, DOOR, sender.user);
