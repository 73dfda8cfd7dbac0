import { Composer, type Context } from 'grammy';
import type { BotDeps } from '../bot.ts';
import { harmless } from '../errors.ts';

/**
 * Answers a tap, so that the telephone stops waiting. Not awaited: a rate limit here must not hold up the next message; and a tap that
 * is too old to be answered is kept all the same.
 */
export function tapped({ log }: BotDeps): Composer<Context> {
  const composer = new Composer<Context>();
  composer.on('callback_query', ctx => {
    void harmless(() => ctx.answerCallbackQuery(), line => { if (!/query is too old/.test(line)) log(line); });
  });
  return composer;
}
