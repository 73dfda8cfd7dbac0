import { DateTime } from 'luxon';

/** Calendar days as YYYY-MM-DD and moments as ISO with offset; the day of a moment is the day where it was said. */
export const dayOf = (at: string): string => at.slice(0, 10);

export const addDays = (day: string, days: number): string => DateTime.fromISO(day, { zone: 'utc' }).plus({ days }).toISODate() ?? day;

/** A span counted from a moment: spans of hours end at a moment, longer ones on a day. */
export function after(at: string, count: number, unit: 'hours' | 'days' | 'weeks' | 'months'): string {
  const start = DateTime.fromISO(at, { setZone: true });
  const end = start.plus({ [unit]: count });
  return (unit === 'hours' ? end.toISO({ suppressMilliseconds: true }) : end.toISODate()) ?? at;
}

/** Whether a day or moment is past: a day is reached when it begins. */
export function reached(until: string, now: string): boolean {
  return until.length === 10 ? dayOf(now) >= until : Date.parse(now) >= Date.parse(until);
}
