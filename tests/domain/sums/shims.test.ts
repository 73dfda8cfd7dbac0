import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeSum } from '../../../domain/sums/compute.ts';
import { fewestLeaves, stacksFor, type Leaf } from '../../../domain/sums/shim-stacks.ts';
import { needed, refusal, results, valueOf } from './support.ts';

const STOCK = [0.001, 0.002, 0.003, 0.005, 0.01, 0.015, 0.02, 0.031];
const stacks = (target: number, have: number[], more: Record<string, unknown> = {}) =>
  results('shims', { target, have, targetUnit: 'in', ...more })
    .filter((each) => each.name === 'stack')
    .map((each) => each.value as number[]);
const fewest = (target: number, have: number[]) => {
  const all = stacks(target, have);
  return all
    .filter((each) => each.length === all[0]?.length)
    .map((each) => each.join('+'))
    .sort();
};

// S1 to S7: worked by hand from the stock list of section 5 of the shop's check values.
describe('fewest leaves', () => {
  it('S1 .047', () => expect(stacks(0.047, STOCK)[0]).toEqual([0.031, 0.015, 0.001]));
  it('S2 .018', () => expect(stacks(0.018, STOCK)[0]).toEqual([0.015, 0.003]));
  it('S3 .026 three ways', () => expect(fewest(0.026, STOCK)).toEqual(['0.015+0.01+0.001', '0.02+0.003+0.003', '0.02+0.005+0.001']));
  it('S4 .009 three ways', () => expect(fewest(0.009, STOCK)).toEqual(['0.003+0.003+0.003', '0.005+0.002+0.002', '0.005+0.003+0.001']));
  it('S6 .037', () =>
    expect(fewest(0.037, STOCK)).toEqual(expect.arrayContaining(['0.02+0.015+0.002', '0.031+0.003+0.003', '0.031+0.005+0.001'])));
  it('S7 greedy takes three for .030, two will do', () => expect(stacks(0.03, [0.025, 0.02, 0.01, 0.004, 0.001])[0]).toEqual([0.02, 0.01]));
  it('half thousandths add up', () =>
    expect(stacks(0.003, [0.001, 0.0015, 0.002])).toEqual(
      expect.arrayContaining([
        [0.002, 0.001],
        [0.0015, 0.0015],
      ]),
    ));
  it('millimetres', () =>
    expect(valueOf('shims', { target: 0.35, targetUnit: 'mm', have: [0.05, 0.1, 0.2] }, 'stack')).toEqual([0.2, 0.1, 0.05]));
  it('more leaves come after fewer', () => {
    const counts = stacks(0.011, [0.002, 0.003, 0.005]).map((each) => each.length);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
  });
});

describe('leaves that are counted', () => {
  it('a leaf named twice counts them', () => expect(stacks(0.02, [0.01, 0.01, 0.005])[0]).toEqual([0.01, 0.01]));
  it('counts beside the list', () =>
    expect(stacks(0.015, [0.005, 0.001], { counts: [2, 9] })[0]).toEqual([0.005, 0.005, 0.001, 0.001, 0.001, 0.001, 0.001]));
  it('none left of the one that would do', () => expect(stacks(0.01, [0.01, 0.005], { counts: [0, 2] })[0]).toEqual([0.005, 0.005]));
});

describe('no stack makes it', () => {
  it('says so and gives the nearest', () => {
    const answer = computeSum('shims', { target: 0.0075, targetUnit: 'in', have: [0.002, 0.004] });
    expect('basis' in answer && answer.basis).toMatch(/no stack.*0\.0005/);
    expect(valueOf('shims', { target: 0.0075, targetUnit: 'in', have: [0.002, 0.004] }, 'off')).toBe(0.0005);
  });
  it('a tolerance lets a near one count', () => {
    const answer = computeSum('shims', { target: 0.0075, targetUnit: 'in', have: [0.002, 0.004], tolerance: 0.001 });
    expect('basis' in answer && answer.basis).toMatch(/fewest/);
  });
  it('far too thin leaves are refused', () =>
    expect(refusal('shims', { target: 0.4, targetUnit: 'in', have: [0.001] })).toMatch(/thicker/));
  it('a drawer of odd leaves is searched without end in sight only for so long', () => {
    const have = Array.from({ length: 60 }, (_, i) => 0.002 + i / 10_000);
    expect(stacks(0.09, have, { counts: have.map(() => 1e6) }).length).toBeGreaterThan(0);
  });
  it('no shim stack at all', () => expect(refusal('shims', { target: 40, targetUnit: 'in', have: [0.01] })).toMatch(/spacer/));
});

describe('asked and refused', () => {
  it('target, then leaves', () => {
    expect(needed('shims', {})).toEqual(['target']);
    expect(needed('shims', { target: 0.01 })).toEqual(['have']);
    expect(needed('shims', { target: 0.01, have: [] })).toEqual(['have']);
  });
  it.each([
    [{ target: 0.01, have: 'some' }, /list/],
    [{ target: 0.01, have: [0.001, -1] }, /over zero/],
    [{ target: 1, targetUnit: 'ft', have: [1] }, /inches or millimetres/],
  ])('%j', (given, why) => expect(refusal('shims', given)).toMatch(why));
});

/** Every multiset of at most `most` leaves, the slow and plain way. */
function bruteForce(leaves: readonly Leaf[], total: number, most: number): number[][] {
  const found: number[][] = [];
  const grow = (stack: number[], from: number): void => {
    const sum = stack.reduce((a, b) => a + b, 0);
    if (sum === total && stack.length > 0) found.push(stack);
    if (stack.length === most) return;
    leaves.forEach((leaf, i) => {
      if (i >= from && stack.filter((each) => each === leaf.thickness).length < leaf.count) grow([...stack, leaf.thickness], i);
    });
  };
  grow([], 0);
  return found;
}

describe('against brute force', () => {
  const leaf = fc.record({
    thickness: fc.integer({ min: 1, max: 20 }),
    count: fc.oneof(fc.constant(Infinity), fc.integer({ min: 1, max: 3 })),
  });
  const stock = fc.uniqueArray(leaf, { minLength: 1, maxLength: 5, selector: ({ thickness }) => thickness });
  const key = (stack: readonly number[]) => [...stack].sort((a, b) => b - a).join('+');
  it('every stack and no other, and the least number of leaves', () =>
    fc.assert(
      fc.property(stock, fc.integer({ min: 1, max: 60 }), (leaves, total) => {
        const brute = bruteForce(leaves, total, 4);
        expect(stacksFor(leaves, total, 4, 100_000).map(key).sort()).toEqual(brute.map(key).sort());
        const least = fewestLeaves(leaves, total, 60)[total] ?? Infinity;
        if (brute.length > 0) expect(least).toBe(Math.min(...brute.map((each) => each.length)));
        else expect(least).toBeGreaterThan(4);
      }),
      { numRuns: 300 },
    ));
});
