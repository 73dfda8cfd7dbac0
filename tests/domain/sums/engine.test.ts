import { describe, expect, it } from 'vitest';
import { checkAll, needed, numberOf, refusal } from './support.ts';

describe('engine, hydraulics, road', () =>
  checkAll([
    {
      of: 'displacement',
      given: { bore: 6.5, stroke: 7, cylinders: 2, boreUnit: 'in' },
      name: 'volume',
      unit: 'in³',
      is: 464.6,
      within: 0.1,
      source: 'X1 Nebraska Test 1 [gm]',
    },
    {
      of: 'displacement',
      given: { bore: 3.375, stroke: 4.25, cylinders: 4 },
      name: 'volume',
      unit: 'in³',
      is: 152.1,
      within: 0.1,
      source: 'X2',
    },
    {
      of: 'displacement',
      given: { bore: 80, stroke: 100, cylinders: 4, boreUnit: 'mm' },
      name: 'volume',
      unit: 'L',
      is: 2.011,
      within: 0.001,
      source: 'π/4 x 8² x 10 x 4 cm³',
    },
    {
      of: 'compression',
      given: { bore: 3.375, stroke: 4.25, ratio: 6.5 },
      name: 'chamber',
      unit: 'in³',
      is: 6.91,
      within: 0.01,
      source: 'X3',
    },
    {
      of: 'compression',
      given: { bore: 3.375, stroke: 4.25, chamber: 6.913, chamberUnit: 'in³' },
      name: 'ratio',
      is: 6.5,
      within: 0.005,
      source: 'X3 the other way',
    },
    {
      of: 'compression',
      given: { bore: 80, stroke: 100, chamber: 62.8, boreUnit: 'mm' },
      name: 'ratio',
      is: 9,
      within: 0.02,
      source: '502.7 cc over 62.8',
    },
    {
      of: 'hydraulic',
      given: { bore: 6, force: 50000, boreUnit: 'in', forceUnit: 'lb' },
      name: 'pressure',
      unit: 'psi',
      is: 1769.3,
      within: 1.8,
      source: 'X5 [wo]',
    },
    {
      of: 'hydraulic',
      given: { bore: 6, flow: 15, flowUnit: 'gpm' },
      name: 'speed',
      unit: 'in/s',
      is: 2.04,
      within: 0.01,
      source: 'X6 [wo]',
    },
    {
      of: 'hydraulic',
      given: { bore: 3, rod: 1.5, pressure: 2000 },
      name: 'force',
      unit: 'lb',
      note: 'pulling',
      is: 10603,
      within: 1,
      source: 'π/4 (9 - 2.25) x 2000',
    },
    {
      of: 'hydraulic',
      given: { bore: 50, boreUnit: 'mm', pressure: 100, pressureUnit: 'bar' },
      name: 'force',
      unit: 'N',
      is: 19635,
      within: 2,
      source: 'π/4 x 50² x 10 N/mm²',
    },
    { of: 'roadSpeed', given: { radius: 14.94, radiusUnit: 'in' }, name: 'revPerMile', is: 675, within: 1, source: 'X8 [gl]' },
    {
      of: 'roadSpeed',
      given: { rpm: 1500, ratio: 50, diameter: 50, diameterUnit: 'in' },
      name: 'speed',
      unit: 'mph',
      is: (1500 * 50) / (336.135 * 50),
      within: 0.01,
      source: 'mph = rpm D / (336.135 ratio)',
    },
    { of: 'roadSpeed', given: { speed: 4.46, ratio: 50, diameter: 50 }, name: 'rpm', is: 1500, within: 2, source: 'the other way' },
    {
      of: 'ringGap',
      given: { change: 0.006, changeUnit: 'in' },
      name: 'gapChange',
      unit: 'in',
      is: 0.0188,
      within: 0.0001,
      source: 'X9; .018 by the rounded rule of TM 5-3805-261-34',
    },
    {
      of: 'ringGap',
      given: { bore: 4, boreUnit: 'in' },
      name: 'gap',
      unit: 'in',
      note: 'least',
      is: 0.012,
      within: 0,
      source: 'common practice, no source',
    },
    {
      of: 'twoStroke',
      given: { ratio: 50, fuel: 1, fuelUnit: 'gal' },
      name: 'volume',
      unit: 'fl oz',
      is: 2.56,
      within: 0.01,
      source: 'X10',
    },
    { of: 'twoStroke', given: { ratio: 32 }, name: 'volume', unit: 'fl oz', is: 4, within: 0, source: 'X10' },
    { of: 'twoStroke', given: { ratio: 24 }, name: 'volume', unit: 'fl oz', is: 5.33, within: 0.01, source: 'X10' },
    {
      of: 'twoStroke',
      given: { ratio: 50, fuel: 5, fuelUnit: 'L' },
      name: 'volume',
      unit: 'mL',
      is: 100,
      within: 0,
      source: '5,000 over 50',
    },
  ]));

describe('asked and refused', () => {
  it('a tyre size is not a diameter: 12.4-28 is width and rim, not an aspect ratio', () =>
    expect(refusal('roadSpeed', { tyre: '12.4-28', rpm: 1500, ratio: 40 })).toMatch(/measure the loaded radius/));
  it('a rod as thick as the bore', () => expect(refusal('hydraulic', { bore: 2, rod: 2, pressure: 1000 })).toMatch(/thick/));
  it('a mix that is none', () => expect(refusal('twoStroke', { ratio: 2 })).toMatch(/no two-stroke mix/));
  it('a ratio of one', () => expect(refusal('compression', { bore: 3, stroke: 3, ratio: 1 })).toMatch(/over 1/));
  it('one question at a time', () => {
    expect(needed('displacement', { bore: 3, stroke: 4 })).toEqual(['cylinders']);
    expect(needed('compression', { bore: 3, stroke: 4 })).toEqual(['chamber']);
    expect(needed('hydraulic', { bore: 3 })).toEqual(['pressure']);
    expect(needed('roadSpeed', { rpm: 1500, radius: 20 })).toEqual(['ratio']);
    expect(needed('gearing', { rpm1: 540 })).toEqual(['rpm2']);
    expect(needed('gearing', { teeth1: 12 })).toEqual(['teeth2']);
    expect(numberOf('gearing', { rpm1: 540, rpm2: 540 }, 'ratio')).toBe(1);
  });
});
