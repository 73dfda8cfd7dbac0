import { Composer, type Context } from 'grammy';
import type { Update } from 'grammy/types';
import type { NewQueued } from '../../../../domain/store/queue.ts';
import type { BotDeps } from '../bot.ts';
import { keyOf } from '../keys.ts';
import { conversationOf } from '../moved.ts';
import { DOOR, senderOf } from '../who.ts';

/** Writes the update down as it came, under its natural key. Throws when that fails: then it must come again. */
export function keep(deps: BotDeps): Composer<Context> {
  return new Composer((ctx, next) => {
    const row = rowOf(deps, ctx.update);
    if (row) deps.intake.put(row);
    return next();
  });
}

/** Taps carry no date of their own, so the moment of their arrival stands for it. */
function rowOf({ store, line, now }: BotDeps, update: Update): NewQueued | undefined {
  const key = keyOf(line.botId, update);
  const sender = senderOf(update);
  if (key === undefined || !sender) return undefined;
  const date = update.edited_message?.edit_date ?? update.message?.date ?? update.my_chat_member?.date ?? Math.floor(now() / 1000);
  return { key, door: DOOR, chat: conversationOf(store, sender.chat), at: line.moment(date), body: JSON.stringify(update) };
}
