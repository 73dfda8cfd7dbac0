import { DateTime } from 'luxon';
import type { FreeHours } from './calendar.ts';

/** A sign that the person was in the shop: a note, or hours said for a day. ms UTC. */
export interface Sign { at: number; hours?: number }

const WEEKS = 8;
/** A day with one note only counts for this much; a day never for more than that. */
const SHORTEST_HOURS = 0.5;
const LONGEST_HOURS = 8;

/**
 * The usual week of a person who never said when there is time: for each weekday the hours of the last eight weeks, shared
 * over all those weekdays, from the usual first sign of such a day. A day's hours are those said, else from the first note
 * to the last. Weekdays with less than a quarter of an hour on average are left out. `undefined` with fewer than six days of signs.
 */
export function learnedHours(signs: readonly Sign[], now: number, zone: string): FreeHours | undefined {
  const since = DateTime.fromMillis(now, { zone }).startOf('day').minus({ weeks: WEEKS });
  const days = new Map<string, { weekday: number; first: number; last: number; said: number }>();
  for (const { at, hours = 0 } of signs) {
    const moment = DateTime.fromMillis(at, { zone });
    if (at > now || moment < since) continue;
    const minute = moment.hour * 60 + moment.minute;
    const day = days.get(moment.toISODate()!) ?? { weekday: moment.weekday, first: minute, last: minute, said: 0 };
    days.set(moment.toISODate()!, { ...day, first: Math.min(day.first, minute), last: Math.max(day.last, minute), said: day.said + hours });
  }
  if (days.size < 6) return undefined;
  const weekly = [1, 2, 3, 4, 5, 6, 7].flatMap((weekday) => {
    const own = [...days.values()].filter((day) => day.weekday === weekday);
    const hours = own.reduce((sum, { first, last, said }) => sum + Math.min(LONGEST_HOURS, Math.max(SHORTEST_HOURS, said || (last - first) / 60)), 0) / WEEKS;
    if (hours < 0.25) return [];
    const firsts = own.map(({ first }) => first).sort((a, b) => a - b);
    const from = Math.min(Math.floor(firsts[firsts.length >> 1]! / 30) * 30, 1440 - Math.ceil(hours * 60));
    return [{ weekday, from: clock(from), to: clock(from + Math.round(hours * 4) * 15) }];
  });
  return weekly.length > 0 ? { zone, weekly, exceptions: [] } : undefined;
}

const clock = (minute: number) => `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
