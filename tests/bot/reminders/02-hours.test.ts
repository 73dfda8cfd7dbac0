import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { momentOf, nextQuiet, quietUntil } from '../../../bot/reminders/local-time.ts';
import { chooseMorning, chooseQuiet } from '../../../bot/reminders/settings.ts';
import { reminderShop } from './shop.ts';

/**
 * Wall-clock times against TC39 Temporal (the polyfill), whose disambiguation "compatible" is that of RFC 5545: of two the first, and a
 * skipped one moved on. Clock changes of 2026: Europe/Paris 29 March and 25 October, America/New_York 8 March and 1 November.
 */
const byTemporal = (day: string, time: string, zone: string): number =>
  Temporal.PlainDateTime.from(`${day}T${time}`).toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds;
const ZONES = ['Europe/Paris', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kolkata', 'America/Havana', 'UTC'];
const TURNS = ['2026-03-08', '2026-03-29', '2026-04-05', '2026-10-04', '2026-10-25', '2026-11-01'];

describe('the moment of a wall-clock time', () => {
  test('every half hour of the nights when clocks change', () => {
    for (const zone of ZONES) for (const day of TURNS) for (let m = 0; m < 24 * 60; m += 30) {
      const time = `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`;
      expect([zone, day, time, momentOf(day, time, zone)]).toEqual([zone, day, time, byTemporal(day, time, zone)]);
    }
  });
  test('any day and time', () => fc.assert(fc.property(fc.constantFrom(...ZONES), fc.integer({ min: 0, max: 3 * 365 }), fc.integer({ min: 0, max: 1439 }), (zone, d, m) => {
    const day = new Date(Date.UTC(2025, 0, 1 + d)).toISOString().slice(0, 10);
    const time = `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`;
    expect(momentOf(day, time, zone)).toBe(byTemporal(day, time, zone));
  })));
});

describe('quiet hours', () => {
  const night = { from: '21:00', to: '07:00' };
  const until = (at: string, quiet = night, zone = 'Europe/Paris') => { const t = quietUntil(Date.parse(at), quiet, zone); return t && new Date(t).toISOString(); };
  test('run past midnight and end to the minute', () => {
    expect(until('2026-05-06T20:59:59+02:00')).toBeUndefined();
    expect(until('2026-05-06T21:00:00+02:00')).toBe('2026-05-07T05:00:00.000Z');
    expect(until('2026-05-07T06:59:59+02:00')).toBe('2026-05-07T05:00:00.000Z');
    expect(until('2026-05-07T07:00:00+02:00')).toBeUndefined();
    expect(until('2026-05-07T13:00:00+02:00', { from: '12:30', to: '14:00' })).toBe('2026-05-07T12:00:00.000Z');
  });
  test('are an hour shorter in spring and longer in autumn', () => {
    const length = (evening: string, zone: string) => { const [from, to] = nextQuiet(Date.parse(evening), night, zone)!; return (to - from) / 3_600_000; };
    expect(length('2026-03-28T18:00:00+01:00', 'Europe/Paris')).toBe(9);
    expect(length('2026-10-24T18:00:00+02:00', 'Europe/Paris')).toBe(11);
    expect(length('2026-03-07T18:00:00-05:00', 'America/New_York')).toBe(9);
    expect(length('2026-10-31T18:00:00-04:00', 'America/New_York')).toBe(11);
  });
  test('hold back what falls due in them, and it is said when they end', () => {
    const s = reminderShop();
    chooseMorning(s.log.store, undefined);
    chooseQuiet(s.log.store, { from: '21:00', to: '06:30' });
    s.facts('2026-05-05T20:00:00+02:00', { kind: 'wait', part: 'fuel tank', after: 3, unit: 'hours' });
    for (const at of ['2026-05-05T23:00:00+02:00', '2026-05-06T03:00:00+02:00', '2026-05-06T06:29:00+02:00']) expect(s.look(at)).toBeUndefined();
    expect(s.look('2026-05-06T06:30:00+02:00')).toContain('fuel tank');
  });
  test('a morning word chosen inside them is said at its hour, and nothing else with it', () => {
    const s = reminderShop();
    chooseMorning(s.log.store, '06:00');
    s.facts('2026-05-05T20:00:00+02:00', { kind: 'job', do: 'rebuild', part: 'magneto' }, { kind: 'recheck', part: 'belt', do: 'tighten', due: '2026-05-06' });
    const said = s.look('2026-05-06T06:00:00+02:00');
    expect(said).toMatch(/^Next: /);
    expect(said).not.toContain('Due:');
    expect(s.look('2026-05-06T07:00:00+02:00')).toContain('Due: tighten the belt');
  });
});

/** Looks every ten minutes of the real time between two moments, as the program does, and gives the moments of the morning words. */
async function morningsBetween(zone: string, morning: string, from: string, to: string): Promise<string[]> {
  const s = reminderShop(zone);
  chooseMorning(s.log.store, morning);
  chooseQuiet(s.log.store, undefined);
  s.facts(new Date(Date.parse(from) - 3_600_000).toISOString().replace('.000Z', '+00:00'), { kind: 'job', do: 'rebuild', part: 'magneto' });
  const found: string[] = [];
  for (let at = Date.parse(from); at < Date.parse(to); at += 600_000) if (s.look(new Date(at).toISOString())) found.push(new Date(at).toISOString());
  await s.close();
  return found;
}

describe('a morning word on the nights when clocks change', () => {
  test.each([
    // Skipped hour: 02:30 is shown as 03:30 (01:30 UTC in Paris, 07:30 UTC in New York).
    ['Europe/Paris', '2026-03-28T23:00:00Z', '2026-03-29T12:00:00Z', ['2026-03-29T01:30:00.000Z']],
    ['America/New_York', '2026-03-08T05:00:00Z', '2026-03-08T18:00:00Z', ['2026-03-08T07:30:00.000Z']],
    // Double hour: at the first 02:30 in Paris (00:30 UTC) and once; in New York 02:30 is shown once (07:30 UTC), 01:30 twice.
    ['Europe/Paris', '2026-10-24T22:00:00Z', '2026-10-25T12:00:00Z', ['2026-10-25T00:30:00.000Z']],
    ['America/New_York', '2026-11-01T04:00:00Z', '2026-11-01T18:00:00Z', ['2026-11-01T07:30:00.000Z']],
  ])('at half past two in %s from %s', async (zone, from, to, expected) => expect(await morningsBetween(zone, '02:30', from, to)).toEqual(expected));
  test('at half past one in New York, shown twice, it is said at the first', async () =>
    expect(await morningsBetween('America/New_York', '01:30', '2026-11-01T04:00:00Z', '2026-11-01T18:00:00Z')).toEqual(['2026-11-01T05:30:00.000Z']));
});
