import { describe, expect, it } from 'vitest';
import { boilingPoint } from '../../../domain/sums/saturation.ts';
import { convert } from '../../../domain/sums/units.ts';
import { computeSum } from '../../../domain/sums/compute.ts';
import { checkAll, needed, numberOf, refusal, type Case } from './support.ts';

const boils = (cap: number, is: number, within: number, source: string, more: Record<string, unknown> = {}): Case => ({
  of: 'boiling',
  given: { cap, capUnit: 'psi', ...more },
  name: 'boils',
  unit: '°F',
  is,
  within,
  source,
});

describe('boiling under a cap', () => {
  it.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])('IAPWS-IF97 check value: %s MPa, %s K', (mpa, kelvin) => expect(boilingPoint(mpa * 1e6)).toBeCloseTo(kelvin, 6));
  checkAll([
    boils(0, 212, 0.1, '[eg2] saturated steam'),
    boils(1, 215, 0.6, '[eg2]'),
    boils(4, 224, 0.6, '[eg2]'),
    boils(7, 232, 0.6, '[eg2]'),
    boils(10, 239, 0.6, '[eg2]'),
    boils(16, 252, 0.6, '[eg2]'),
    boils(20, 259, 0.6, '[eg2]'),
    boils(5.3, 227.96, 0.1, '[ar] Keenan & Keyes abstract'),
    boils(10.3, 240.07, 0.1, '[ar]'),
    boils(15.3, 250.33, 0.1, '[ar]'),
    boils(20.3, 259.28, 0.1, '[ar]'),
    boils(0, 202.8, 0.2, 'IAPWS at 12.23 psia, about 5,000 ft', { altitude: 5000, altitudeUnit: 'ft' }),
    boils(0, 223, 1, '[dw] 50/50 glycol, open', { percent: 50 }),
    boils(15, 262, 5, '[dm] 50/50 glycol at 15 psi', { percent: 50 }),
    { of: 'boiling', given: { cap: 7 }, name: 'margin', unit: '°F', is: 20.3, within: 0.3, source: 'C7' },
  ]);
  it('the rule of 3 °F a psi overstates at 15 psi and is not followed', () =>
    expect(numberOf('boiling', { cap: 15 }, 'boils', '°F') - 212).toBeLessThan(38.5));
  it('metric asked, metric answered', () =>
    expect(computeSum('boiling', { cap: 0.5, capUnit: 'bar' })).toMatchObject({
      results: [{ name: 'boils', unit: '°C' }, { unit: '°F' }, { name: 'margin', unit: '°C' }, { unit: '°F' }, {}],
    }));
  it('outside the table', () => {
    expect(refusal('boiling', { cap: 60 })).toMatch(/No radiator cap/);
    expect(refusal('boiling', { cap: 7, percent: 70 })).toMatch(/50 %/);
    expect(needed('boiling', {})).toEqual(['cap']);
  });
});

describe('pressure decay', () => {
  checkAll([
    {
      of: 'pressureLeak',
      given: {
        pressure1: 50.6,
        pressure1Unit: 'kPa',
        pressure2: 25.3,
        absolute: true,
        volume: 0.002,
        volumeUnit: 'm³',
        time: 70,
        timeUnit: 's',
        temp1: 20,
        temp1Unit: '°C',
      },
      name: 'molar',
      is: 2.966e-4,
      within: 1.5e-6,
      source: 'C1 40 CFR 1065.644',
    },
    {
      of: 'pressureLeak',
      given: { pressure1: 7, pressure2: 6.5, volume: 3, volumeUnit: 'gal', time: 10, timeUnit: 'min' },
      name: 'leak',
      unit: 'std cc/min',
      is: 38.6,
      within: 0.1,
      source: 'C3',
    },
    {
      of: 'pressureLeak',
      given: { pressure1: 7, pressure2: 6.5, volume: 3, volumeUnit: 'gal', time: 10, timeUnit: 'min' },
      name: 'leak',
      unit: 'Pa·m³/s',
      is: 0.0652,
      within: 0.0001,
      source: 'C3',
    },
    {
      of: 'pressureLeak',
      given: { pressure1: 7, temp1: 70, temp2: 60 },
      name: 'pressure',
      unit: 'psi',
      is: 6.59,
      within: 0.01,
      source: 'C4',
    },
    { of: 'pressureLeak', given: { pressure1: 7, temp1: 70, temp2: 60 }, name: 'fall', unit: 'psi', is: 0.41, within: 0.01, source: 'C4' },
  ]);
  it('a fall that is all cooling is no leak', () =>
    expect(
      Math.abs(
        numberOf('pressureLeak', { pressure1: 7, pressure2: 6.59, temp1: 70, temp2: 60, volume: 3, time: 10 }, 'leak', 'std cc/min'),
      ),
    ).toBeLessThan(0.5));
  it('asks', () => expect(needed('pressureLeak', { pressure1: 7, pressure2: 6 })).toEqual(['volume']));
  it('the unit of pressure is one unit', () => expect(convert(15, 'psi', 'kPa')).toBeCloseTo(103.4, 1));
});
