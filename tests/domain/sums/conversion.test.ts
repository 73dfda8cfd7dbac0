import reference from 'convert-units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inchFraction, parseInches } from '../../../domain/sums/inch-fraction.ts';
import { convert, findUnit } from '../../../domain/sums/units.ts';
import { checkAll, needed, numberOf, refusal, valueOf, type Case } from './support.ts';

const to = (value: number, from: string, unit: string, is: number, within: number, source: string): Case => ({
  of: 'convert',
  given: { value, from, to: unit },
  name: 'converted',
  is,
  within,
  source,
});

describe('exact and printed conversions', () =>
  checkAll([
    to(1, 'in', 'mm', 25.4, 0, '16 CFR 500.19'),
    to(1, 'ft', 'm', 0.3048, 0, '16 CFR 500.19'),
    to(1, 'mil', 'µm', 25.4, 0, '16 CFR 500.19'),
    to(1, 'sq in', 'mm²', 645.16, 0, '16 CFR 500.19'),
    to(1, 'sq ft', 'm²', 0.092903, 1e-7, '16 CFR 500.19'),
    to(1, 'in³', 'mL', 16.38706, 1e-5, '[ang] NIST'),
    to(1, 'gal', 'L', 3.785412, 1e-6, '[ang] NIST'),
    to(1, 'gal', 'in³', 231, 0, '[ang] NIST'),
    to(1, 'fl oz', 'mL', 29.57353, 1e-5, '[ang] NIST'),
    to(1, 'pint', 'mL', 473.1765, 1e-4, '[ang] NIST'),
    to(1, 'lb', 'g', 453.5924, 1e-4, '[ang] NIST'),
    to(1, 'oz', 'g', 28.34952, 1e-5, '[ang] NIST'),
    to(1, 'lbf', 'N', 4.448222, 1e-6, 'from memory: .45359237 x 9.80665'),
    to(1, 'lb-ft', 'N·m', 1.355818, 1e-6, 'derived'),
    to(1, 'lb-in', 'N·m', 0.1129848, 1e-7, 'derived'),
    to(1, 'psi', 'Pa', 6894.757, 1e-3, 'derived'),
    to(1, 'atm', 'Pa', 101325, 0, 'definition'),
    to(1, 'hp', 'W', 745.6999, 1e-4, '550 ft·lbf/s'),
    to(75.4, 'ft-lb', 'N·m', 102.2, 0.05, 'check line of section 13'),
    to(15, 'psi', 'kPa', 103.4, 0.05, 'section 13'),
    to(200, 'lbf-ft', 'N·m', 271, 0.5, '[dc]'),
    to(50, 'lb-ft', 'N·m', 68, 0.5, '[dc]'),
    to(450, 'lb-ft', 'N·m', 610, 0.5, "a maker's manual"),
    to(-34, '°F', '°C', -36.7, 0.05, 'section 13'),
    to(0.005, 'in', 'mm', 0.127, 0, '[dc]'),
    to(212, 'f', 'c', 100, 0, 'definition'),
    to(0, '°C', 'K', 273.15, 0, 'definition'),
    to(0, '°F', '°R', 459.67, 0, 'definition'),
    to(1, 'inHg', 'kPa', 3.38639, 1e-5, 'conventional'),
    to(1, 'kgf·m', 'lb-ft', 7.23301, 1e-5, 'section 13'),
    to(100, 'lb', 'N', 444.8222, 1e-4, 'a weight as a force'),
    to(20, 'tpi', 'mm', 1.27, 0, 'one inch over 20'),
    to(1.25, 'mm', 'tpi', 20.32, 0.001, '25.4 over the pitch'),
    to(1, 'ton', 'kg', 907.1847, 1e-4, '2,000 lb'),
    to(10, 'mph', 'km/h', 16.09344, 1e-5, '5,280 ft'),
  ]));

