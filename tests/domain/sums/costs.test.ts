import { describe, expect, it } from 'vitest';
import { checkAll, needed, numberOf, refusal, type Case } from './support.ts';

const landed = (given: Record<string, unknown>, is: number, source: string): Case => ({
  of: 'landed',
  given,
  name: 'landed',
  unit: '$',
  is,
  within: 0,
  source,
});

describe('costs', () => {
  checkAll([
    landed({ price: 189, shipping: 24.5, tax: 7.25, core: 45, miles: 38, date: '2026-03-04' }, 254.75, 'M1, IRS .725'),
    landed({ price: 60, shipping: 18 }, 78, 'M5 quote A'),
    landed({ price: 74, miles: 12, date: '2026-05-01' }, 82.7, 'M5 quote B'),
    landed({ price: 132, shipping: 18, tax: 7 }, 159.24, 'price, shipping, 7 % of the price'),
    landed({ price: 80, shipping: 14, core: 20 }, 94, 'core comes back'),
    { of: 'landed', given: { price: 80, shipping: 14, core: 20 }, name: 'outlay', is: 114, within: 0, source: 'until it is returned' },
    { of: 'mileage', given: { miles: 100, date: '2022-06-30' }, name: 'trip', is: 58.5, within: 0, source: 'M3 IRS .585' },
    { of: 'mileage', given: { miles: 100, date: '2022-07-01' }, name: 'trip', is: 62.5, within: 0, source: 'M3 IRS .625' },
    ...(
      [
        ['2019-05-05', 58],
        ['2020-05-05', 57.5],
        ['2021-05-05', 56],
        ['2023-05-05', 65.5],
        ['2024-05-05', 67],
        ['2025-05-05', 70],
        ['2026-05-05', 72.5],
      ] as const
    ).map(([date, is]): Case => ({
      of: 'mileage',
      given: { miles: 100, date },
      name: 'trip',
      is,
      within: 0,
      source: 'IRS [pf][az][a15][cpa]',
    })),
  ]);
  it('[nc] the rate of 2026 is .725, not .70', () => expect(numberOf('mileage', { miles: 1, date: '2026-01-01' }, 'rate')).toBe(0.725));
  it('his own rate beats it', () => expect(numberOf('landed', { price: 10, miles: 10, rate: 0.3 }, 'landed')).toBe(13));
  it('before the table', () => expect(refusal('mileage', { miles: 10, date: '2011-01-01' })).toMatch(/2019/));
  it('asks', () => expect(needed('landed', { shipping: 3 })).toEqual(['price']));
});
