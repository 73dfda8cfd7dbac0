import { describe, expect, it } from 'vitest';
import { checkAll, needed, numberOf, refusal, type Case } from './support.ts';

const freezes = (percent: number, is: number, source: string, glycol = 'ethylene', within = 3): Case => ({
  of: 'antifreeze',
  given: { percent, glycol },
  name: 'temp',
  unit: '°F',
  is,
  within,
  source,
});

describe('antifreeze', () => {
  checkAll([
    ...(
      [
        [10, 23],
        [20, 14],
        [30, 2],
        [40, -13],
        [50, -36],
      ] as const
    ).map(([percent, is]) => freezes(percent, is, '[eg] ethylene, 3 °F')),
    ...(
      [
        [10, 26],
        [20, 17],
        [30, 3],
        [40, -13],
        [50, -34],
      ] as const
    ).map(([percent, is]) => freezes(percent, is, 'other printings')),
    ...(
      [
        [5, 30],
        [10, 28],
        [15, 25],
        [20, 20],
        [25, 16],
        [30, 9],
        [35, 3],
        [40, -5],
        [45, -16],
        [50, -28],
      ] as const
    ).map(([percent, is]) => freezes(percent, is, "Lange's 15th T5.13", 'propylene', 0)),
    {
      of: 'antifreeze',
      given: { percent: 30, by: 'weight', capacity: 1000, capacityUnit: 'gal' },
      name: 'volume',
      unit: 'gal',
      is: 277.6,
      within: 0.1,
      source: 'C5 [ex] glycol worked case',
    },
    {
      of: 'antifreeze',
      given: { percent: 50, capacity: 9, capacityUnit: 'qt' },
      name: 'volume',
      unit: 'qt',
      is: 4.5,
      within: 0,
      source: 'half of nine',
    },
    {
      of: 'antifreeze',
      given: { percent: 50, percentNow: 30, capacity: 12, capacityUnit: 'qt' },
      name: 'volume',
      unit: 'qt',
      is: (12 * 0.2) / 0.7,
      within: 0.005,
      source: 'x = V (c2 - c1)/(1 - c1)',
    },
    {
      of: 'antifreeze',
      given: { percent: 40, percentNow: 50, capacity: 10, capacityUnit: 'L' },
      name: 'volume',
      unit: 'L',
      is: 2,
      within: 0,
      source: 'a fifth out for water',
    },
    { of: 'antifreeze', given: { temp: -20, tempUnit: '°F' }, name: 'percent', is: 43, within: 1, source: 'between 40 and 50 %' },
    { of: 'antifreeze', given: { temp: -29, tempUnit: '°C' }, name: 'percent', is: 43, within: 1, source: 'the same in Celsius' },
  ]);
  it('a drain and refill comes out at the strength asked', () => {
    const x = numberOf('antifreeze', { percent: 50, percentNow: 25, capacity: 16, capacityUnit: 'qt' }, 'volume', 'qt');
    expect(((16 - x) * 0.25 + x) / 16).toBeCloseTo(0.5, 3);
  });
  it.each([
    [{ percent: 100 }, /straight glycol/],
    [{ percent: 75 }, /table stops/],
    [{ percent: 55, glycol: 'propylene' }, /table stops/],
    [{ temp: -80, tempUnit: '°F' }, /table stops/],
    [{ temp: 40, tempUnit: '°F' }, /does not freeze/],
  ])('%j', (given, why) => expect(refusal('antifreeze', given)).toMatch(why));
  it('asks how cold', () => {
    expect(needed('antifreeze', { capacity: 9 })).toEqual(['temp']);
    expect(needed('antifreeze', { glycol: 'rum', temp: -20 })).toEqual(['glycol']);
  });
});
