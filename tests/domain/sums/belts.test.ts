import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beltCentre, beltLength, smallArc } from '../../../domain/sums/belt-geometry.ts';
import { lossPerTurn } from '../../../domain/sums/adjustable-sheave.ts';
import { checkAll, needed, numberOf, refusal, valueOf, type Case } from './support.ts';

const inches = (d1: number, d2: number, centre: number) => ({ d1, d2, centre, centreUnit: 'in' });
const belt = (given: Record<string, unknown>, name: string, unit: string, is: number, within: number, source: string): Case => ({
  of: 'belt',
  given,
  name,
  unit,
  is,
  within,
  source,
});

describe('belt length, centre, arc', () =>
  checkAll([
    ...(
      [
        [0.1, 174],
        [0.3, 163],
        [0.5, 151],
        [0.8, 133],
        [1, 120],
      ] as const
    ).map(([ratio, arc]) => belt(inches(10 * ratio + 4, 4, 10), 'arc', '°', arc, 0.5, "B1, B2 Machinery's Handbook 31 T12 p. 2581")),
    belt({ d1: 300, d1Unit: 'mm', d2: 150, centre: 600 }, 'length', 'mm', 1916.2, 0.1, 'B4 a textbook page, 1916.2'),
    belt(inches(6, 3, 14), 'length', 'in', 42.298, 0.002, 'B5 two independent forms'),
    belt(inches(6, 3, 14), 'arc', '°', 167.7, 0.05, 'B5'),
    belt(inches(6, 3, 14), 'span', 'in', 13.92, 0.005, 'B5'),
    belt(inches(8, 2.5, 6), 'length', 'in', 29.777, 0.002, 'B7 exact; the approximate form says 29.754'),
    belt({ d1: 6, d2: 3, length: 43.3, lengthUnit: 'in' }, 'centre', 'in', 14.504, 0.005, 'B8 an A42 belt'),
    belt(inches(5, 5, 12), 'length', 'in', 39.708, 0.001, 'B12 equal pulleys'),
    belt(inches(5, 5, 12), 'arc', '°', 180, 0, 'B12'),
    belt({ d1: 393, d2: 105, centre: 697, centreUnit: 'mm' }, 'length', 'mm', 2200, 10, 'a school problem, hackmath.net 258, 2.2 m'),
    {
      of: 'beltTension',
      given: { span: 100, spanUnit: 'in' },
      name: 'deflection',
      unit: 'in',
      is: 1 + 9 / 16,
      within: 0,
      source: "B10 a belt maker's guide",
    },
    {
      of: 'beltTension',
      given: { span: 20, section: 'A', d1: 3.4, d1Unit: 'in' },
      name: 'force',
      unit: 'lb',
      note: 'new',
      is: 5.5,
      within: 0,
      source: 'the same guide p. 22',
    },
    {
      of: 'beltTension',
      given: { span: 20, section: 'C', d1: 8, d1Unit: 'in' },
      name: 'force',
      unit: 'lb',
      note: 'used',
      is: 11.5,
      within: 0,
      source: 'the same guide p. 22',
    },
  ]));

describe('misprints that are not matched', () => {
  it('[mh-v] A75 datum length is 76.3, not 75.3', () =>
    expect(numberOf('beltNumber', { section: 'A', number: 75 }, 'length', 'in')).toBe(76.3));
  it('[pv] a form with tan(a) fails at equal pulleys; ours does not', () =>
    expect(numberOf('belt', inches(5, 5, 12), 'length', 'in')).toBeCloseTo(24 + Math.PI * 5, 3));
  it("the lean is an arcsine: hackmath's arctangent gives 2.2049 m", () => expect(beltLength(393, 105, 697)).not.toBeCloseTo(2204.9, 0));
});

// RMA IP-20 numbers, Machinery's Handbook 31 p. 2575.
describe('belt numbers', () => {
  it.each([
    ['A', 42, 43.3],
    ['B', 42, 43.8],
    ['C', 51, 53.9],
  ])('%s%s is %s in datum', (section, number, datum) => expect(numberOf('beltNumber', { section, number }, 'length', 'in')).toBe(datum));
  it('nearest to a length', () => expect(valueOf('beltNumber', { section: 'A', length: 43, lengthUnit: 'in' }, 'belt')).toBe('A42'));
  it('outside length takes off the outside addition', () =>
    expect(valueOf('beltNumber', { section: '4L', length: 44, kind: 'outside' }, 'belt')).toBe('A42'));
  it.each([
    [0.5, 'A'],
    [0.66, 'B'],
    [0.86, 'C'],
  ])('a top of %s in is %s', (width, section) => expect(valueOf('beltNumber', { width, widthUnit: 'in' }, 'section')).toBe(section));
  it('a fan belt top is named as such (SAE J636)', () => expect(refusal('beltNumber', { width: 9.7, widthUnit: 'mm' })).toMatch(/10A/));
  it('outside the list is refused', () =>
    expect(refusal('beltNumber', { section: 'A', length: 300, lengthUnit: 'in' })).toMatch(/A26 to A128/));
});

