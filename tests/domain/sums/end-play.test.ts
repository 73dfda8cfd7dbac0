import { describe, expect, it } from 'vitest';
import { computeSum } from '../../../domain/sums/compute.ts';
import { checkAll, needed, refusal } from './support.ts';

// Travel = turn / threads per inch; the table of section 4 of the check values.
describe('wheel-bearing nut', () => {
  const play = (pitch: number, flats: number, is: number) => ({
    of: 'endPlay',
    given: { pitch, flats },
    name: 'endPlay',
    unit: 'in',
    is,
    within: 0.00006,
    source: 'W1 to W5',
  });
  checkAll([
    play(12, 0.5, 0.0069),
    play(12, 1, 0.0139),
    play(12, 1.5, 0.0208),
    play(14, 0.5, 0.006),
    play(14, 1, 0.0119),
    play(14, 1.5, 0.0179),
    play(18, 0.5, 0.0046),
    play(18, 1, 0.0093),
    play(18, 1.5, 0.0139),
    play(20, 0.5, 0.0042),
    play(20, 1, 0.0083),
    play(20, 1.5, 0.0125),
    { of: 'endPlay', given: { pitch: 16, measured: 0.007, wanted: 0.003 }, name: 'angle', is: 23, within: 0.5, source: 'W7' },
    { of: 'endPlay', given: { pitch: 16, measured: 0.007, wanted: 0.003 }, name: 'turn', is: 0.064, within: 0.0005, source: 'W7' },
    {
      of: 'endPlay',
      given: { pitch: 1.5, pitchUnit: 'mm', flats: 1 },
      name: 'endPlay',
      unit: 'mm',
      is: 0.25,
      within: 0,
      source: 'metric thread',
    },
  ]);
  it('W6 one slot is over the whole window, and that is said with why to measure', () => {
    for (const pitch of [12, 14, 18, 20]) {
      const answer = computeSum('endPlay', { pitch, flats: 1 });
      expect('also' in answer && answer.also?.join()).toMatch(/0\.001 to 0\.005/);
      expect('caution' in answer && answer.caution).toMatch(/looser slot, then measure/);
    }
  });
  it('asks', () => {
    expect(needed('endPlay', {})).toEqual(['pitch']);
    expect(needed('endPlay', { pitch: 16 })).toEqual(['flats']);
    expect(refusal('endPlay', { pitch: 200, flats: 1 })).toMatch(/no spindle thread/);
  });
});
