import { describe, expect, it } from 'vitest';
import { computeSum } from '../../../domain/sums/compute.ts';
import { checkAll, needed, numberOf, refusal, type Case } from './support.ts';

const torque = (
  size: string,
  grade: string,
  surface: string,
  name: string,
  unit: string,
  is: number,
  within: number,
  source: string,
): Case => ({ of: 'torque', given: { size, grade, surface }, name, unit, is, within, source });

// [em] an actuator manual E2K-405-0218 p. 89; [sl] [pz] two chart reprints; [mm] a maker's manual; [cx] a metric bolt chart.
describe('printed torque charts', () =>
  checkAll([
    torque('3/8-16', '5', 'dry', 'clampLoad', 'lb', 4941, 1, 'F1 [em]'),
    torque('3/8-16', '5', 'dry', 'torque', 'lb-ft', 30.9, 0.1, 'F1 [em]'),
    torque('3/8-16', '5', 'dry', 'torque', 'lb-in', 372, 2, 'F1 [mm]'),
    torque('1/2-13', '5', 'dry', 'clampLoad', 'lb', 9046, 1, 'F3 [em]'),
    torque('1/2-13', '5', 'dry', 'torque', 'lb-ft', 75.4, 0.1, 'F3 [em]'),
    torque('1/2-13', '5', 'oiled', 'torque', 'lb-ft', 57, 0.5, 'F3 [mm]'),
    torque('1/2-13', '8', 'dry', 'clampLoad', 'lb', 12771, 1, 'F4 [em]'),
    torque('1/2-13', '8', 'dry', 'torque', 'lb-ft', 106.4, 0.1, 'F4 [em]'),
    torque('1/2-13', '8', 'oiled', 'torque', 'lb-ft', 80, 0.5, 'F4 [mm]'),
    torque('5/8-11', '8', 'dry', 'clampLoad', 'lb', 20340, 1, 'F6 [em]'),
    torque('5/8-11', '8', 'dry', 'torque', 'lb-ft', 212, 0.5, 'F6 [em]'),
    torque('5/8-11', '8', 'oiled', 'torque', 'lb-ft', 159, 0.5, 'F6 [mm]'),
    torque('1-1/8-7', '5', 'dry', 'clampLoad', 'lb', 42347, 1, 'F7 [em], 74 ksi band'),
    torque('1-1/8-7', '5', 'dry', 'torque', 'lb-ft', 794, 1, 'F7 [em]'),
    torque('1-8', '5', 'dry', 'torque', 'lb-ft', 644, 1, 'F9 [mm], top of the 85 ksi band'),
    torque('1-8', '5', 'oiled', 'torque', 'lb-ft', 483, 1, 'F9 [mm]'),
    torque('1/4-20', '5', 'dry', 'clampLoad', 'lb', 2027, 1, 'F10 [em]'),
    torque('1/4-20', '5', 'dry', 'torque', 'lb-in', 101, 1, 'F10 [mm]'),
    torque('M12', '8.8', 'dry', 'torque', 'lb-ft', 65, 0.5, 'F12 [cx]'),
    torque('M12', '10.9', 'dry', 'torque', 'lb-ft', 93, 0.5, 'F12 [cx]'),
    torque('3/4-16', '5', 'dry', 'clampLoad', 'lb', 0.75 * 85000 * 0.373, 1, 'area and proof of Shigley ex. 8-3 (0.373 in², 85 ksi)'),
    torque('M20', '8.8', 'dry', 'torque', 'lb-ft', 325, 1, 'ISO 898-1 600 MPa over M16'),
  ]));

