import type { DateTime } from 'luxon';
import { getTimes } from 'suncalc';
import type { Site } from './input.ts';

/** Sunrise and sunset (ms UTC) of a local day; where the sun stays up or down all day, everything or nothing. */
export function sunOn(day: DateTime, { latitude, longitude }: Site): [up: number, down: number] {
  const times = getTimes(day.set({ hour: 12 }).toJSDate(), latitude, longitude);
  if (times.alwaysUp) return [-Infinity, Infinity];
  return times.sunrise && times.sunset ? [times.sunrise.getTime(), times.sunset.getTime()] : [Infinity, -Infinity];
}
