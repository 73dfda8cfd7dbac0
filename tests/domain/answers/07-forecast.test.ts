import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import { forecast, type FetchedWeather } from '../../../domain/answers/forecast.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import type { AskOf } from '../../../domain/model/ask.ts';
import type { ForecastHour } from '../../../domain/plan/forecast.ts';
import { BenchShop } from '../log/tools/shop.ts';

psychrolib.SetUnitSystem(psychrolib.SI);
const ZONE = 'Europe/Paris';
/** Monday 4 May 2026, 08:00 in Paris (06:00 UTC); the sun is up there from about 06:20 to 21:10. */
const NOW = { at: '2026-05-04T08:00:00+02:00', zone: ZONE };
const HOUR = 3_600_000;
const midnight = Date.parse('2026-05-03T22:00:00Z');

interface Air { temp?: number; rh?: number; mm?: number; pop?: number | null; wind?: number }
/** Hours from midnight of Monday on, made up; the dew point by psychrolib (ASHRAE), as a service would send it. */
const hours = (count: number, air: (hour: number) => Air): FetchedWeather => ({
  fetched: '2026-05-04T06:00:00+02:00', credit: 'Made up for a test', site: { latitude: 48.85, longitude: 2.35 },
  blocks: Array.from({ length: count }, (_, i): ForecastHour => {
    const { temp = 16, rh = 60, mm = 0, pop = 5, wind = 2 } = air(i);
    return { startUtc: new Date(midnight + i * HOUR).toISOString(), hours: 1, tempC: temp, dewC: psychrolib.GetTDewPointFromRelHum(temp, rh / 100), rh, popPct: pop, precipMm: mm, windMs: wind, gustMs: null };
  }),
});
const shopOf = (...entries: Entry[]) => { const shop = new BenchShop(); shop.say(entries, { at: NOW.at }); return shop; };
const asked = (question: Omit<AskOf<'forecast'>, 'kind'>, weather?: FetchedWeather, shop = shopOf()) =>
  forecast(shop.log.shop, { kind: 'forecast', ...question }, NOW, { past: shop.log.past, machine: 'Heron' }, weather);
const TODAY = { from: '2026-05-04', to: '2026-05-04' };
const spans = (a: ReturnType<typeof asked>) => a.windows.map(w => `${w.from.slice(11, 16)}–${w.to.slice(11, 16)} ${w.fit ? 'fit' : w.why.join()}`);

describe('a coat', () => {
  test('may be laid on while the surface stays 3 °C over the dew point, dry and warm through its first six hours', () => {
    const a = asked({ for: 'paint hood', ...TODAY }, hours(48, h => (h >= 18 && h < 21 ? { mm: 1.5, rh: 90, temp: 14 } : {})));
    expect(spans(a)).toEqual(['08:00–12:00 fit', '12:00–21:00 rain, 1.5 mm an hour from 18:00, within its first 6 h']);
    expect(a.windows[0]!.why).toEqual(['dry', '16 °C', `at least ${Number((16 - psychrolib.GetTDewPointFromRelHum(16, 0.6)).toFixed(1))} °C over the dew point`]);
    expect(a).toMatchObject({ coat: true, basis: 'Made up for a test', age: 'fetched 2 h ago', caution: expect.stringContaining('Spray paint') });
  });
  test.each([
    [{ temp: 8 }, 'too cold, 8 °C (wants 10)'], [{ rh: 84 }, `only ${(16 - psychrolib.GetTDewPointFromRelHum(16, 0.84)).toFixed(1)} °C over the dew point`], [{ wind: 9 }, 'too windy, 9 m/s'], [{ pop: 70 }, 'rain likely, 70 %'],
  ] as const)('is held up by %j', (air, why) => {
    const a = asked({ for: 'prime the frame', ...TODAY }, hours(48, () => air));
    expect(a.windows.every(w => !w.fit)).toBe(true);
    expect(a.windows[0]!.why.join()).toContain(why);
  });
  test('hour by hour agrees with the rule worked out from psychrolib', () => fc.assert(fc.property(
    fc.array(fc.record({ temp: fc.integer({ min: 4, max: 30 }), rh: fc.integer({ min: 40, max: 98 }), mm: fc.constantFrom(0, 0, 0, 0.5), wind: fc.integer({ min: 0, max: 9 }) }), { minLength: 30, maxLength: 30 }), air => {
      const weather = hours(30, h => air[h]!);
      const fit = (h: number): boolean => Array.from({ length: 7 }, (_, k) => air[h + k]!).every(a =>
        a.mm === 0 && a.temp >= 10 && a.rh < 85 && a.wind <= 7 && a.temp - psychrolib.GetTDewPointFromRelHum(a.temp, a.rh / 100) >= 3);
      const a = asked({ for: 'paint hood', ...TODAY }, weather);
      for (let h = 8; h < 20; h++) {
        const at = midnight + h * HOUR;
        const window = a.windows.find(w => Date.parse(w.from) <= at && at < Date.parse(w.to))!;
        expect([h, window.fit]).toEqual([h, fit(h)]);
      }
    }), { numRuns: 60 }));
  test('of heavy iron lags a warming morning', () => {
    const warming = hours(48, h => ({ temp: h < 7 ? 9 : 18, rh: h < 7 ? 80 : 66 }));
    expect(asked({ for: 'paint hood', ...TODAY }, warming).windows[0]!.fit).toBe(true);
    expect(asked({ for: 'paint engine', ...TODAY }, warming).windows[0]!.fit).toBe(false);
  });
});

