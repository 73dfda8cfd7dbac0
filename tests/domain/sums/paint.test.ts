import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { dewPointOf } from '../../../domain/sums/dew-point.ts';
import { dryFilm, wetFilm } from '../../../domain/sums/film.ts';
import { checkAll, needed, numberOf, refusal, type Case } from './support.ts';

const spread = (solids: number, mils: number, is: number, within: number, source: string): Case => ({
  of: 'coverage',
  given: { solids, thickness: mils, thicknessUnit: 'mil' },
  name: 'area',
  unit: 'sq ft',
  is,
  within,
  source,
});

describe('paint', () =>
  checkAll([
    spread(65, 5, 208.52, 0.1, 'N1 [sp1]'),
    spread(50, 1, 802, 1, 'N3 [ck]'),
    spread(80, 4, 321, 1, 'N3 [ck]'),
    spread(100, 10, 160.4, 0.1, 'N4 [gei]'),
    {
      of: 'coverage',
      given: { solids: 65, thickness: 125, thicknessUnit: 'µm' },
      name: 'spread',
      unit: 'm²/L',
      is: 5.2,
      within: 0,
      source: '[sp1] 65 % at 125 µm',
    },
    {
      of: 'coverage',
      given: { area: 140, areaUnit: 'sq ft', solids: 45, thickness: 2, thicknessUnit: 'mil' },
      name: 'volume',
      unit: 'gal',
      is: 140 / 360.9,
      within: 0.005,
      source: '1604 x solids / mils',
    },
    {
      of: 'coverage',
      given: { area: 140, areaUnit: 'sq ft', solids: 45, thickness: 2, thicknessUnit: 'mil', loss: 30, coats: 2 },
      name: 'volume',
      unit: 'gal',
      is: (2 * 140) / (360.9 * 0.7),
      within: 0.005,
      source: 'practical = theoretical x (1 - loss)',
    },
    { of: 'filmThickness', given: { wet: 8, solids: 35 }, name: 'dry', unit: 'mil', is: 2.8, within: 0, source: 'N5 [ck]' },
    { of: 'filmThickness', given: { dry: 2, solids: 35, thinner: 10 }, name: 'wet', unit: 'mil', is: 6.3, within: 0.1, source: 'N7' },
    ...(
      [
        [1, 32],
        [2, 8],
        [3, 8],
      ] as const
    ).map(([i, is]): Case => ({
      of: 'paintMix',
      given: { parts: [4, 1, 1], total: 48, totalUnit: 'fl oz' },
      name: `part${i}`,
      unit: 'fl oz',
      is,
      within: 0,
      source: 'N9',
    })),
    ...(
      [
        [1, 32],
        [2, 4],
        [3, 8],
      ] as const
    ).map(([i, is]): Case => ({
      of: 'paintMix',
      given: { parts: [8, 1, 2], total: 44 },
      name: `part${i}`,
      unit: 'fl oz',
      is,
      within: 0,
      source: 'N9',
    })),
  ]));

describe('dew point against psychrolib (ASHRAE), over water', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  it('within 0.15 °C wherever it is over freezing', () =>
    fc.assert(
      fc.property(fc.double({ min: 1, max: 50, noNaN: true }), fc.double({ min: 5, max: 100, noNaN: true }), (celsius, humidity) => {
        const theirs = psychrolib.GetTDewPointFromRelHum(celsius, humidity / 100);
        if (theirs > 0.1) expect(Math.abs(dewPointOf(celsius, humidity) - theirs)).toBeLessThan(0.15);
      }),
    ));
  it.each([
    [74, 68],
    [59, 72],
    [90, 40],
    [70, 50],
  ])('%s °F at %s %%', (temp, humidity) => {
    const theirs = psychrolib.GetTDewPointFromRelHum((temp - 32) / 1.8, humidity / 100) * 1.8 + 32;
    expect(Math.abs(numberOf('dewPoint', { temp, tempUnit: '°F', humidity }, 'dewPoint', '°F') - theirs)).toBeLessThan(0.25);
  });
  it('saturated air is at its dew point', () =>
    expect(numberOf('dewPoint', { temp: 11, tempUnit: '°C', humidity: 100 }, 'dewPoint', '°C')).toBe(11));
  it('frost forms sooner than dew under freezing', () => {
    const given = { temp: -5, tempUnit: '°C', humidity: 60 };
    expect(numberOf('dewPoint', given, 'frostPoint', '°C')).toBeGreaterThan(numberOf('dewPoint', given, 'dewPoint', '°C'));
  });
  it('steel wants 3 °C over it (ISO 8502-4)', () =>
    expect(
      numberOf('dewPoint', { temp: 20, tempUnit: '°C', humidity: 50 }, 'surfaceMin', '°C') -
        numberOf('dewPoint', { temp: 20, tempUnit: '°C', humidity: 50 }, 'dewPoint', '°C'),
    ).toBeCloseTo(3, 6));
  it('the steel measured', () =>
    expect(numberOf('dewPoint', { temp: 20, tempUnit: '°C', humidity: 50, surface: 12, surfaceUnit: '°C' }, 'margin', '°C')).toBeCloseTo(
      2.7,
      1,
    ));
  it('refused and asked', () => {
    expect(refusal('dewPoint', { temp: 70, humidity: 120 })).toMatch(/over 100/);
    expect(refusal('dewPoint', { temp: 400, humidity: 50 })).toMatch(/holds from/);
    expect(needed('dewPoint', { temp: 70 })).toEqual(['humidity']);
  });
});

describe('paint asked and refused', () => {
  it('paint asks for what the data sheet has', () => {
    expect(needed('coverage', { area: 100 })).toEqual(['solids']);
    expect(needed('coverage', { area: 100, solids: 50 })).toEqual(['thickness']);
    expect(refusal('coverage', { area: 100, solids: 150, thickness: 2 })).toMatch(/over 100/);
    expect(needed('paintMix', { parts: [4] })).toEqual(['parts']);
  });
  it("wet and dry film are each other's inverse", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: 10, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (dry, solids, thinner) => {
          expect(dryFilm(wetFilm(dry, solids, thinner), solids, thinner)).toBeCloseTo(dry, 9);
        },
      ),
    ));
});
