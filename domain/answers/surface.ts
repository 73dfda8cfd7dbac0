import { DateTime } from 'luxon';
import type { ForecastWindow, SurfaceMeasured } from '../model/answer.ts';
import { nameKey } from '../model/names.ts';
import type { Ref } from '../model/stored.ts';
import type { ReadingNow, Shop } from '../log/shop.ts';
import { dewPointOf } from '../sums/dew-point.ts';
import { forecastAt } from '../plan/forecast.ts';
import { USUAL_COAT } from '../plan/windows.ts';
import type { Now } from './given.ts';
import type { FetchedWeather } from './forecast.ts';
import { degrees, rise, temperature, type WeatherUnits } from './weather-units.ts';

interface Measured { of: string; reading: ReadingNow }

const SURFACE = /\b(surface|steel|metal|panel|sheet metal|casting|skin)\b/;

/** A surface temperature read off today, with the dew point as measured today too, or as the air measured today has it, else as the forecast has it for that moment. */
export function surfaceToday(shop: Shop, work: Ref, now: Now, fetched?: FetchedWeather): SurfaceMeasured | undefined {
  const day = (at: string): string => DateTime.fromISO(at).setZone(now.zone).toISODate()!;
  const today: Measured[] = [...shop.machines.values()].flatMap(m => [...m.things.values()].flatMap(t => [...t.asLeft.values()].map(reading => ({ of: t.key, reading }))))
    .filter(({ reading }) => day(reading.at) === day(now.at));
  const latest = (ours: (m: Measured) => boolean): ReadingNow | undefined => today.filter(m => celsius(m.reading) !== undefined && ours(m)).map(m => m.reading).sort((a, b) => a.id - b.id).at(-1);
  const surface = latest(m => isSurface(m, work));
  if (!surface) return undefined;
  const read = latest(m => /\bdew/.test(`${m.of} ${m.reading.what}`.toLowerCase()));
  const air = latest(m => m.of === 'air' && m.reading.what === 'temperature');
  const humidity = today.filter(m => m.of === 'air' && m.reading.what === 'humidity').map(m => m.reading).sort((a, b) => a.id - b.id).at(-1);
  const ofAir = air && humidity && humidity.id > (read?.id ?? 0) ? dewPointOf(celsius(air)!, humidity.value) : undefined;
  const dewC = ofAir ?? (read ? celsius(read)! : undefined) ?? forecastAt(fetched?.blocks ?? [])(Date.parse(surface.at))?.dewC;
  const surfaceC = round(celsius(surface)!);
  if (dewC === undefined) return { surfaceC, at: surface.at };
  const margin = round(surfaceC - dewC);
  return { surfaceC, dewC: round(dewC), margin, fit: margin >= USUAL_COAT.dewMargin! && surfaceC >= USUAL_COAT.minTempC!, at: surface.at };
}

/** The surface of the part in question, or one that was named without a part. */
function isSurface({ of, reading }: Measured, work: Ref): boolean {
  const words = `${of} ${reading.what}`.toLowerCase();
  if (/\bdew\b|\bair\b/.test(words)) return false;
  const bare = nameKey(of.replace(SURFACE, ' ').replace(/\btemp(?:erature)?\b/, ' ').trim());
  if (work.key && (of === work.key || bare === work.key)) return SURFACE.test(words) || /temp/.test(words);
  return SURFACE.test(words) && (bare === '' || work.key === '');
}

const celsius = ({ value, unit }: ReadingNow): number | undefined => (unit === '°C' ? value : unit === '°F' ? (value - 32) / 1.8 : undefined);
const round = (n: number): number => Math.round(n * 10) / 10;

/** A measurement beats the forecast for the hours at hand: a surface too near the dew point closes the window that is open now. */
export function withSurface(windows: readonly ForecastWindow[], measured: SurfaceMeasured | undefined, now: Now, units: WeatherUnits): ForecastWindow[] {
  if (measured?.fit !== false) return [...windows];
  const at = Date.parse(now.at);
  const why = measured.margin! < USUAL_COAT.dewMargin! ? `surface measured only ${rise(measured.margin!, units)} over the dew point` : `surface measured at ${temperature(measured.surfaceC, units)} (wants ${degrees(USUAL_COAT.minTempC!, units)})`;
  return windows.map(w => (w.fit && w.from.length > 10 && Date.parse(w.from) <= at && at < Date.parse(w.to) ? { ...w, fit: false, why: [why] } : w));
}
