import { describe, expect, it } from 'vitest';
import { dewPointOf } from '../../../domain/sums/dew-point.ts';
import type { ForecastHour } from '../../../domain/plan/forecast.ts';
import { sunOn } from '../../../domain/plan/sun.ts';
import { coatWindows, USUAL_COAT } from '../../../domain/plan/windows.ts';
import { DateTime } from 'luxon';
import { at, clock, zone } from './tools/jobs.ts';

/** Hours from 06:00 on 4 May: air temperature and humidity; the dew point belongs to them. */
function day(hours: [tempC: number, rh: number, precipMm?: number][]): ForecastHour[] {
  return hours.map(([tempC, rh, precipMm = 0], h) => ({
    startUtc: new Date(at('2026-05-04 06:00') + h * 3_600_000).toISOString(),
    hours: 1, tempC, rh, dewC: dewPointOf(tempC, rh), popPct: null, precipMm, windMs: 2, gustMs: null,
  }));
}
const windows = (forecast: ForecastHour[], more: Partial<Parameters<typeof coatWindows>[0]> = {}) =>
  coatWindows({ weather: { forecast }, zone, from: at('2026-05-04 06:00'), to: at('2026-05-04 06:00') + forecast.length * 3_600_000, coat: { ...USUAL_COAT, cureHours: 2 }, ...more })
    .map(({ from, to, fit, why }) => `${clock(from)!.slice(-5)}-${clock(to)!.slice(-5)} ${fit ? 'fit' : why.join()}`);

describe('windows for a coat', () => {
  // 06 and 07 h too damp, 08-13 h fit, rain at 14 h: with two hours of cure the last start is 11 h.
  it('end two hours before rain when the first cure takes two', () => {
    const forecast = day([[9, 95], [11, 88], [14, 70], [16, 60], [18, 55], [19, 50], [20, 50], [20, 50], [17, 90, 1.5], [16, 80], [16, 75], [16, 70], [16, 70], [16, 70]]);
    expect(windows(forecast)).toEqual(['06:00-07:00 cold', '07:00-08:00 dew', '08:00-12:00 fit', '12:00-15:00 wet', '15:00-18:00 fit', '18:00-20:00 unknown']);
  });

  it('take a heavy casting to be as cold as its night', () => {
    const morning = day([[5, 80], [8, 80], [12, 75], [15, 70], [17, 65], [18, 60], [18, 60], [18, 60], [18, 60], [18, 60], [18, 60]]);
    const coat = { ...USUAL_COAT, minTempC: 0, cureHours: 2 };
    expect(windows(morning, { coat })).toEqual(['06:00-15:00 fit', '15:00-17:00 unknown']);
    // At 08:00 air of 12 °C and 75 % has its dew point at 7.7 °C: iron still at 5 °C would sweat.
    expect(windows(morning, { coat, heavy: true })).toEqual(['06:00-17:00 dew']);
  });

  it('are too short when the work takes longer, and dark after sunset', () => {
    const forecast = day(Array.from({ length: 24 }, (_, h) => (h < 2 ? [18, 50] : [18, 95])));
    expect(windows(forecast, { coat: { ...USUAL_COAT, cureHours: 0 }, workHours: 3 })).toEqual(['06:00-08:00 short', '08:00-06:00 dew']);
    const fair = day(Array.from({ length: 18 }, () => [18, 50]));
    const lit = windows(fair, { coat: { ...USUAL_COAT, cureHours: 0, daylight: true }, site: { latitude: 40.7, longitude: -74 } });
    expect(lit).toEqual(['06:00-19:00 fit', '19:00-00:00 dark']); // sunset 19:55 that day (almanac for New York)
  });

  it("follow the person's word on rain", () => {
    const fair = day(Array.from({ length: 12 }, () => [18, 50]));
    const said = windows(fair, { weather: { forecast: fair, said: [{ date: '2026-05-04', sky: 'rain' }] } });
    expect(said).toEqual(['06:00-18:00 wet']);
  });
});

// doerken.de prints 20 °C for 30 °C and 55 %; a degree table (scribd 39380596, whole degrees cut off) 18, 26, 16, 9, 16, 28.
it.each([[30, 55, 20], [30, 50, 18], [30, 80, 26], [25, 60, 16], [20, 50, 9], [20, 80, 16], [35, 70, 28]])('dew point at %i °C and %i percent is %i in print', (t, rh, printed) => {
  const dew = dewPointOf(t, rh);
  expect(dew - printed).toBeGreaterThan(-0.5);
  expect(dew - printed).toBeLessThan(1.3);
});

// Sun library against an almanac value: London, 21 June 2026, 03:43 and 20:21 UTC.
it('knows sunrise and sunset', () => {
  const [up, down] = sunOn(DateTime.fromISO('2026-06-21', { zone: 'Europe/London' }), { latitude: 51.5, longitude: -0.12 });
  expect(new Date(up).toISOString().slice(11, 16)).toBe('03:43');
  expect(new Date(down).toISOString().slice(11, 16)).toBe('20:21');
  expect(sunOn(DateTime.fromISO('2026-12-21', { zone: 'Europe/Oslo' }), { latitude: 70, longitude: 25 })).toEqual([Infinity, -Infinity]);
});
