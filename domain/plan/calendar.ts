import { DateTime } from 'luxon';

/** A stretch of a day on the wall clock, `HH:MM`; `to` at or before `from` runs past midnight, `24:00` is its end. */
interface Stretch { from: string; to: string }

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

const SLOT_MINUTES = 30;

/** Consecutive local days. Minutes are counted from `origin` (ms UTC); `dayStart` has one entry more than there are days. */
export interface LocalDays {
  zone: string;
  origin: number;
  dates: readonly string[];
  /** 1 (Monday) to 7 (Sunday). */
  weekday: readonly number[];
  dayStart: Int32Array;
}

/** Free time cut into half hours, in order. Times are whole minutes since the origin; the last of a stretch may be shorter. */
export interface Slots {
  /** ms UTC of minute 0: the moment of planning. */
  origin: number;
  count: number;
  start: Int32Array;
  end: Int32Array;
  /** Which local day, an index into `days`. */
  day: Int32Array;
  days: LocalDays;
}

/** The `count` local days from the one of `now` on. */
export function localDays(zone: string, now: number, count: number): LocalDays {
  const first = DateTime.fromMillis(now, { zone }).startOf('day');
  // Where midnight is skipped, a day begins at one in the morning, and the ones counted on from it would too.
  const days = Array.from({ length: count + 1 }, (_, d) => first.plus({ days: d })).map((day) => (day.hour === 0 ? day : day.startOf('day')));
  return {
    zone, origin: now,
    dates: days.slice(0, count).map((day) => day.toISODate()!),
    weekday: days.slice(0, count).map((day) => day.weekday),
    dayStart: Int32Array.from(days, (day) => Math.round((day.toMillis() - now) / 60_000)),
  };
}

/** The minute of a wall-clock time on day `d`. A time that the clock skips is moved on by the skip, as the clock does. */
export function wallClock({ zone, origin, dates, dayStart }: LocalDays, d: number, time: string): number {
  const [hour, minute] = time.split(':').map(Number) as [number, number];
  const midnight = dayStart[d]!;
  if (hour === 24) return dayStart[d + 1]!;
  // Nearly all days have 24 hours; the calendar library is asked about the others only, for it is slow.
  if (dayStart[d + 1]! - midnight === 1440) return midnight + hour * 60 + minute;
  return Math.round((DateTime.fromISO(dates[d]!, { zone }).set({ hour, minute }).toMillis() - origin) / 60_000);
}

/** From which minute to which a stretch of day `d` reaches. One that runs past midnight is cut short after the last day. */
export function stretchOn(days: LocalDays, d: number, { from, to }: Stretch): [from: number, to: number] {
  const start = wallClock(days, d, from);
  const end = wallClock(days, d, to);
  if (end > start) return [start, end];
  return [start, d + 1 < days.dates.length ? wallClock(days, d + 1, to) : days.dayStart[d + 1]!];
}

/**
 * The free half hours of the `count` local days from `now` on; what is left of a stretch already begun counts.
 * Zone-true: an evening is as long as the clock makes it, also on the day it is put forward or back.
 */
export function freeSlots(hours: FreeHours, now: number, count: number): Slots {
  const days = localDays(hours.zone, now, count);
  const exceptions = new Map(hours.exceptions.map((exception) => [exception.date, exception.stretches]));
  const rows: [start: number, end: number, day: number][] = [];
  for (let d = 0; d < count; d++) {
    const stretches = exceptions.get(days.dates[d]!) ?? hours.weekly.filter(({ weekday }) => weekday === days.weekday[d]);
    for (const stretch of stretches) {
      const [from, to] = stretchOn(days, d, stretch);
      for (let at = Math.max(from, 0); at < to; at += SLOT_MINUTES) rows.push([at, Math.min(to, at + SLOT_MINUTES), d]);
    }
  }
  const apart = withoutOverlap(rows);
  return {
    origin: now, count: apart.length, days,
    start: Int32Array.from(apart, ([start]) => start),
    end: Int32Array.from(apart, ([, end]) => end),
    day: Int32Array.from(apart, ([, , day]) => day),
  };
}

/** In order of time; where stretches overlap, a half hour counts once. */
function withoutOverlap(rows: readonly [start: number, end: number, day: number][]): [number, number, number][] {
  const apart: [number, number, number][] = [];
  for (const row of rows.toSorted((a, b) => a[0] - b[0])) if (row[0] >= (apart.at(-1)?.[1] ?? 0)) apart.push([...row]);
  return apart;
}

/** Free hours in an ordinary week. */
export function weeklyHours({ weekly }: FreeHours): number {
  const minutes = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
  return weekly.reduce((sum, { from, to }) => sum + (minutes(to) > minutes(from) ? 0 : 1440) + minutes(to) - minutes(from), 0) / 60;
}
