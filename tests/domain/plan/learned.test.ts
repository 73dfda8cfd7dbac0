import { describe, expect, it } from 'vitest';
import { weeklyHours } from '../../../domain/plan/calendar.ts';
import { learnedHours, type Sign } from '../../../domain/plan/learned.ts';
import { at, zone } from './tools/jobs.ts';

const now = at('2026-05-04 08:00'); // a Monday
const weeksAgo = (weeks: number, days: number, clock: string, hours?: number): Sign => ({ at: at(`2026-05-04 ${clock}`) - (weeks * 7 - days) * 864e5, hours });

describe('hours learned from the log', () => {
  it('follow the notes of the last eight weeks', () => {
    // Tuesdays 18:10 to 20:10 in all eight weeks; Saturdays four hours said, in four of the eight.
    const signs = [1, 2, 3, 4, 5, 6, 7, 8].flatMap((week) => [weeksAgo(week, 1, '18:10'), weeksAgo(week, 1, '20:10')])
      .concat([1, 3, 5, 7].map((week) => weeksAgo(week, 5, '12:40', 4)));
    const learned = learnedHours(signs, now, zone)!;
    expect(learned.weekly).toEqual([{ weekday: 2, from: '18:00', to: '20:00' }, { weekday: 6, from: '12:30', to: '14:30' }]);
    expect(weeklyHours(learned)).toBe(4);
  });

  it('are not guessed from a few days, nor from long ago, nor from the future', () => {
    expect(learnedHours([1, 2, 3].map((week) => weeksAgo(week, 1, '18:10', 2)), now, zone)).toBeUndefined();
    expect(learnedHours([10, 11, 12, 13, 14, 15, 16].map((week) => weeksAgo(week, 1, '18:10', 2)), now, zone)).toBeUndefined();
    expect(learnedHours([-1, -2, -3, -4, -5, -6, -7].map((week) => weeksAgo(week, 1, '18:10', 2)), now, zone)).toBeUndefined();
  });
});
