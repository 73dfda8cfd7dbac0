import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { metNorway } from '../../../bot/weather/met-norway.ts';
import { openMeteo } from '../../../bot/weather/open-meteo.ts';
import { openStation } from '../../../bot/weather/station.ts';

/** Shapes as the two services document them, with figures of our own; no service is called. */
const HOURS = ['2026-05-01T06:00', '2026-05-01T07:00', '2026-05-01T08:00'];
const meteo = (units = 'mm') => ({
  hourly_units: { temperature_2m: '°C', dew_point_2m: '°C', relative_humidity_2m: '%', precipitation: units, wind_speed_10m: 'm/s' },
  hourly: {
    time: HOURS, temperature_2m: [9.5, 11, null], dew_point_2m: [4, 4.5, 5], relative_humidity_2m: [69, 64, 60], precipitation_probability: [10, null, 20],
    precipitation: [0, 0.3, 0], wind_speed_10m: [2, 3, 4], wind_gusts_10m: [5, null, 7],
  },
});
const met = {
  properties: {
    meta: { units: { air_temperature: 'celsius', dew_point_temperature: 'celsius', relative_humidity: '%', precipitation_amount: 'mm', wind_speed: 'm/s' } },
    timeseries: [
      { time: '2026-05-01T06:00:00Z', data: { instant: { details: { air_temperature: 9, dew_point_temperature: 4, relative_humidity: 70, wind_speed: 2 } }, next_1_hours: { details: { precipitation_amount: 0.2 } } } },
      { time: '2026-05-04T00:00:00Z', data: { instant: { details: { air_temperature: 7, dew_point_temperature: 5, relative_humidity: 88, wind_speed: 6 } }, next_6_hours: { details: { precipitation_amount: 3, probability_of_precipitation: 80 } } } },
      { time: '2026-05-10T00:00:00Z', data: { instant: { details: { air_temperature: 7, dew_point_temperature: 5, relative_humidity: 88, wind_speed: 6 } } } },
    ],
  },
};
const answering = (body: unknown, init: ResponseInit = {}) => {
  const calls: { url: URL; headers: Headers }[] = [];
  const fetch = (async (url: URL, options: RequestInit) => { calls.push({ url, headers: new Headers(options.headers) }); return new Response(init.status === 304 ? null : JSON.stringify(body), init); }) as unknown as typeof globalThis.fetch;
  return { fetch, calls };
};
const path = () => join(mkdtempSync(join(tmpdir(), 'forecast-')), 'forecast.json');
const spot = { latitude: 52.123456, longitude: -7.98765 };

describe('Open-Meteo', () => {
  test('gives hours in UTC and leaves out an hour that lacks a figure', async () => {
    const { fetch, calls } = answering(meteo());
    const station = openStation({ provider: openMeteo, spot, path: path(), fetch });
    expect(await station.refresh()).toBeUndefined();
    expect(station.latest()?.blocks).toEqual([
      { startUtc: '2026-05-01T06:00:00Z', hours: 1, tempC: 9.5, dewC: 4, rh: 69, popPct: 10, precipMm: 0, windMs: 2, gustMs: 5 },
      { startUtc: '2026-05-01T07:00:00Z', hours: 1, tempC: 11, dewC: 4.5, rh: 64, popPct: null, precipMm: 0.3, windMs: 3, gustMs: null },
    ]);
    expect(calls[0]!.url.searchParams.get('latitude')).toBe('52.12');
    expect(calls[0]!.url.searchParams.get('longitude')).toBe('-7.99');
  });
  test('a unit it did not ask for is refused', async () => {
    const station = openStation({ provider: openMeteo, spot, path: path(), fetch: answering(meteo('inch')).fetch });
    expect(await station.refresh()).toContain('form I do not know');
    expect(station.latest()).toBeUndefined();
  });
});

