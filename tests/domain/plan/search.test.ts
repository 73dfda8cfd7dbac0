import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileNetwork, lowerBound, type Activity, type Network } from '../../../domain/plan/network.ts';
import { search } from '../../../domain/plan/search.ts';
import { shortestMakespan } from './tools/brute-force.ts';
import { faultIn } from './tools/check.ts';
import { madeUpProject } from './tools/generate.ts';

function compiled(activities: Activity[], capacities: number[]): Network {
  const result = compileNetwork(activities, capacities);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result.network;
}

/** Up to eight activities, one or two resources, any acyclic precedence. */
const small = fc.record({
  capacities: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 2 }),
  rows: fc.array(fc.record({
    duration: fc.integer({ min: 1, max: 4 }), needs: fc.tuple(fc.nat(4), fc.nat(4)), before: fc.array(fc.nat(7), { maxLength: 2 }),
  }), { minLength: 1, maxLength: 7 }),
}).map(({ capacities, rows }) => ({
  capacities,
  activities: rows.map(({ duration, needs, before }, i): Activity => ({
    id: `a${i}`, duration,
    needs: capacities.map((capacity, r) => Math.min(capacity, needs[r]!)),
    after: [...new Set(before.filter((b) => b < i).map((b) => `a${b}`))],
  })),
}));

describe('search for a short schedule', () => {
  it('finds what trying everything finds', () => {
    fc.assert(fc.property(small, ({ activities, capacities }) => {
      const network = compiled(activities, capacities);
      const plan = search(network, 500);
      expect(faultIn(network, plan.start, plan.makespan)).toBeUndefined();
      expect(plan.makespan).toBe(shortestMakespan(activities, capacities));
    }), { numRuns: 150, seed: 20 });
  });

  it('finds it for eight too', () => {
    for (let seed = 1; seed <= 8; seed++) {
      const { activities, capacities } = madeUpProject(8, seed, 2);
      expect(search(compiled(activities, capacities), 500).makespan, `seed ${seed}`).toBe(shortestMakespan(activities, capacities));
    }
  });

  it('gives the same plan for the same seed, and keeps to its number of schedules', () => {
    const { activities, capacities } = madeUpProject(60, 3);
    const network = compiled(activities, capacities);
    const once = search(network, 333, 7);
    expect(search(network, 333, 7)).toEqual(once);
    expect(once.schedules).toBe(333);
    expect(search(network, 1).schedules).toBe(1);
  });

  it.each([1, 2, 3, 5, 7])('more schedules never make it worse than one, and no plan beats the lower bound (seed %i)', (seed) => {
    const { activities, capacities } = madeUpProject(80, seed);
    const network = compiled(activities, capacities);
    const single = search(network, 1);
    const many = search(network, 600);
    expect(faultIn(network, many.start, many.makespan)).toBeUndefined();
    expect(many.makespan).toBeLessThanOrEqual(single.makespan);
    expect(many.makespan).toBeGreaterThanOrEqual(lowerBound(network));
  });

  it('plans a thousand jobs feasibly', () => {
    const { activities, capacities } = madeUpProject(1000, 1);
    const network = compiled(activities, capacities);
    const plan = search(network, 50);
    expect(faultIn(network, plan.start, plan.makespan)).toBeUndefined();
  });
});

describe('an impossible project is a value that says why', () => {
  const a = (id: string, after: string[] = [], needs = [1], duration = 1): Activity => ({ id, duration, needs, after });
  it.each([
    ['a circle', [a('x', ['z']), a('y', ['x']), a('z', ['y'])], { why: 'circle', path: ['z', 'x', 'y', 'z'] }],
    ['an unknown name', [a('x', ['w'])], { why: 'unknown', id: 'x', after: 'w' }],
    ['a name used twice', [a('x'), a('x')], { why: 'duplicate', id: 'x' }],
    ['more than there is', [a('x', [], [3])], { why: 'tooMuch', id: 'x', resource: 0 }],
    ['half a unit of time', [a('x', [], [1], 0.5)], { why: 'notWhole', id: 'x' }],
  ])('%s', (_, activities, expected) => {
    expect(compileNetwork(activities, [2])).toEqual({ ok: false, ...expected });
  });
});
