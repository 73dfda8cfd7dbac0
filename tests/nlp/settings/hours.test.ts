import { describe, expect, test } from 'vitest';
import { HOURS_PHRASES, NOT_HOURS } from '../../../nlp/settings/corpus/hours.ts';
import { readHours, type WeeklyStretch } from '../../../nlp/settings/hours.ts';

const inWords = (weekly: readonly WeeklyStretch[]): string => {
  const times = new Map<string, string>();
  for (const { weekday, from, to } of weekly) times.set(`${from}–${to}`, (times.get(`${from}–${to}`) ?? '') + weekday);
  return [...times].map(([time, days]) => `${days} ${time}`).join(' ');
};

describe('the person\'s hours', () => {
  test.each(HOURS_PHRASES)('%s', (said, week) => expect(inWords(readHours(said)?.weekly ?? [])).toBe(week));
  test.each(NOT_HOURS)('not: %s', said => expect(readHours(said)).toBeUndefined());
  test('"too" adds to the week there is', () => expect(readHours('Sundays too, nine to noon')?.adds).toBe(true));
  test('"never Sundays" takes a day out', () => expect(readHours('never on Sundays')).toEqual({ weekly: [], never: [7], adds: true }));
});
