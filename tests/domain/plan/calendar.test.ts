import { describe, expect, it } from 'vitest';
import { freeSlots, weeklyHours, type FreeHours } from '../../../domain/plan/calendar.ts';
import { at, clock, evenings, zone } from './tools/jobs.ts';

const minutesOn = (hours: FreeHours, date: string) => {
  const slots = freeSlots(hours, at(date), 1);
  return slots.start.reduce((sum, start, k) => sum + slots.end[k]! - start, 0);
};

describe('free half hours', () => {
  it('follow the week, with dates that differ', () => {
    const hours = { ...evenings, exceptions: [{ date: '2026-05-05', stretches: [] }, { date: '2026-05-10', stretches: [{ from: '09:00', to: '10:15' }] }] };
    expect(weeklyHours(hours)).toBe(14);
    expect(minutesOn(hours, '2026-05-04')).toBe(120);
    expect(minutesOn(hours, '2026-05-05')).toBe(0);
    expect(minutesOn(hours, '2026-05-10')).toBe(75); // the last slot is a quarter of an hour
  });

  it('leave out what is past of today', () => {
    const slots = freeSlots(evenings, at('2026-05-04 19:10'), 1);
    expect(Array.from(slots.start)).toEqual([0, 30]);
    expect(clock(slots.origin + slots.end[1]! * 60_000)).toBe('Mon 2026-05-04 20:00');
  });

  it('reach over midnight and up to 24:00', () => {
    const night = { zone, exceptions: [], weekly: [{ weekday: 1, from: '22:00', to: '01:00' }, { weekday: 2, from: '23:00', to: '24:00' }] };
    expect(Array.from(freeSlots(night, at('2026-05-04'), 2).start)).toEqual([22, 22.5, 23, 23.5, 24, 24.5, 47, 47.5].map((hour) => hour * 60));
  });

  // The clock goes from 02:00 to 03:00 on 8 March 2026 and from 02:00 back to 01:00 on 1 November 2026 (US rule, IANA zone data).
  it('are as long as the clock makes them', () => {
    const nights = { zone, exceptions: [], weekly: [{ weekday: 7, from: '00:00', to: '04:00' }] };
    expect(minutesOn(nights, '2026-03-08')).toBe(180);
    expect(minutesOn(nights, '2026-11-01')).toBe(300);
    const slots = freeSlots(evenings, at('2026-03-06 12:00'), 5);
    expect(clock(slots.origin + slots.start.at(-1)! * 60_000)).toBe('Tue 2026-03-10 19:30');
  });

  // Egypt puts its clock forward at midnight: 24 April 2026 begins at 01:00 (IANA zone data).
  it('know days that begin at one in the morning', () => {
    const cairo = { zone: 'Africa/Cairo', exceptions: [], weekly: [{ weekday: 5, from: '00:00', to: '02:00' }, { weekday: 6, from: '00:00', to: '02:00' }] };
    const noon = Date.UTC(2026, 3, 24, 9);
    const slots = freeSlots(cairo, noon, 2);
    expect(new Date(noon + slots.start[0]! * 60_000).toISOString()).toBe('2026-04-24T21:00:00.000Z'); // Saturday 00:00, three hours ahead of UTC
    const dayBefore = freeSlots(cairo, noon - 864e5, 2);
    expect(Array.from(dayBefore.start, (start, k) => dayBefore.end[k]! - start)).toEqual([30, 30]); // Friday has only 01:00 to 02:00 of it
  });

  it('do not count a stretch twice', () => {
    const twice = { zone, exceptions: [], weekly: [{ weekday: 1, from: '18:00', to: '20:00' }, { weekday: 1, from: '18:00', to: '21:00' }] };
    expect(minutesOn(twice, '2026-05-04')).toBe(180);
  });
});