describe('speeds', () => {
  checkAll([
    { of: 'sheave', given: { d1: 9, d2: 14, rpm1: 600 }, name: 'rpm', is: 385.7, within: 0.05, source: 'n1 d1 = n2 d2' },
    { of: 'sheave', given: { d1: 2.5, d2: 10, rpm1: 1725 }, name: 'rpm', is: 431.3, within: 0.06, source: 'n1 d1 = n2 d2' },
    { of: 'sheave', given: { d1: 4, d2: 8, rpm2: 500 }, name: 'rpm', is: 1000, within: 0, source: 'the other way' },
    {
      of: 'sheave',
      given: { d1: 4, rpm1: 1750, rpm2: 700 },
      name: 'diameter',
      unit: 'in',
      is: 10,
      within: 0,
      source: 'pulley for a speed',
    },
    { of: 'gearing', given: { rpm1: 1450, rpm2: 540 }, name: 'ratio', is: 2.685, within: 0.001, source: 'X11' },
    { of: 'gearing', given: { teeth1: 12, teeth2: 48, rpm1: 1000 }, name: 'rpm', is: 250, within: 0, source: 'gear ratio' },
    { of: 'alternatorSpeed', given: { d1: 6, d2: 2.5, rpm1: 1250 }, name: 'rpm', is: 3000, within: 0, source: 'pulley ratio' },
  ]);
  it('a flange turned open loses lead / tan(half the groove)', () => expect(lossPerTurn(0.05, 36)).toBeCloseTo(0.1539, 4));
  it('an adjustable sheave by its two ends', () => {
    const given = { d1: 4, smallest: 3, turnsOpen: 5, turns: 2.5, d2: 7, rpm1: 1750, d1Unit: 'in' };
    expect(numberOf('adjustableSheave', given, 'diameter', 'in')).toBe(3.5);
    expect(numberOf('adjustableSheave', given, 'rpm')).toBe(875);
    expect(refusal('adjustableSheave', { ...given, turns: 6 })).toMatch(/past what the sheave has/);
  });
});

describe('asked and refused', () => {
  it('one question at a time', () => {
    expect(needed('belt', {})).toEqual(['d1']);
    expect(needed('belt', { d1: 4 })).toEqual(['d2']);
    expect(needed('belt', { d1: 4, d2: 6 })).toEqual(['centre']);
    expect(needed('sheave', { d1: 4, d2: 6 })).toEqual(['rpm1']);
    expect(needed('sheave', { d1: 4, rpm1: 600 })).toEqual(['d2']);
  });
  it('pulleys that would touch', () => expect(refusal('belt', inches(10, 4, 6.5))).toMatch(/touch at 7 in/));
  it('a belt too short', () => expect(refusal('belt', { d1: 18, d2: 4, length: 30 })).toMatch(/too short/));
  it.each([
    [{ d1: -3, d2: 4, centre: 10 }, /d1 must be over zero/],
    [{ d1: 'six', d2: 4, centre: 10 }, /d1 must be a number/],
    [{ d1: 3, d1Unit: 'psi', d2: 4, centre: 10 }, /not a unit of length/],
  ])('%j', (given, why) => expect(refusal('belt', given)).toMatch(why));
});

describe('properties', () => {
  const drive = fc.record({
    d1: fc.double({ min: 1, max: 30, noNaN: true }),
    d2: fc.double({ min: 1, max: 30, noNaN: true }),
    gap: fc.double({ min: 0.5, max: 80, noNaN: true }),
  });
  it('centre is the inverse of length', () =>
    fc.assert(
      fc.property(drive, ({ d1, d2, gap }) => {
        const centre = (d1 + d2) / 2 + gap;
        expect(beltCentre(d1, d2, beltLength(d1, d2, centre))).toBeCloseTo(centre, 6);
      }),
    ));
  it('which pulley is which does not matter, and the approximate form is close where the centres are long', () =>
    fc.assert(
      fc.property(drive, ({ d1, d2, gap }) => {
        const centre = (d1 + d2) * 2 + gap;
        const approximate = 2 * centre + (Math.PI / 2) * (d1 + d2) + (d1 - d2) ** 2 / (4 * centre);
        expect(beltLength(d1, d2, centre)).toBeCloseTo(beltLength(d2, d1, centre), 9);
        expect(Math.abs(beltLength(d1, d2, centre) / approximate - 1)).toBeLessThan(0.0005);
        expect(smallArc(d1, d2, centre)).toBeLessThanOrEqual(180);
      }),
    ));
});
