import { setTimeout as after } from 'node:timers/promises';
import type { Bot } from 'grammy';
import { runningOrder, type BotDeps } from './bot.ts';
import { troubleOf } from './errors.ts';
import { watchPolling } from './watch.ts';
import { WANTED } from './who.ts';

/** How long a poll may hang at the platform, in s; how long close waits for what is in hand, in ms. */
const POLL_SECONDS = 30;
const STOP_MS = 5_000;

export interface TelegramDoor {
  /** Resolves with the bot's name when it takes messages for the first time; undefined when the door shut before that. */
  opened: Promise<string | undefined>;
  /** Stops polling and resolves when what was in hand is written down. Drain the intake and the outbox after it. */
  close(): Promise<void>;
}
interface TelegramOptions extends Pick<BotDeps, 'store' | 'line' | 'intake' | 'onOut'> {
  /** ms since 1970 */
  now?: () => number;
  /** One line for the console; the token is taken out of it. */
  log?: (line: string) => void;
}

/**
 * Opens the Telegram door: long polling, one update after another. Returns at once; with no network it keeps trying, and with a bad
 * token it says so and shuts, and the other doors live on. Each new attempt is a new poller, which starts with what is unconfirmed.
 */
export function openTelegram(options: TelegramOptions): TelegramDoor {
  const say = options.log ?? (line => console.log(line));
  const deps: BotDeps = { ...options, now: options.now ?? Date.now, log: line => say(options.line.redact(line)) };
  const closing = new AbortController();
  const watch = watchPolling(deps);
  let bot: Bot | undefined;
  let tellOpened: (name: string | undefined) => void = () => {};
  const opened = new Promise<string | undefined>(tell => { tellOpened = tell; });

  const poll = async () => {
    const me = await deps.line.me();
    if (closing.signal.aborted) return;
    bot = runningOrder(deps, me);
    watch.on(bot);
    await bot.start({ timeout: POLL_SECONDS, allowed_updates: WANTED, onStart: () => tellOpened(me.username) });
  };
  const life = async () => {
    let said = '';
    for (let failures = 1; !closing.signal.aborted; failures++) {
      try { return await poll(); } catch (error) {
        if (closing.signal.aborted) return;
        const trouble = troubleOf(error);
        if (watch.heardSinceAsked()) { failures = 1; said = ''; }
        if (trouble.sentence !== said) deps.log(trouble.sentence);
        said = trouble.sentence;
        if (trouble.final) return;
      }
      await after(Math.min(60_000, 1_000 * 2 ** (failures - 1)), undefined, { signal: closing.signal }).catch(() => {});
    }
  };
  const running = life().finally(() => { watch.stop(); tellOpened(undefined); });
  return {
    opened,
    async close() {
      closing.abort();
      // Its last call confirms what was handled, and all that was handled is written down. With no network it is not waited for.
      await within(STOP_MS, bot?.stop());
      await within(STOP_MS, running);
    },
  };
}

/** Waits for work to end, however it ends, but no longer than that. */
const within = (ms: number, work: Promise<unknown> | undefined): Promise<unknown> => {
  const late = new AbortController();
  return Promise.race([Promise.resolve(work).catch(() => {}).finally(() => late.abort()), after(ms, undefined, { signal: late.signal, ref: false }).catch(() => {})]);
};