describe('MET Norway', () => {
  test('spreads six-hour rain as one block, names itself, and asks again only for what is newer', async () => {
    let now = Date.parse('2026-05-01T05:00:00Z');
    const first = answering(met, { headers: { expires: 'Fri, 01 May 2026 05:30:00 GMT', date: 'Fri, 01 May 2026 05:00:00 GMT', 'last-modified': 'Fri, 01 May 2026 04:50:00 GMT' } });
    const file = path();
    const station = openStation({ provider: metNorway('shop@example.org'), spot, path: file, fetch: first.fetch, now: () => now });
    await station.refresh();
    await station.refresh();
    expect(first.calls).toHaveLength(1);
    expect(first.calls[0]!.headers.get('user-agent')).toContain('shop@example.org');
    expect(station.latest()?.blocks.map(b => [b.hours, b.precipMm, b.popPct])).toEqual([[1, 0.2, null], [6, 3, 80]]);
    now += 31 * 60_000;
    const second = answering(undefined, { status: 304 });
    const later = openStation({ provider: metNorway(undefined), spot, path: file, fetch: second.fetch, now: () => now });
    await later.refresh();
    expect(second.calls[0]!.headers.get('if-modified-since')).toBe('Fri, 01 May 2026 04:50:00 GMT');
    expect(later.latest()?.blocks).toHaveLength(2);
  });
});

test('trouble keeps the last good answer and says a sentence', async () => {
  let now = 1;
  const file = path();
  await openStation({ provider: openMeteo, spot, path: file, fetch: answering(meteo()).fetch, now: () => now }).refresh();
  now += 24 * 3_600_000;
  for (const status of [429, 500]) {
    const station = openStation({ provider: openMeteo, spot, path: file, fetch: answering({}, { status }).fetch, now: () => now });
    expect(await station.refresh()).toMatch(/weather service/);
    expect(station.latest()?.fetched).toBe(1);
  }
  const dead = openStation({ provider: openMeteo, spot, path: file, fetch: () => Promise.reject(new TypeError('no network')), now: () => now });
  expect(await dead.refresh()).toBe('The weather service did not answer.');
  expect(dead.latest()?.blocks).toHaveLength(2);
});

test.each([['half a file', (whole: string) => whole.slice(0, whole.length / 2)], ['another shape', () => '{"provider":"open-meteo","blocks":"none"}'], ['nothing', () => '']])('%s on the disk is as good as none, and is fetched anew', async (_, spoil) => {
  const file = path();
  await openStation({ provider: openMeteo, spot, path: file, fetch: answering(meteo()).fetch }).refresh();
  writeFileSync(file, spoil(readFileSync(file, 'utf8')));
  const again = openStation({ provider: openMeteo, spot, path: file, fetch: answering(meteo()).fetch });
  expect(again.latest()).toBeUndefined();
  await again.refresh();
  expect(again.latest()?.blocks).toHaveLength(2);
});

test.each([
  ['a unit of MET Norway that is not known', metNorway('shop@example.org'), { properties: { ...met.properties, meta: { units: { ...met.properties.meta.units, air_temperature: 'fahrenheit' } } } }],
  ['a shape of MET Norway that is not known', metNorway('shop@example.org'), { properties: { timeseries: [{ time: 5 }] } }],
  ['columns of Open-Meteo with words in them', openMeteo, { ...meteo(), hourly: { ...meteo().hourly, temperature_2m: ['warm', 11, 12] } }],
  ['an answer that is no JSON', openMeteo, undefined],
])('%s is refused, and the last good forecast stays', async (_, provider, body) => {
  let now = 1;
  const file = path();
  await openStation({ provider, spot, path: file, fetch: answering(provider.name === openMeteo.name ? meteo() : met).fetch, now: () => now }).refresh();
  now += 24 * 3_600_000;
  const fetch = body === undefined ? (async () => new Response('<html>')) as unknown as typeof globalThis.fetch : answering(body).fetch;
  const station = openStation({ provider, spot, path: file, fetch, now: () => now });
  expect(await station.refresh()).toContain('form I do not know');
  expect(station.latest()).toMatchObject({ fetched: 1, blocks: [expect.anything(), expect.anything()] });
});