describe('misprints that are not matched', () => {
  const lbFt = (size: string, grade: string, surface = 'dry') => numberOf('torque', { size, grade, surface }, 'torque', 'lb-ft');
  it('[em] grade 5 1-8: 561 took the wrong band', () => expect(Math.abs(lbFt('1-8', '5') - 561)).toBeGreaterThan(50));
  it('[em] grade 2 3/4-10: 103 took the wrong band, 172 is right', () => {
    expect(lbFt('3/4-10', '2')).toBeCloseTo(172.2, 0);
    expect(numberOf('torque', { size: '3/4-10', grade: '2' }, 'clampLoad', 'lb')).toBe(13778);
  });
  it('[mm] grade 8 1/4-28 dry: 147 lb-in is no 1/0.75 of its own 123', () => {
    expect(numberOf('torque', { size: '1/4-28', grade: '8', surface: 'dry' }, 'torque', 'lb-in')).toBeCloseTo(163.8, 0);
    expect(numberOf('torque', { size: '1/4-28', grade: '8', surface: 'oiled' }, 'torque', 'lb-in')).toBeCloseTo(123, 0);
  });
  it('[pz] grade 8 3/8-24 dry: 893 lb-in is 593', () => {
    expect(numberOf('torque', { size: '3/8-24', grade: '8' }, 'torque', 'lb-in')).toBeCloseTo(592.7, 0);
    expect(numberOf('torque', { size: '3/8-24', grade: '8', surface: 'oiled' }, 'torque', 'lb-in')).toBeCloseTo(444.5, 0);
  });
  it('[ee] tensile area of 7/16-14 is 0.1063, not 0.0163', () =>
    expect(numberOf('boltStrength', { size: '7/16-14', grade: '5' }, 'stressArea', 'sq in')).toBe(0.1063));
  it.each(['7/16-24', '5/8-14'])('[ma] %s is no standard pitch and is said so', (size) => {
    const answer = computeSum('torque', { size, grade: '5' });
    expect('assumed' in answer && answer.assumed.join()).toMatch(/not a usual thread/);
  });
  it('[ma] 75 % of yield is another basis: ours says proof', () => {
    expect(lbFt('3/8-16', '5')).toBeLessThan(32);
    const answer = computeSum('torque', { size: '3/8-16', grade: '5' });
    expect('basis' in answer && answer.basis).toMatch(/75 % of proof/);
  });
  it('[mm] 735 N·m is 542 lb-ft, not 500', () =>
    expect(numberOf('convert', { value: 735, from: 'N·m', to: 'lb-ft' }, 'converted')).toBeCloseTo(542.1, 1));
  it('[cx] 8.8 over M16 is 600 MPa: M20 is not 314 lb-ft, and the basis is said', () => {
    expect(lbFt('M20', '8.8')).toBeGreaterThan(320);
    const answer = computeSum('torque', { size: 'M20', grade: '8.8' });
    expect('assumed' in answer && answer.assumed.join()).toMatch(/600 MPa/);
  });
  it('plating is never turned into dry silently: both conventions stand side by side', () => {
    const given = { size: '1/2-13', grade: '5', surface: 'zinc plated' };
    expect(numberOf('torque', given, 'torque', 'lb-ft', 'chart')).toBeCloseTo((75.4 * 22) / 20, 0);
    expect(numberOf('torque', given, 'torque', 'lb-ft', 'Army')).toBeCloseTo(75.4 * 0.8, 0);
    const answer = computeSum('torque', given);
    expect('assumed' in answer && answer.assumed.join()).toMatch(/disagree/);
  });
});

