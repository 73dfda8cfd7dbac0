import { Composer, type Context } from 'grammy';
import type { BotDeps } from '../bot.ts';
import { isPairingMessage, tryToPair } from '../pairing.ts';
import { mayEnter, senderOf } from '../who.ts';

/** Lets paired people through. A stranger gets no reply and leaves no row; only the pairing code is tried. */
export function known(deps: BotDeps): Composer<Context> {
  return new Composer((ctx, next) => {
    const sender = senderOf(ctx.update);
    if (!sender) return undefined;
    if (!mayEnter(deps.store, sender)) return tryToPair(deps, ctx.update, sender);
    return isPairingMessage(deps.store, deps.line, sender) ? undefined : next();
  });
}
