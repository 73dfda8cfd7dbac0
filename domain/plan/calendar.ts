import { DateTime } from 'luxon';

/** A stretch of a day on the wall clock, `HH:MM`; `to` at or before `from` runs past midnight, `24:00` is its end. */
export interface Stretch { from: string; to: string }

/** The person's hours for the shop. Weekdays are 1 (Monday) to 7 (Sunday), as in ISO 8601. */
export interface FreeHours {
  /** IANA time zone of the shop. */
  zone: string;
  weekly: readonly (Stretch & { weekday: number })[];
  /** These dates (YYYY-MM-DD) have these stretches in place of the weekly ones; none means away. */
  exceptions: readonly { date: string; stretches: readonly Stretch[] }[];
}

/** Help that will be there; without `from` and `to` the whole day. */
export interface HelpDay { date: string; from?: string; to?: string }

export const SLOT_MINUTES = 30;

/** Free time cut into half hours, in order. Times are whole minutes since `origin`; `end[k] - start[k]` may be shorter at an end. */
export interface Slots {
  /** ms UTC of minute 0: the moment of planning. */
  origin: number;
  count: number;
  start: Int32Array;
  end: Int32Array;
  /** Which local day, counted from the day of the origin. */
  day: Int32Array;
  /** The dates of those days. */
  dates: readonly string[];
  /** Minute at which each local day begins. */
  dayStart: Int32Array;
}

/** A wall-clock time of a local day as ms UTC. A time that the clock skips is moved on by the skip, as the clock does. */
export function atWallClock(day: DateTime, time: string): number {
  const [hour, minute] = time.split(':').map(Number);
  if (hour === 24) return day.startOf('day').plus({ days: 1 }).toMillis();
  return day.set({ hour: hour!, minute: minute ?? 0, second: 0, millisecond: 0 }).toMillis();
}

/** From when to when on that local day, ms UTC. */
export function stretchOn(day: DateTime, { from, to }: Stretch): [from: number, to: number] {
  const start = atWallClock(day, from);
  const end = atWallClock(day, to);
  return [start, end > start ? end : atWallClock(day.plus({ days: 1 }), to)];
}

/**
 * The free half hours of the `days` local days from `now` on; what is left of a stretch already begun counts.
 * Zone-true: an evening is as long as the clock makes it, also on the day it is put forward or back.
 */
export function freeSlots(hours: FreeHours, now: number, days: number): Slots {
  const exceptions = new Map(hours.exceptions.map((exception) => [exception.date, exception.stretches]));
  const first = DateTime.fromMillis(now, { zone: hours.zone }).startOf('day');
  const minute = (at: number) => Math.round((at - now) / 60_000);
  const rows: [start: number, end: number, day: number][] = [];
  const dates: string[] = [];
  const dayStart = new Int32Array(days);
  for (let d = 0; d < days; d++) {
    const day = first.plus({ days: d });
    const date = day.toISODate()!;
    dates.push(date);
    dayStart[d] = minute(day.toMillis());
    const stretches = exceptions.get(date) ?? hours.weekly.filter(({ weekday }) => weekday === day.weekday);
    for (const stretch of stretches) {
      const [from, to] = stretchOn(day, stretch);
      for (let at = Math.max(from, now); at < to; at += SLOT_MINUTES * 60_000) {
        rows.push([minute(at), minute(Math.min(to, at + SLOT_MINUTES * 60_000)), d]);
      }
    }
  }
  rows.sort((a, b) => a[0] - b[0]);
  const apart = rows.filter(([start], k) => k === 0 || start >= rows[k - 1]![1]);
  return {
    origin: now, count: apart.length, dates, dayStart,
    start: Int32Array.from(apart, ([start]) => start),
    end: Int32Array.from(apart, ([, end]) => end),
    day: Int32Array.from(apart, ([, , day]) => day),
  };
}

/** Free hours in an ordinary week. */
export function weeklyHours(hours: FreeHours): number {
  const monday = DateTime.fromISO('2024-01-01', { zone: 'utc' });
  return hours.weekly.reduce((sum, stretch) => {
    const [from, to] = stretchOn(monday, stretch);
    return sum + (to - from) / 3_600_000;
  }, 0);
}
