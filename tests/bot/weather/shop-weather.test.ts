import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { FORECAST, keepFresh, PLACE, shopWeather } from '../../../bot/weather/shop-weather.ts';
import { openStore } from '../../../domain/store/open.ts';
import { writeSetting } from '../../../domain/store/settings.ts';

/** A service that answers with the documented shape and one hour of our own; no service is called. */
const meteo = {
  hourly_units: { temperature_2m: '°C', dew_point_2m: '°C', relative_humidity_2m: '%', precipitation: 'mm', wind_speed_10m: 'm/s' },
  hourly: { time: ['2026-05-01T06:00'], temperature_2m: [9], dew_point_2m: [4], relative_humidity_2m: [70], precipitation_probability: [10], precipitation: [0], wind_speed_10m: [2], wind_gusts_10m: [5] },
};
function shop(answer: () => Response | Promise<Response> = () => new Response(JSON.stringify(meteo)), config?: Parameters<typeof shopWeather>[0]['config']) {
  const store = openStore(':memory:');
  const calls: string[] = [];
  let now = Date.parse('2026-05-01T05:00:00Z');
  const dir = mkdtempSync(join(tmpdir(), 'weather-'));
  const fetch = (async (url: URL, init: RequestInit) => { calls.push(String(url)); return Promise.race([answer(), new Promise<Response>((_, no) => init.signal?.addEventListener('abort', () => no(init.signal!.reason)))]); }) as unknown as typeof globalThis.fetch;
  const weather = shopWeather({ store, zone: 'Europe/Paris', dir, config, fetch, now: () => now });
  return { store, calls, weather, pass: (ms: number) => { now += ms; }, now: () => now };
}

test('nothing leaves the computer until a place is said and a forecast is wanted', async () => {
  const s = shop();
  await s.weather.refresh();
  writeSetting(s.store, PLACE, '52.35,-7.7');
  await s.weather.refresh();
  expect(s.calls).toEqual([]);
  expect(s.weather.planning()).toEqual({ site: { latitude: 52.35, longitude: -7.7 } });
  writeSetting(s.store, FORECAST, 'on');
  await s.weather.refresh();
  expect(s.calls).toHaveLength(1);
  expect(s.weather.fetched()).toMatchObject({ fetched: '2026-05-01T07:00:00+02:00', credit: expect.stringContaining('Open-Meteo'), blocks: [{ tempC: 9 }] });
  expect(s.weather.planning().forecast).toHaveLength(1);
  writeSetting(s.store, FORECAST, 'off');
  expect(s.weather.fetched()).toBeUndefined();
  s.pass(24 * 3_600_000);
  await s.weather.refresh();
  expect(s.calls).toHaveLength(1);
});

test('the environment opts in too, and the words about the place win over it', async () => {
  const s = shop(undefined, { service: 'open-meteo', latitude: 48.12345, longitude: 2 });
  await s.weather.refresh();
  expect(s.calls[0]).toContain('latitude=48.12&longitude=2');
  writeSetting(s.store, PLACE, '52.35,-7.7');
  expect(s.weather.fetched()).toBeUndefined();
  await s.weather.refresh();
  expect(s.calls[1]).toContain('latitude=52.35&longitude=-7.7');
});

test('the loop says its trouble once, lets a failing service be, and ends while a request hangs', async () => {
  let answers = 0;
  const s = shop(() => { answers++; return new Response('{}', { status: 500 }); }, { service: 'open-meteo', latitude: 48, longitude: 2 });
  const said: string[] = [];
  const loop = keepFresh(s.weather, line => said.push(line), s.now, 5);
  await loop.idle();
  s.pass(60_000);
  await loop.idle();
  expect(answers).toBe(1);
  s.pass(10 * 60_000);
  await loop.idle();
  expect(answers).toBe(2);
  expect(said).toEqual(['The weather service refused (500).']);
  await loop.close();
  const hanging = shop(() => new Promise<Response>(() => {}), { service: 'open-meteo', latitude: 48, longitude: 2 });
  await keepFresh(hanging.weather, () => {}, hanging.now, 5).close();
});
