import { expect } from 'vitest';
import { openLog } from '../../../domain/log/keeper.ts';
import { record } from '../../../domain/log/record.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import { keepNote } from '../../../domain/store/notes.ts';
import { openStore } from '../../../domain/store/open.ts';
import { readNote } from '../../../nlp/read.ts';
import type { FetchedWeather } from '../../../domain/answers/forecast.ts';
import type { ForecastHour } from '../../../domain/plan/forecast.ts';
import { keepReply } from '../../../domain/store/replies.ts';
import { BENCH, type Reply } from '../../../bot/incoming.ts';
import { sayDue } from '../../../bot/reminders/reminders.ts';
import { createService, type Words } from '../../../bot/serve.ts';
import { receiver } from '../../../bot/receive.ts';
import { takeTurn } from '../../../bot/turn.ts';
import type { Deps } from '../../../bot/turn/deps.ts';

let notes = 0;
const ms = (at: string): number => Date.parse(at);

/** A shop whose clock is set by hand: facts go in as entries, words as notes, and `look` says what is due at a moment. */
export function reminderShop(zone = 'Europe/Paris', dir = ':memory:', callBy?: 'telegram') {
  const log = openLog(openStore(dir));
  let fetched: FetchedWeather | undefined;
  const deps: Deps = {
    log, zone, read: readNote,
    weather: { fetched: () => fetched, site: () => undefined, isFetched: () => fetched !== undefined, planning: () => (fetched ? { forecast: fetched.blocks } : {}), refresh: async () => undefined, stop: () => {} },
  };
  const service = createService({ deps, receiving: receiver({ store: log.store }), outboxDoors: callBy ? [callBy] : [] });
  const told: Words[] = [];
  const tellUnasked: typeof service.tellUnasked = (words, to) => { told.push(words); service.tellUnasked(words, to); };
  return {
    deps, log, service, told,
    /** Facts of a note at a moment. */
    facts(at: string, ...entries: Entry[]): void {
      log.store.transaction(() => {
        const { note } = keepNote(log.store, { key: `facts:${++notes}`, at, door: 'command', chat: BENCH, text: 'facts', machine: 'Heron' });
        record(log, note, entries.map(e => ({ machine: 'Heron', ...e })));
        keepReply(log.store, note.id, JSON.stringify({ say: 'Kept.', buttons: [], files: [] }));
      });
    },
    say: (at: string, text: string): Reply => log.store.transaction(() => takeTurn({ key: `say:${++notes}`, door: 'page', chat: BENCH, at, text }, deps)),
    /** What is said unasked at a moment, if anything is. */
    look(at: string): string | undefined {
      const before = told.length;
      sayDue({ deps, service: { tellUnasked }, callBy, now: () => ms(at) });
      expect(told.length - before).toBeLessThanOrEqual(1);
      return told[before]?.say;
    },
    weather(hours: readonly ForecastHour[], at = '2026-05-04T05:00:00Z'): void { fetched = { blocks: hours, fetched: at, credit: 'Made up for a test', site: { latitude: 45, longitude: 0 } }; },
    async close(): Promise<void> { await service.close(); log.store.close(); },
  };
}

/** Hours from a moment on: "." dry, "r" rain, one letter an hour; 15 °C over a dew point of 8. */
export const hoursFrom = (startUtc: string, sky: string): ForecastHour[] => [...sky].map((c, i) => ({
  startUtc: new Date(ms(startUtc) + i * 3_600_000).toISOString(), hours: 1, tempC: 15, dewC: 8, rh: 63, popPct: c === 'r' ? 90 : 5, precipMm: c === 'r' ? 1.2 : 0, windMs: 2, gustMs: 4,
}));
