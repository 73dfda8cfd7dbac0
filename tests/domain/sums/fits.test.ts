import { computeSum } from '../../../domain/sums/compute.ts';
import { describe, expect, it } from 'vitest';
import { holeLimits, shaftLimits } from '../../../domain/sums/iso-limits.ts';
import { checkAll, needed, numberOf, refusal, type Case } from './support.ts';

// ISO 286 by the JIS B0401 reprint [su], micrometres: sizes inside each step, high then low.
const PRINTED: readonly (readonly [string, readonly (readonly [number, number, number])[]])[] = [
  [
    'H7',
    [
      [14, 18, 0],
      [25, 21, 0],
      [40, 25, 0],
      [60, 30, 0],
    ],
  ],
  [
    'p6',
    [
      [14, 29, 18],
      [25, 35, 22],
      [40, 42, 26],
      [60, 51, 32],
    ],
  ],
  [
    'n6',
    [
      [14, 23, 12],
      [25, 28, 15],
      [40, 33, 17],
      [60, 39, 20],
    ],
  ],
  [
    'g6',
    [
      [14, -6, -17],
      [25, -7, -20],
      [40, -9, -25],
      [60, -10, -29],
    ],
  ],
  [
    'k6',
    [
      [14, 12, 1],
      [25, 15, 2],
      [40, 18, 2],
      [60, 21, 2],
    ],
  ],
];
describe('ISO 286 limits', () => {
  for (const [code, rows] of PRINTED) {
    it.each(rows)(`${code} at %s mm: +%s / %s`, (mm, high, low) =>
      expect(code === 'H7' ? holeLimits(mm, code) : shaftLimits(mm, code)).toEqual({ low, high }),
    );
  }
  // Bhandari, Design of Machine Elements, ex. 3.2 and 3.3 as carried by the FOSSEE Scilab companions (book 764).
  it.each([
    [20, 's6', 48, 35],
    [50, 's6', 59, 43],
  ] as const)('%s %s is +%s / +%s (Bhandari ex. 3.2, 3.3)', (mm, code, high, low) => expect(shaftLimits(mm, code)).toEqual({ low, high }));
  it('the top of a step belongs to it', () =>
    expect([shaftLimits(50, 'p6'), shaftLimits(50.01, 'p6')]).toEqual([
      { low: 26, high: 42 },
      { low: 32, high: 51 },
    ]));
  it('js6 lies evenly, f7 and h6 under, r6 over (from memory of the same tables)', () => {
    expect(shaftLimits(40, 'js6')).toEqual({ low: -8, high: 8 });
    expect(shaftLimits(40, 'f7')).toEqual({ low: -50, high: -25 });
    expect(shaftLimits(40, 'h6')).toEqual({ low: -16, high: 0 });
    expect(shaftLimits(70, 'r6')).toEqual({ low: 43, high: 62 });
  });
  checkAll([
    { of: 'isoFit', given: { diameter: 50, fit: 'H7/p6' }, name: 'tightest', unit: 'µm', is: 42, within: 0, source: 'P1 [rt]' },
    { of: 'isoFit', given: { diameter: 50, fit: 'H7/p6' }, name: 'loosest', unit: 'µm', is: 1, within: 0, source: 'P1 [rt]' },
    {
      of: 'isoFit',
      given: { diameter: 40, fit: 'H7/g6' },
      name: 'loosest',
      unit: 'µm',
      is: -50,
      within: 0,
      source: '+25 and -25, clearance',
    },
    { of: 'isoFit', given: { diameter: 25, fit: 'k6' }, name: 'shaftHigh', unit: 'mm', is: 25.015, within: 0, source: '[su]' },
  ] satisfies Case[]);
});

describe('press, bushing, grease', () => {
  checkAll([
    {
      of: 'pressFit',
      given: { holeLow: 1, holeHigh: 1.0005, shaftLow: 1.001, shaftHigh: 1.0015, holeLowUnit: 'in' },
      name: 'least',
      unit: 'in',
      is: 0.0005,
      within: 0,
      source: 'limits',
    },
    {
      of: 'pressFit',
      given: { holeLow: 1, holeHigh: 1.0005, shaftLow: 1.001, shaftHigh: 1.0015, holeLowUnit: 'in' },
      name: 'most',
      unit: 'in',
      is: 0.0015,
      within: 0,
      source: 'limits',
    },
    {
      of: 'bushing',
      given: { diameter: 2, diameterUnit: 'in' },
      name: 'clearance',
      unit: 'in',
      is: 0.003,
      within: 0,
      source: 'P6 [rc] .0015 per inch',
    },
    {
      of: 'bearingGrease',
      given: { diameter: 100, width: 20, diameterUnit: 'mm' },
      name: 'grease',
      unit: 'g',
      is: 10,
      within: 0,
      source: "bearing makers' rule, from memory",
    },
  ]);
  it('[bh] grease factor .0005 is ten times too little', () =>
    expect(numberOf('bearingGrease', { diameter: 62, width: 16 }, 'grease', 'g')).not.toBeCloseTo(0.5, 1));
});

describe('asked and refused', () => {
  it('shrink fit asks for the material of the part heated', () => {
    expect(needed('shrinkFit', { diameter: 1.5, interference: 0.0015 })).toEqual(['material']);
    expect(needed('shrinkFit', { diameter: 1.5 })).toEqual(['interference']);
    expect(needed('pressFit', { holeLow: 1 })).toEqual(['shaftLow']);
    expect(needed('isoFit', { diameter: 50 })).toEqual(['fit']);
  });
  it.each([
    ['shrinkFit', { diameter: 2, interference: 0.003, material: 'unobtainium' }, /no expansion/],
    ['shrinkFit', { diameter: 2, interference: 0.5, material: 'steel' }, /one percent/],
    ['shrinkFit', { diameter: 2, interference: 0.012, material: 'steel' }, /more than a part keeps/],
    ['isoFit', { diameter: 500, fit: 'H7/g6' }, /1 to 180/],
    ['isoFit', { diameter: 50, fit: 'H7/z9' }, /not in the table/],
    ['pressFit', { holeLow: 2, holeHigh: 1, shaftLow: 1 }, /wrong way round/],
  ])('%s %j', (of, given, why) => expect(refusal(of, given)).toMatch(why));
});

it('takes the figures of a press fit for millimetres where they are too large for inches', () =>
  // 25 H7/p6 of ISO 286: hole +21/0, shaft +35/+22 µm [su]
  expect(computeSum('pressFit', { holeLow: 25, holeHigh: 25.021, shaftLow: 25.022, shaftHigh: 25.035 })).toMatchObject({
    results: [{ name: 'least', value: 0.001, unit: 'mm' }, {}, { name: 'most', value: 0.035, unit: 'mm' }, {}],
  }));
