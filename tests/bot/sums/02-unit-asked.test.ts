import { describe, expect, it } from 'vitest';
import { computeSum } from '../../../domain/sums/compute.ts';
import { unitAsked } from '../../../bot/turn/unit-asked.ts';

describe('the unit asked', () => {
  it.each([
    ['torque for a 1/2-13 grade 5 in newton metres', 'N·m'],
    ['how many inch pounds for a quarter twenty', 'lb-in'],
    ['belt length in mm for a 6 inch and a 3 inch pulley at 14 in', 'mm'],
    ['how many thou of end play', 'in'],
    ['what belt goes on pulleys of 6 in and 3 in', undefined],
    ['torque a grade 5 in the head', undefined],
  ])('%s', (text, unit) => expect(unitAsked(text)).toBe(unit));

  const first = (given: Record<string, unknown>, of = 'torque') => {
    const answer = computeSum(of, given);
    return 'results' in answer ? answer.results[0] : answer;
  };
  // 75.4 lb-ft of grade 5 1/2-13 [em] is 102.2 N·m (1.3558 N·m to the lb-ft).
  it('comes first where the sum gives it', () => expect(first({ size: '1/2-13', grade: '5', unit: 'N·m' })).toMatchObject({ value: 102.2, unit: 'N·m' }));
  // 1 kgf·m is 7.23301 lb-ft.
  it('is converted where it does not', () => {
    const got = first({ size: '1/2-13', grade: '5', unit: 'kgf·m' });
    expect(got).toMatchObject({ name: 'torque', unit: 'kgf·m' });
    expect((got as { value: number }).value).toBeCloseTo(75.4 / 7.23301, 2);
  });
  it('leaves degrees of a rise alone', () =>
    expect(first({ diameter: 12, interference: 0.018, material: 'steel', unit: 'K' }, 'shrinkFit')).toMatchObject({ name: 'rise', unit: '°F' }));
});
