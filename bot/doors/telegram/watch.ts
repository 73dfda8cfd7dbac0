import type { Bot } from 'grammy';
import { pairedPeople } from '../../../domain/store/people.ts';
import { readSetting, writeSetting } from '../../../domain/store/settings.ts';
import { putOut } from '../../outbox.ts';
import type { BotDeps } from './bot.ts';
import { inWords } from './errors.ts';
import { DOOR } from './who.ts';

/** No answer to a poll for so long is said at the console, in ms. A poll itself takes 30 s when nothing comes. */
const SILENT_MS = 90_000;
/** The platform keeps messages for so long, in ms (tdlib/telegram-bot-api: date + 24 h). */
const KEPT_MS = 24 * 3_600_000;
/** The moment of the last answer is written down so often, in ms: it need not be exact. */
const MARK_MS = 600_000;
const MARK = 'telegram heard';

/** Listens to the polls: says when the platform falls silent, and tells people when they were out of reach for too long. */
export interface Watch { on(bot: Bot): void; heardSinceAsked(): boolean; stop(): void }

export function watchPolling({ store, line, now, log, onOut }: Omit<BotDeps, 'intake'>): Watch {
  let last = now();
  let silent = false;
  let heard = false;
  let marked = 0;
  const look = setInterval(() => {
    if (silent || now() - last < SILENT_MS) return;
    silent = true;
    log(`No answer from Telegram for ${SILENT_MS / 1000} s; still trying. The other doors work.`);
  }, 5_000);
  look.unref();

  const mark = () => {
    const before = Number(readSetting(store, MARK) ?? 0);
    if (before && now() - before > KEPT_MS) sayAway(before);
    writeSetting(store, MARK, String(now()));
    marked = now();
  };
  const sayAway = (since: number) => {
    const at = line.moment(Math.floor(now() / 1000));
    const say = `I was out of reach from ${line.moment(Math.floor(since / 1000)).slice(0, 16).replace('T', ' ')} until now. The chat keeps messages for 24 hours only: what you sent before that did not reach me, so please say it again.`;
    for (const person of pairedPeople(store, DOOR)) putOut(store, { key: `tg:${line.botId}:away:${since}:${person}`, door: DOOR, at }, { target: String(person), say, buttons: [], files: [] });
    onOut?.();
  };
  const answered = () => {
    last = now();
    heard = true;
    if (silent) log('Telegram answers again.');
    silent = false;
    // Only a convenience: a full disk must not stop the polling that will tell of it.
    if (now() - marked >= MARK_MS) { try { store.transaction(mark); } catch (error) { log(inWords(error)); } }
  };
  return {
    on(bot) {
      bot.api.config.use(async (call, method, payload, signal) => {
        const result = await call(method, payload, signal);
        if (method === 'getUpdates' && result.ok) answered();
        return result;
      });
    },
    heardSinceAsked() { const was = heard; heard = false; return was; },
    stop: () => clearInterval(look),
  };
}
