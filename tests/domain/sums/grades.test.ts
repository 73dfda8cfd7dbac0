import { describe, expect, it } from 'vitest';
import { BOLT_GRADES } from '../../../domain/sums/bolt-grades.ts';

// EN ISO 898-1:2013 as reprinted by a fastener wholesaler (nfgab.se) and by usefastener 403: class, proof, yield, tensile, MPa.
const CLASSES: readonly (readonly [string, number, number, number, number])[] = [
  ['4.6', 10, 225, 240, 400],
  ['4.8', 10, 310, 340, 420],
  ['5.6', 10, 280, 300, 500],
  ['5.8', 10, 380, 420, 520],
  ['6.8', 10, 440, 480, 600],
  ['8.8', 16, 580, 640, 800],
  ['8.8', 20, 600, 660, 830],
  ['9.8', 10, 650, 720, 900],
  ['10.9', 10, 830, 940, 1040],
  ['12.9', 10, 970, 1100, 1220],
];

// SAE J429 as reprinted [cb][ms], psi: grade, size in its band.
const GRADES: readonly (readonly [string, number, number, number, number])[] = [
  ['1', 1.5, 33000, 36000, 60000],
  ['2', 0.75, 55000, 57000, 74000],
  ['2', 0.875, 33000, 36000, 60000],
  ['5', 1, 85000, 92000, 120000],
  ['5', 1.125, 74000, 81000, 105000],
  ['8', 1.5, 120000, 130000, 150000],
  ['A307', 0.5, 33000, 36000, 60000],
  ['A449', 1, 85000, 92000, 120000],
  ['A449', 1.25, 74000, 81000, 105000],
  ['A449', 2, 55000, 58000, 90000],
];

describe('strengths', () => {
  it.each([...CLASSES, ...GRADES])('%s at %s: proof %s, yield %s, tensile %s', (name, size, proof, yieldPoint, tensile) => {
    const bands = BOLT_GRADES.find((each) => each.name === name)?.bands ?? [];
    expect(bands.find(({ to }) => size <= to)).toMatchObject({ proof, yield: yieldPoint, tensile });
  });
  it('B7 has no proof load printed [ab][wx]', () => {
    expect(BOLT_GRADES.find(({ name }) => name === 'B7')?.bands).toEqual([
      { from: 0.25, to: 2.5, proof: undefined, yield: 105000, tensile: 125000 },
    ]);
  });
});
