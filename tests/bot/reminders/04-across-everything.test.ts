import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import { openReminders } from '../../../bot/reminders/reminders.ts';
import { chooseMorning } from '../../../bot/reminders/settings.ts';
import { hoursFrom, reminderShop } from './shop.ts';

/**
 * The ten words unasked, each through the scheduler that the program runs: over a night on which the clocks change, with quiet hours from
 * nine to seven, the program stopped and started anew every few looks. Said once, and at the hour. Clock changes of 2026: Europe/Paris
 * 29 March (02:00 becomes 03:00) and 25 October (03:00 becomes 02:00), both Sundays.
 */
const ZONE = 'Europe/Paris';
const LOOKS_A_START = 5;
const STEP_MIN = 30;

/** `day`: the Sunday; hours are those of its own wall clock, of the day before with a minus, of the day after with a plus. */
interface Word {
  name: string;
  /** From the Saturday at 14:00 on. */
  facts: (day: string) => { at: string; entries: Entry[] }[];
  morning?: string;
  /** Hours of rain from the Saturday 14:00 on, one letter an hour. */
  sky?: (day: string) => string;
  says: RegExp;
  /** When it is said, on the wall clock; on the two Sundays. */
  spring: string;
  autumn?: string;
}

const plus = (day: string, days: number): string => DateTime.fromISO(day).plus({ days }).toISODate()!;
const local = (day: string, time: string): string => DateTime.fromISO(`${day}T${time}`, { zone: ZONE }).toISO({ suppressMilliseconds: true })!;
const jobs: Entry[] = [{ kind: 'job', do: 'rebuild', part: 'magneto' }, { kind: 'job', do: 'blast', part: 'rear wheel' }];
/** Dry but from one hour of the wall clock to another, both given as ISO with offset. */
const rainBetween = (day: string, from: string, to: string): string => {
  const begin = Date.parse(local(plus(day, -1), '14:00'));
  return Array.from({ length: 60 }, (_, h) => (begin + h * 3_600_000 >= Date.parse(from) && begin + h * 3_600_000 < Date.parse(to) ? 'r' : '.')).join('');
};

const WORDS: Word[] = [
  { name: 'the morning word', morning: '06:30', facts: day => [{ at: local(plus(day, -1), '20:00'), entries: jobs }], says: /^Next: /, spring: '06:30' },
  { name: 'the morning of wet hours', morning: '06:30', facts: day => [{ at: local(plus(day, -1), '20:00'), entries: jobs }], sky: day => rainBetween(day, local(day, '09:00'), local(day, '18:00')),
    says: /^Rain from 09:00 to 18:00, in your hours\. Indoors: /, spring: '06:30' },
  { name: 'the morning of a dry spell that ends', morning: '06:30', facts: day => [{ at: local(plus(day, -1), '20:00'), entries: jobs }], sky: day => rainBetween(day, local(plus(day, 1), '01:00'), local(plus(day, 1), '23:00')),
    says: /^Dry today, rain from tomorrow 01:00\. Outdoors first: /, spring: '06:30' },
  { name: 'rain in the night', facts: day => [{ at: local(plus(day, -1), '14:00'), entries: [{ kind: 'stow', part: 'fender', where: 'out in the yard' }] }], sky: day => rainBetween(day, local(day, '04:00'), local(day, '06:00')),
    says: /Rain from tomorrow 04:00: the fender is out in the yard/, spring: '-18:00' },
  { name: 'a recheck by its date', facts: day => [{ at: local(plus(day, -1), '14:00'), entries: [{ kind: 'recheck', part: 'head bolts', do: 'retorque', due: day }] }], says: /Due: retorque the head bolts/, spring: '07:00' },
  { name: 'a recheck by running hours read off in the night', facts: day => [
    { at: local(plus(day, -1), '14:00'), entries: [{ kind: 'reading', part: 'Heron', what: 'running time', value: 100, unit: 'h' }, { kind: 'recheck', part: 'belt', do: 'tighten', after: 2, unit: 'hours' }] },
    { at: local(plus(day, -1), '22:00'), entries: [{ kind: 'reading', part: 'Heron', what: 'running time', value: 102.5, unit: 'h' }] },
  ], says: /Due: tighten the belt/, spring: '07:00' },
  { name: 'an order that is late', facts: day => [{ at: local(plus(day, -1), '14:00'), entries: [{ kind: 'order', item: 'gasket', expected: plus(day, -1) }] }], says: /Gasket was due yesterday/, spring: '07:00' },
  // Twelve hours are twelve hours: on the short night they end an hour later by the clock, on the long one an hour sooner, within the quiet till it ends.
  { name: 'a cure that is over', facts: day => [{ at: local(plus(day, -1), '20:00'), entries: [{ kind: 'wait', part: 'fuel tank', after: 12, unit: 'hours' }] }], says: /The fuel tank was left alone as long as you said/, spring: '09:00', autumn: '07:00' },
  { name: 'a part due back', facts: day => [{ at: local(plus(day, -1), '14:00'), entries: [{ kind: 'out', part: 'block', where: 'the machinist', until: day }] }], says: /The block is due back/, spring: '07:00' },
  { name: 'help tomorrow', facts: day => [{ at: local(plus(day, -1), '14:00'), entries: [{ kind: 'hands', when: plus(day, 1), for: 'lift engine' }] }], says: /Help tomorrow: lift engine/, spring: '07:00' },
  { name: 'only temporary for over three weeks', facts: day => [{ at: local(plus(day, -22), '10:00'), entries: [{ kind: 'fit', part: 'seat', state: 'temporary' }] }], says: /The seat has been only on for now/, spring: '07:00' },
];

