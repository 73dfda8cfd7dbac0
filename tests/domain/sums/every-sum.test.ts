import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sumAnswer } from '../../../domain/sums/answer.ts';
import { CONTRACT_SUMS, SUMS } from '../../../domain/sums/catalogue.ts';
import { computeSum } from '../../../domain/sums/compute.ts';

/** Where work can hurt, the answer must carry a caution: one sound question for each such sum. */
const CAN_HURT: Record<string, Record<string, unknown>> = {
  torque: { size: '1/2-13', grade: '5' },
  belt: { d1: 4, d2: 6, centre: 20 },
  tapDrill: { size: '1/2-13' },
  shims: { target: 0.01, have: [0.005] },
  voltDrop: { volts: 6, amps: 5, length: 5, gauge: 12 },
  dewPoint: { temp: 70, humidity: 50 },
  antifreeze: { percent: 50 },
  sling: { load: 900, angle: 60 },
  endPlay: { pitch: 16, flats: 1 },
  shrinkFit: { diameter: 2, interference: 0.002, material: 'steel' },
  coverage: { solids: 50, thickness: 2 },
  boltStrength: { size: '1/2-13', grade: '5' },
  substitute: { size: '1/2-13', grade: '5', newGrade: '8' },
  boiling: { cap: 7 },
  pressureLeak: { pressure1: 7, temp1: 70, temp2: 60 },
  fuse: { amps: 10 },
  ohmsLaw: { volts: 6, amps: 2 },
  sixToTwelve: { amps: 3 },
  battery: { volts: 12.5 },
  alternatorSpeed: { d1: 6, d2: 3, rpm1: 1500 },
  slingCapacity: { rating: 3000, angle: 60 },
  twoPoint: { load: 900, a: 10, b: 20 },
  isoFit: { diameter: 50, fit: 'H7/p6' },
  pressFit: { holeLow: 1, shaftLow: 1.001 },
  bushing: { diameter: 1 },
  hydraulic: { bore: 3, pressure: 2000 },
  ringGap: { bore: 4 },
  roadSpeed: { radius: 20 },
  twoStroke: { ratio: 50 },
  filmThickness: { dry: 2, solids: 50 },
  paintMix: { parts: [4, 1], total: 20 },
  sheave: { d1: 4, d2: 8, rpm1: 600 },
  beltTension: { span: 20 },
  beltNumber: { section: 'A', number: 42 },
  gearing: { rpm1: 1000, rpm2: 500 },
  adjustableSheave: { d1: 4, turns: 1, pitch: 20 },
  compression: { bore: 3, stroke: 4, ratio: 7 },
  bearingGrease: { diameter: 60, width: 15 },
};

describe('the table of sums', () => {
  it('holds the fourteen of the contract, each name once', () => {
    expect(CONTRACT_SUMS.map(({ of }) => of)).toEqual([
      'torque',
      'belt',
      'sheave',
      'tapDrill',
      'shims',
      'voltDrop',
      'dewPoint',
      'antifreeze',
      'sling',
      'endPlay',
      'shrinkFit',
      'coverage',
      'convert',
      'landed',
    ]);
    expect(new Set(SUMS.map(({ of }) => of)).size).toBe(SUMS.length);
  });
  it.each(SUMS.map((sum) => [sum.of, sum] as const))('%s says what it answers and asks for something when given nothing', (of, sum) => {
    expect(sum.answers.length).toBeGreaterThan(10);
    expect(Object.keys(sum.fields).length).toBeGreaterThan(0);
    const answer = sumAnswer.parse(computeSum(of, {}));
    expect('needs' in answer && Object.keys(sum.fields)).toEqual(
      expect.arrayContaining('needs' in answer ? answer.needs : ['nothing asked']),
    );
  });
  it('an unknown sum is refused in a sentence', () =>
    expect(computeSum('horoscope', {})).toEqual({ kind: 'sum', of: 'horoscope', refused: 'I have no sum called "horoscope".' }));
});

describe('what can hurt', () => {
  it.each(Object.entries(CAN_HURT))('%s carries a one-line caution', (of, given) => {
    const answer = sumAnswer.parse(computeSum(of, given));
    if (!('results' in answer)) throw new Error(JSON.stringify(answer));
    expect(answer.caution).toMatch(/\.$/);
    expect(answer.caution).not.toMatch(/\n/);
    expect(answer.source.length).toBeGreaterThan(3);
  });
});

describe('nothing a person says breaks it', () => {
  const names = [...new Set(SUMS.flatMap(({ fields }) => Object.keys(fields).flatMap((field) => [field, `${field}Unit`])))];
  const anything = fc.oneof(
    fc.double(),
    fc.integer(),
    fc.string(),
    fc.constantFrom('in', 'mm', 'psi', '5', '8.8', 'M10', '1/2-13', 'steel', '°F', 'qt', 'H7/p6', '3/8', 'A'),
    fc.constant(null),
    fc.array(fc.double({ min: 0, max: 1 }), { maxLength: 4 }),
    fc.boolean(),
  );
  it('every answer is one of the three kinds', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...SUMS.map(({ of }) => of)),
        fc.dictionary(fc.constantFrom(...names), anything, { maxKeys: 9 }),
        (of, given) => {
          const answer = sumAnswer.parse(computeSum(of, given));
          if ('refused' in answer) expect(answer.refused).toMatch(/[.?]$/);
          else if ('needs' in answer) expect(answer.question).toMatch(/[.?]$/);
          else expect(answer.basis.length).toBeGreaterThan(3);
        },
      ),
      { numRuns: 4000 },
    ));
  it('a blank is a field not given', () =>
    expect(computeSum('torque', { size: '1/2-13', grade: null, surface: '' })).toMatchObject({ needs: ['grade'] }));
  it('sound figures in the ordinary range of every numeric field never give nonsense', () =>
    fc.assert(
      fc.property(fc.constantFrom(...SUMS), fc.infiniteStream(fc.double({ min: 0.01, max: 100, noNaN: true })), (sum, numbers) => {
        const given = Object.fromEntries(Object.keys(sum.fields).map((field) => [field, numbers.next().value]));
        const answer = sumAnswer.parse(computeSum(sum.of, given));
        if ('results' in answer) for (const { value } of answer.results) expect(JSON.stringify(value)).not.toMatch(/null|NaN|Infinity/);
      }),
      { numRuns: 3000 },
    ));
});