describe('how a bolt is said', () => {
  const first = (given: Record<string, unknown>) => numberOf('torque', given, 'torque');
  it.each([
    '5/8-11',
    '5/8 11',
    '5/8',
    'UNC 5/8',
    '5/8 coarse',
    '5/8" UNC',
    '.625-11',
    '5/8-11 UNC-2A',
    '5/8-11 x 2',
    'five eighths eleven',
    'five eighths coarse',
  ])('%s is 5/8-11', (size) => expect(first({ size, grade: '5' })).toBe(150.1));
  it.each(['5/8-18', '5/8 fine', '5/8 UNF', 'unf 5/8'])('%s is 5/8-18', (size) => expect(first({ size, grade: '5' })).toBe(170));
  it.each(['M12', 'm12x1.75', 'M12 x 1.75', 'M12-1.75', 'M12 coarse', '12 mm', '12mm x 1.75'])('%s is M12x1.75', (size) =>
    expect(first({ size, grade: '8.8' })).toBe(88),
  );
  it.each(['5', 'grade 5', 'Gr. 5', 'SAE 5', 'SAE J429 grade 5', '5 (three lines)', 'five', 'grade five', 5])('%s is grade 5', (grade) =>
    expect(first({ size: '1/2-13', grade })).toBe(75.4),
  );
  it.each(['10.9', 'class 10.9', 'ISO 10.9', 'ten point nine', 'metric 10.9', 10.9])('%s is class 10.9', (grade) =>
    expect(first({ size: 'M10', grade })).toBe(72.2),
  );
  it.each([
    ['dry', 75.4],
    ['plain', 75.4],
    ['oiled', 56.5],
    ['motor oil', 56.5],
    ['lubed', 56.5],
    ['plated, oiled', 56.5],
    ['antiseize', 56.5],
    ['not oiled', 75.4],
    ['unplated', 75.4],
    ['waxed', 37.7],
  ] as const)('surface %s', (surface, is) => expect(first({ size: '1/2-13', grade: '5', surface })).toBe(is));
  it('1-8 is one inch, 1-64 is a number one', () => {
    expect(numberOf('tapDrill', { size: '1-8' }, 'hole', 'in')).toBeCloseTo(0.878, 3);
    expect(numberOf('tapDrill', { size: '1-64' }, 'hole', 'in')).toBeCloseTo(0.0578, 4);
  });
  it('the unit asked leads', () =>
    expect(computeSum('torque', { size: 'M12', grade: '8.8', unit: 'ft-lb' })).toMatchObject({
      results: [{ name: 'torque', unit: 'lb-ft' }, { name: 'torque', unit: 'N·m' }, { name: 'clampLoad' }, { name: 'clampLoad' }],
    }));
  it('dry and coarse are assumed out loud', () => {
    const answer = computeSum('torque', { size: '1/2', grade: '5' });
    expect('assumed' in answer && answer.assumed).toEqual([expect.stringMatching(/coarse/), expect.stringMatching(/dry.*say oiled/)]);
    expect('caution' in answer && answer.caution).toMatch(/manual beats this/);
  });
  it('a long grade 2 bolt is held to grade 1 (J429, over 6 in)', () => {
    expect(first({ size: '1/2-13', grade: '2', length: 4 })).toBeGreaterThan(first({ size: '1/2-13', grade: '2', length: 7 }) * 1.6);
    expect(first({ size: '1/2-13', grade: '2', length: 180, lengthUnit: 'mm' })).toBe(first({ size: '1/2-13', grade: '1' }));
  });
});

describe('what is asked and what is refused', () => {
  it('size, then grade, one at a time', () => {
    expect(needed('torque', {})).toEqual(['size']);
    expect(needed('torque', { size: '1/2-13' })).toEqual(['grade']);
    expect(needed('torque', { size: 'M10', surface: 'dry' })).toEqual(['grade']);
  });
  it('a surface without a factor is asked about', () =>
    expect(needed('torque', { size: '1/2-13', grade: '5', surface: 'thread locker' })).toEqual(['surface']));
  it.each([
    ['1/2-13', '6', /no grade "6"/],
    ['1/2-13', 'nine', /no grade/],
    ['M10', '8.9', /no class/],
    ['M10', '5', /inch grade/],
    ['1/2-13', '8.8', /metric class/],
    ['1/2-13', 'stainless', /gall/],
    ['2-12', '5', /not listed/],
    ['1/2 BSW', '5', /British/],
    ['1/4 NPT', '5', /pipe thread/],
    ['elbow', '5', /can't read/],
    ['M20', '9.8', /not listed/],
  ])('%s grade %s', (size, grade, why) => expect(refusal('torque', { size, grade })).toMatch(why));
});