/** Runs the program from the Saturday 14:00 for two days, and gives what it said and when (on the wall clock of the shop). */
async function runOver(day: string, { facts, morning, sky }: Word): Promise<{ at: string; say: string }[]> {
  const dir = mkdtempSync(join(tmpdir(), 'words-'));
  const said: { at: string; say: string }[] = [];
  const untold = facts(day).map(f => ({ ...f, ms: Date.parse(f.at) }));
  const weather = sky && hoursFrom(new Date(local(plus(day, -1), '14:00')).toISOString(), sky(day));
  const [begin, end] = [Date.parse(local(plus(day, -1), '14:00')), Date.parse(local(plus(day, 1), '06:00'))];
  let now = begin;
  while (now < end) {
    const shop = reminderShop(ZONE, dir);
    chooseMorning(shop.log.store, morning);
    if (weather) shop.weather(weather, new Date(begin).toISOString());
    const tellUnasked: typeof shop.service.tellUnasked = (words, to) => {
      said.push({ at: DateTime.fromMillis(now, { zone: ZONE }).toISO({ suppressMilliseconds: true, suppressSeconds: true })!, say: words.say });
      shop.service.tellUnasked(words, to);
    };
    for (const f of untold.splice(0, untold.filter(u => u.ms <= now).length)) shop.facts(f.at, ...f.entries);
    const loop = openReminders({ deps: shop.deps, service: { tellUnasked }, now: () => now, everyMs: 3_600_000 });
    for (let looks = 0; looks < LOOKS_A_START && now < end; looks++, now += STEP_MIN * 60_000) {
      for (const f of untold.splice(0, untold.filter(u => u.ms <= now).length)) shop.facts(f.at, ...f.entries);
      await loop.idle();
    }
    await loop.close();
    await shop.close();
  }
  rmSync(dir, { recursive: true, force: true });
  return said;
}

describe.each([['spring', '2026-03-29'], ['autumn', '2026-10-25']] as const)('over the night when the clocks change in %s', (season, day) => {
  test.each(WORDS.map(w => [w.name, w] as const))('%s is said once, at its hour, whatever the program is stopped by', async (_, word) => {
    const time = (season === 'autumn' && word.autumn) || word.spring;
    const expected = time.startsWith('-') ? `${plus(day, -1)}T${time.slice(1)}` : `${day}T${time}`;
    const said = await runOver(day, word);
    expect(said.map(s => s.at.slice(0, 16))).toEqual([expected]);
    expect(said[0]!.say).toMatch(word.says);
  }, 60_000);
});
