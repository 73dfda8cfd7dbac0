import { DateTime } from 'luxon';

/** Days are YYYY-MM-DD, times HH:MM on the wall clock of the shop, moments ms UTC. */
export const dayIn = (at: number, zone: string): string => DateTime.fromMillis(at, { zone }).toISODate()!;
export const plusDays = (day: string, days: number): string => DateTime.fromISO(day, { zone: 'utc' }).plus({ days }).toISODate()!;

/** A moment as ISO with the offset of the place. */
export const isoAt = (ms: number, zone: string): string => DateTime.fromMillis(ms, { zone }).toISO({ suppressMilliseconds: true, includeOffset: true })!;

const DAY = 86_400_000;

/**
 * The moment of a wall-clock time. A time that the clock skips in spring is as much later as the clock jumps; one that it shows twice in
 * autumn is the first of the two (RFC 5545, 3.3.5, has it so for both).
 */
export function momentOf(day: string, time: string, zone: string): number {
  const wall = Date.parse(`${day}T${time}:00Z`);
  const offsetAt = (at: number): number => DateTime.fromMillis(at, { zone }).offset * 60_000;
  const [before, after] = [wall - offsetAt(wall - DAY), wall - offsetAt(wall + DAY)];
  const isShown = (at: number): boolean => at + offsetAt(at) === wall;
  return isShown(before) || !isShown(after) ? before : after;
}

export interface Quiet { from: string; to: string }

/** When the quiet that holds at a moment ends; undefined when it is not quiet. */
export const quietUntil = (at: number, quiet: Quiet | undefined, zone: string): number | undefined =>
  quiet && spans(at, quiet, zone).find(([from, to]) => from <= at && at < to)?.[1];

/** The next quiet that begins after a moment: from and to. */
export const nextQuiet = (at: number, quiet: Quiet | undefined, zone: string): [from: number, to: number] | undefined =>
  quiet && spans(at, quiet, zone).find(([from]) => from > at);

function spans(at: number, { from, to }: Quiet, zone: string): [number, number][] {
  const today = dayIn(at, zone);
  return [-1, 0, 1].map(d => plusDays(today, d)).map(day => [momentOf(day, from, zone), momentOf(to > from ? day : plusDays(day, 1), to, zone)]);
}