describe('the person’s own word', () => {
  const rain = hours(48, h => (h >= 12 ? { mm: 1 } : {}));
  test('of a dry day wins over the rain of the service, and the difference is said', () => {
    const a = asked({ ...TODAY }, rain, shopOf({ kind: 'weather', sky: 'dry', ...TODAY }));
    expect(a.windows).toMatchObject([{ fit: true, why: ['you said dry, though the forecast has rain at 12:00', '16 °C'] }]);
    expect(a.basis).toBe('said; Made up for a test');
  });
  test('of rain wins over its dry sky, until the person says otherwise', () => {
    const dry = hours(48, () => ({}));
    const wet: Entry = { kind: 'weather', sky: 'rain', ...TODAY };
    expect(asked({ for: 'paint hood', ...TODAY }, dry, shopOf(wet)).windows.map(w => w.why)).toEqual([['rain, you said']]);
    expect(asked({ for: 'paint hood', ...TODAY }, dry, shopOf(wet, { ...wet, sky: 'dry' })).windows[0]!.fit).toBe(true);
  });
  test('of a day beyond the forecast stands as a day', () => expect(asked({}, rain, shopOf({ kind: 'weather', sky: 'frost', from: '2026-05-08', to: '2026-05-09' })).windows.at(-1)).toEqual({ from: '2026-05-08', to: '2026-05-09', fit: true, why: ['frost'] }));
});

describe('a measured surface', () => {
  const fine = hours(48, () => ({}));
  const reading = (part: string, what: string, value: number, unit: '°C' | '°F'): Entry => ({ kind: 'reading', part, what, value, unit });
  test('too near the dew point closes the window that is open', () => {
    const a = asked({ for: 'paint hood', ...TODAY }, fine, shopOf(reading('hood', 'surface temperature', 14, '°C'), reading('air', 'dew point', 12, '°C')));
    expect(a.measured).toMatchObject({ surfaceC: 14, dewC: 12, margin: 2, fit: false });
    expect(a.windows[0]).toMatchObject({ fit: false, why: ['surface measured only 2 °C over the dew point'] });
  });
  test('in °F, against the dew point of the forecast', () => {
    const a = asked({ for: 'paint hood', ...TODAY }, fine, shopOf(reading('hood surface', 'temperature', 59, '°F')));
    const dew = psychrolib.GetTDewPointFromRelHum(16, 0.6);
    expect(a.measured).toMatchObject({ surfaceC: 15, margin: Math.round((15 - dew) * 10) / 10, fit: true });
    expect(a.windows[0]!.fit).toBe(true);
  });
  test('of another part, or of air, is no answer', () => {
    expect(asked({ for: 'paint hood', ...TODAY }, fine, shopOf(reading('grille', 'surface temperature', 9, '°C'), reading('air', 'temperature', 9, '°C'))).measured).toBeUndefined();
  });
});

test('the sky without a work in mind, and a place that the forecast does not reach', () => {
  expect(spans(asked({ ...TODAY }, hours(24, h => (h >= 15 && h < 17 ? { mm: 2 } : {}))))).toEqual(['08:00–15:00 fit', '15:00–17:00 rain, 2.0 mm an hour', '17:00–00:00 fit']);
  expect(asked({ from: '2026-05-20', to: '2026-05-20' }, hours(24, () => ({})))).toMatchObject({ windows: [], basis: 'Made up for a test' });
});

test('is told in °F, mph and inches to those who measure so, or live where that is usual', () => {
  const weather = hours(48, h => (h >= 18 ? { mm: 2.54 } : { temp: 20, rh: 50, wind: 5 }));
  const told = (shop: BenchShop, zone: string) => forecast(shop.log.shop, { kind: 'forecast', from: '2026-05-04', to: '2026-05-04' }, { ...NOW, zone }, { past: shop.log.past }, weather);
  expect(told(shopOf({ kind: 'reading', part: 'oil', what: 'temperature', value: 180, unit: '°F' }), ZONE)).toMatchObject({ units: 'imperial', windows: [{ why: ['dry', '68 °F', 'wind up to 11 mph'] }, { why: ['rain, 0.10 in an hour'] }] });
  expect(told(shopOf(), 'America/Chicago').windows[0]!.why[1]).toBe('68 °F');
  expect(told(shopOf({ kind: 'reading', part: 'oil', what: 'temperature', value: 80, unit: '°C' }), 'America/Chicago').units).toBeUndefined();
});
