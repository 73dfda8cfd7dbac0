import { NUMBER, numberSaid } from './hour-words.ts';
import type { Days, Part } from './weekdays-said.ts';

/** Hours as they were said of some days: how long, from when, until when, or all day. */
export interface HoursSaid { length?: number; from?: string; to?: string; allDay?: boolean }

/** Where nothing else is said: an evening begins at six, a morning at eight, a day off at nine. Common practice, no source. */
const BEGINS: Record<Part, number> = { morning: 8, afternoon: 13, evening: 18, day: 9 };
const LASTS: Record<Part, number> = { morning: 4, afternoon: 4, evening: 2, day: 4 };

/** From when to when, HH:MM: what was said, and what is usual for that part of the day. */
export function clockStretch({ days, part }: Days, { length, from, to, allDay }: HoursSaid): { from: string; to: string } {
  if (allDay) return { from: '09:00', to: '17:00' };
  const late = part === 'evening' || part === 'afternoon' || (part === 'day' && isAfterWork(days, from, to)) ? 12 : 0;
  const start = from === undefined ? undefined : from === 'work' ? 18 : hourOf(from, late, !to || numberSaid(from) < 6);
  let end = to === undefined ? undefined : hourOf(to, late && part !== 'afternoon' ? 12 : 0, true);
  if (start !== undefined && end !== undefined && end <= start) end = Math.min(24, end + 12);
  if (end !== undefined && start === undefined) {
    const begin = length === undefined ? Math.min(BEGINS[part], end > 8 ? 8 : end - 1) : end - length;
    return span(part === 'evening' && end > 18 && length === undefined ? 18 : begin, end);
  }
  const begin = start ?? BEGINS[part];
  return span(begin, end ?? begin + (length ?? LASTS[part]));
}

/** "Tuesdays seven to nine": on a working day that is an evening. */
function isAfterWork(days: readonly number[], from: string | undefined, to: string | undefined): boolean {
  const [a, b] = [from, to].map(t => (t === undefined ? NaN : hourOf(t, 0, false)));
  return days.every(d => d <= 5) && a! >= 5 && a! <= 9 && b! > a! && b! <= 11 && !/a\.?m/.test(`${from}${to}`);
}

/** Hours on the clock: a bare figure up to seven is after noon, as is one that a part of the day says so. */
function hourOf(said: string, shift: number, bareIsLate: boolean): number {
  if (/noon|midday|lunch/.test(said)) return 12;
  if (said === 'midnight') return 24;
  if (/supper|dinner|tea|dark/.test(said)) return 19;
  const half = /^half/.test(said) ? 0.5 : 0;
  const m = new RegExp(String.raw`(${NUMBER})`).exec(said)!;
  const [h, min = '0'] = m[1]!.split(/[.:]/);
  const hour = numberSaid(h!) + half + Number(min) / 60;
  if (/a\.?m/.test(said)) return hour % 12;
  if (/p\.?m/.test(said)) return (hour % 12) + 12;
  return hour < 12 && (shift > 0 || (bareIsLate && hour < 8)) ? hour + 12 : hour;
}

const span = (from: number, to: number): { from: string; to: string } => ({ from: clock(Math.max(0, from)), to: clock(Math.min(24, to)) });
const clock = (hours: number): string => `${String(Math.floor(hours + 1e-9)).padStart(2, '0')}:${String(Math.round((hours % 1) * 60)).padStart(2, '0')}`;
