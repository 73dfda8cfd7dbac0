import { answer } from '../../domain/answers/answer.ts';
import type { Now } from '../../domain/answers/given.ts';
import { ageOf } from '../../domain/answers/forecast.ts';
import { catchUp } from '../../domain/log/keeper.ts';
import { readChat } from '../../domain/store/chats.ts';
import { lastNotes } from '../../domain/store/notes.ts';
import { pairedPeople } from '../../domain/store/people.ts';
import { markSaid, reminderMark } from '../../domain/store/reminders.ts';
import { nowIn } from '../clock.ts';
import { BENCH, type Button } from '../incoming.ts';
import { startLoop, type Loop } from '../loop.ts';
import { putOut } from '../outbox.ts';
import { planSettings } from '../planning/settings.ts';
import type { RunningService } from '../serve.ts';
import type { Deps } from '../turn/deps.ts';
import { weatherFor } from '../weather/weather-for.ts';
import { dayIn } from './local-time.ts';
import type { About } from './occasion.ts';
import { keepWord, saidWords } from './said-words.ts';
import { reminderSettings } from './settings.ts';
import { dueNow, wordOf } from './unasked.ts';

/** The shop as occasions are looked for in it, at a moment (ms UTC). */
function aboutNow(deps: Deps, ms: number): About {
  const { log, zone, weather } = deps;
  catchUp(log);
  const now: Now = { at: nowIn(zone, ms), zone };
  const planning = planSettings(deps, now.at);
  const fetched = weather?.fetched();
  const more = { past: log.past, machine: readChat(log.store, BENCH).machine, planning };
  const lastNote = lastNotes(log.store, BENCH, 1, Number.MAX_SAFE_INTEGER)[0];
  return {
    shop: log.shop, now, at: ms, today: dayIn(ms, zone), weather: weatherFor(log.shop, now, fetched), ...(fetched ? { source: `${fetched.credit}, ${ageOf(fetched.fetched, now.at)}` } : {}), settings: reminderSettings(log.store),
    hours: planning.hours, ...(lastNote ? { lastNote: Date.parse(lastNote.at) } : {}), mark: key => reminderMark(log.store, key),
    next: place => { const a = answer(log.shop, { kind: 'next', ...(place ? { place } : {}) }, now, more); return a.kind === 'next' ? a.jobs : []; },
    holdingUp: part => { const a = answer(log.shop, { kind: 'blocked', part }, now, more); return a.kind === 'blocked' ? a.causes : []; },
  };
}

interface RemindersOptions {
  deps: Deps;
  service: Pick<RunningService, 'tellUnasked'>;
  /** The chat door that paired people are called by; undefined: none. */
  callBy?: 'telegram';
  onOut?: () => void;
  now?: () => number;
  everyMs?: number;
}

/** How often it is looked whether there is something to say, ms. */
const LOOK_MS = 60_000;

/** Says what is due, unasked, while the program runs. */
export const openReminders = (options: RemindersOptions): Loop =>
  startLoop(async () => { sayDue(options); return undefined; }, options.everyMs ?? LOOK_MS);

/**
 * One look: what is due is marked said and put out in one transaction, so that of two programs on one log only one says it, and a
 * program that is cut off says it again. True when something was said.
 */
export function sayDue({ deps, service, callBy, onOut, now = Date.now }: RemindersOptions): boolean {
  const { store } = deps.log;
  const about = aboutNow(deps, now());
  if (!dueNow(about).length) return false;
  const said = store.transaction(() => {
    const { at } = about.now;
    const won = dueNow(about).filter(o => markSaid(store, o.key, at));
    const word = wordOf(won, about, !saidWords(store).length);
    if (!word) return false;
    const n = keepWord(store, word, at);
    const words = { say: word.say, buttons: buttons(n, word.more.length > 0), files: [] };
    for (const person of callBy ? pairedPeople(store, callBy) : []) putOut(store, { key: `unasked:${n}:${person}`, door: callBy!, at }, { target: String(person), ...words });
    service.tellUnasked(words, { key: `unasked:${n}`, at });
    return true;
  });
  if (said) onOut?.();
  return said;
}

const buttons = (n: number, hasMore: boolean): Button[] => [
  ...(hasMore ? [{ label: 'More', send: `more of word ${n}` }] : []), { label: 'Later', send: `put off word ${n}` }, { label: 'Stop telling me that', send: `stop word ${n}` },
];
