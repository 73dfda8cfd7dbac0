import { describe, expect, it } from 'vitest';
import { criticalPath, type Timed } from '../../../domain/plan/cpm.ts';
import { meanOf, type ThreePoint } from '../../../domain/plan/three-point.ts';
import { arcs, cases, points } from './tools/published.ts';

function solved(activities: Timed[]) {
  const result = criticalPath(activities);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}
const timed = (list: { id: string; points: ThreePoint; after: string[] }[]) =>
  list.map(({ id, points: p, after }) => ({ id, duration: meanOf(p), after }));
const floatsOf = (activities: Timed[], which: 'total' | 'free') => {
  const { floats } = solved(activities);
  return activities.map(({ id }) => floats.get(id)![which]);
};

describe('critical path: published examples', () => {
  // Taylor, Introduction to Management Science, ch. 8 solutions, problem 5: length 20 and slack as printed; free float worked by hand.
  it('C1', () => {
    const list = arcs('1-2 7; 1-3 10; 2-4 6; 3-4 5; 3-5 4; 4-5 3; 5-6 2');
    expect(solved(list).length).toBe(20);
    expect(floatsOf(list, 'total')).toEqual([2, 0, 2, 0, 4, 0, 0]);
    expect(floatsOf(list, 'free')).toEqual([0, 0, 2, 0, 4, 0, 0]);
  });

  // Same, problem 6.
  it('C2', () => {
    const list = arcs('1-2 8; 1-3 10; 1-4 9; 2-5 6; 2-6 4; 3-5 5; 4-5 0; 4-7 7; 5-7 12; 5-8 15; 6-9 18; 7-8 4; 8-9 7');
    expect(solved(list).length).toBe(38);
    expect(floatsOf(list, 'total')).toEqual([1, 0, 6, 1, 8, 0, 6, 11, 0, 1, 8, 0, 0]);
    expect(floatsOf(list, 'free')).toEqual([0, 0, 0, 1, 0, 0, 6, 11, 0, 1, 8, 0, 0]);
    expect(solved(list).critical).toEqual(['1-3', '3-5', '5-7', '7-8', '8-9']);
  });

  // ece.nu course page on scheduling: 27, A C D, slack of B and E 2.
  it('C3', () => {
    const list: Timed[] = [
      { id: 'A', duration: 12, after: [] }, { id: 'B', duration: 10, after: [] }, { id: 'C', duration: 10, after: ['A', 'B'] },
      { id: 'D', duration: 5, after: ['C'] }, { id: 'E', duration: 3, after: ['C'] },
    ];
    expect(solved(list).length).toBe(27);
    expect(solved(list).critical).toEqual(['A', 'C', 'D']);
    expect(floatsOf(list, 'total')).toEqual([0, 2, 0, 0, 2]);
    expect(floatsOf(list, 'free')).toEqual([0, 2, 0, 0, 2]);
  });

  it('says the path of a circle, and which name is unknown', () => {
    const circle = criticalPath([{ id: 'a', duration: 1, after: ['b'] }, { id: 'b', duration: 1, after: ['a'] }]);
    expect(circle).toMatchObject({ ok: false, why: 'circle', path: ['b', 'a', 'b'] });
    expect(criticalPath([{ id: 'a', duration: 1, after: ['x'] }])).toEqual({ ok: false, why: 'unknown', id: 'a', after: 'x' });
  });
});

describe('PERT: published examples', () => {
  it.each(cases)('$name: means, length, critical path', (example) => {
    const result = solved(timed(example.activities));
    expect(result.length).toBeCloseTo(example.length, 2);
    expect(result.critical).toEqual(example.critical);
    const byId = new Map(example.activities.map((activity) => [activity.id, activity.points]));
    for (const [id, mean] of Object.entries(example.means)) expect(meanOf(byId.get(id)!)).toBeCloseTo(mean, 2);
    for (const [id, slack] of Object.entries(example.slack)) {
      expect(Math.abs(result.floats.get(id)!.total - slack), `slack of ${id}`).toBeLessThan(0.006);
    }
  });

  // coursehero p2vl9tn prints all three paths of P3.
  it('P3: every path', () => {
    const p = cases.find(({ name }) => name.startsWith('P3'))!;
    const path = (ids: string) => [...ids].map((id) => p.activities.find((activity) => activity.id === id)!.points);
    const length = (ids: string) => path(ids).reduce((sum, x) => sum + meanOf(x), 0);
    expect(['ACE', 'DFG', 'BHI'].map((ids) => +length(ids).toFixed(2))).toEqual([20.5, 21.5, 19.5]);
  });

  it('reads three points in any order of size', () => {
    expect(meanOf(points(2, 5, 14))).toBe(6);
  });
});
