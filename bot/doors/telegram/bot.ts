import type { Bot } from 'grammy';
import type { UserFromGetMe } from 'grammy/types';
import type { NewQueued } from '../../../domain/store/queue.ts';
import type { Store } from '../../../domain/store/open.ts';
import type { Line } from './line.ts';
import { known } from './features/known.ts';
import { keep } from './features/keep.ts';
import { tapped } from './features/tapped.ts';

/** What the running bot works with. `intake.put` writes durably and throws when it can't; `now` in ms since 1970; `onOut`: something waits in the outbox. */
export interface BotDeps { store: Store; line: Line; intake: { put(m: NewQueued): boolean }; now: () => number; log: (line: string) => void; onOut?: () => void }

/**
 * The running order. An update is confirmed to the platform only after all of this ran, so the one thing done with it is to write it
 * down; it is read, answered and sent by other loops. Whatever fails in `known` or `keep` ends this poller before it can confirm.
 */
export function runningOrder(deps: BotDeps, me: UserFromGetMe): Bot {
  const bot = deps.line.poller(me);
  bot.use(known(deps)); // who it is, before anything is written; strangers end here
  bot.use(keep(deps)); // one durable insert
  bot.use(tapped(deps)); // tells the telephone that the tap arrived; may fail
  // Nothing after it: what is not kept above is nothing this program reads.
  // Handing the error on ends the polling without the call of bot.stop(), which would confirm the update that failed.
  bot.catch(failed => { throw failed.error; });
  return bot;
}