describe('64ths', () => {
  it.each([
    [0.421875, '27/64'],
    [0.4219, '27/64'],
    [1.0625, '1-1/16'],
    [0.5, '1/2'],
    [2, '2'],
    [0.0156, '1/64'],
  ])('%s in is %s', (value, name) => expect(valueOf('convert', { value, from: 'in', to: 'fraction' }, 'converted')).toBe(name));
  it('12 mm is nearest to 15/32', () => expect(valueOf('convert', { value: 12, from: 'mm', to: 'fraction' }, 'converted')).toBe('15/32'));
  it('fractions are read back as they are written', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 640 }), (parts) => {
        expect(parseInches(inchFraction(parts / 64))).toBe(parts / 64);
      }),
    ));
});

// convert-units, a general units library, as a second opinion; its own factors are rounded, so 0.01 %.
const PAIRS: readonly (readonly [string, string, string, string])[] = [
  ['in', 'mm', 'in', 'mm'],
  ['ft', 'm', 'ft', 'm'],
  ['mi', 'km', 'mi', 'km'],
  ['lb', 'kg', 'lb', 'kg'],
  ['oz', 'g', 'oz', 'g'],
  ['gal', 'L', 'gal', 'l'],
  ['qt', 'L', 'qt', 'l'],
  ['pt', 'mL', 'pnt', 'ml'],
  ['fl oz', 'mL', 'fl-oz', 'ml'],
  ['sq ft', 'm²', 'ft2', 'm2'],
  ['sq in', 'mm²', 'in2', 'mm2'],
  ['in³', 'L', 'in3', 'l'],
  ['psi', 'kPa', 'psi', 'kPa'],
  ['bar', 'kPa', 'bar', 'kPa'],
  ['°F', '°C', 'F', 'C'],
  ['mph', 'km/h', 'm/h', 'km/h'],
];
describe('against convert-units', () => {
  it.each(PAIRS)('%s to %s', (from, unit, theirFrom, theirTo) =>
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e4, noNaN: true }), (value) => {
        const theirs = reference(value).from(theirFrom).to(theirTo);
        expect(Math.abs(convert(value, from, unit) - theirs)).toBeLessThanOrEqual(Math.abs(theirs) * 1e-4 + 1e-6);
      }),
    ),
  );
  it('there and back', () =>
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), fc.constantFrom(...PAIRS), (value, [from, unit]) => {
        expect(convert(convert(value, from, unit), unit, from)).toBeCloseTo(value, 6);
      }),
    ));
});

describe('units as people say them, asked and refused', () => {
  it.each([
    ['ft-lbs', 'lb-ft'],
    ['foot pounds', 'lb-ft'],
    ['Nm', 'N·m'],
    ['newton metres', 'N·m'],
    ['"', 'in'],
    ['thou', 'mil'],
    ['inch pounds', 'lb-in'],
    ['deg F', '°F'],
    ['litres', 'L'],
    ['Lbs.', 'lb'],
    ['microns', 'µm'],
  ])('%s is %s', (said, name) => expect(findUnit(said)?.name).toBe(name));
  it.each([
    [{ value: 1, from: 'psi', to: 'mm' }, /pressure.*length/],
    [{ value: 1, from: 'furlong', to: 'mm' }, /furlong/],
    [{ value: 1, from: 'mm', to: 'smoot' }, /smoot/],
    [{ value: -500, from: '°C', to: '°F' }, /absolute zero/],
    [{ value: 3, from: 'psi', to: 'fraction' }, /Only a length/],
  ])('%j', (given, why) => expect(refusal('convert', given)).toMatch(why));
  it('asks', () => {
    expect(needed('convert', {})).toEqual(['value']);
    expect(needed('convert', { value: 3 })).toEqual(['from']);
    expect(needed('convert', { value: 3, from: 'in' })).toEqual(['to']);
    expect(numberOf('convert', { value: 45, from: 'N·m', to: 'lb-ft' }, 'converted')).toBeCloseTo(33.19, 2);
  });
});
