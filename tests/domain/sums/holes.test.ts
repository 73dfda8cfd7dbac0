import { describe, expect, it } from 'vitest';
import { needed, numberOf, refusal, valueOf } from './support.ts';

// ASME B18.2.8, Machinery's Handbook 31 p. 1741 and a supplier's chart [je].
const CLEARANCE: readonly (readonly [string, number, string, number])[] = [
  ['1/4', 0.266, '9/32', 0.297],
  ['5/16', 0.328, '11/32', 0.359],
  ['3/8', 0.391, '13/32', 0.422],
  ['7/16', 0.453, '15/32', 0.484],
  ['1/2', 0.531, '9/16', 0.609],
  ['5/8', 0.656, '11/16', 0.734],
  ['3/4', 0.781, '13/16', 0.906],
  ['7/8', 0.906, '15/16', 1.031],
  ['1', 1.031, '1-3/32', 1.156],
];
describe('clearance holes', () => {
  it.each(CLEARANCE)('%s: close %s, normal %s, loose %s', (size, close, normal, loose) => {
    expect(numberOf('clearanceHole', { size, fit: 'close' }, 'hole', 'in')).toBeCloseTo(close, 2);
    expect(valueOf('clearanceHole', { size }, 'drill')).toBe(normal);
    expect(numberOf('clearanceHole', { size, fit: 'loose' }, 'hole', 'in')).toBeCloseTo(loose, 2);
  });
  it('one web chart (1/2 by 17/32, 5/8 by 21/32 normal) is not B18.2.8', () => {
    expect(valueOf('clearanceHole', { size: '1/2' }, 'drill')).not.toBe('17/32');
    expect(valueOf('clearanceHole', { size: '5/8' }, 'drill')).not.toBe('21/32');
  });
  // The same page's list of loose holes and of normal drills for numbered screws.
  it.each([
    ['1-1/8', 1.312],
    ['1-1/4', 1.438],
    ['1-3/8', 1.609],
    ['1-1/2', 1.734],
    ['#0', 0.094],
    ['#4', 0.144],
    ['#8', 0.213],
  ])('%s loose is %s', (size, hole) =>
    expect(Math.abs(numberOf('clearanceHole', { size, fit: 'loose' }, 'hole', 'in') - hole)).toBeLessThan(0.001),
  );
  it.each([
    ['#0', '#48'],
    ['#1', '#43'],
    ['#2', '#38'],
    ['#3', '#32'],
    ['#4', '#30'],
    ['#5', '5/32'],
    ['#6', '#18'],
    ['#8', '#9'],
    ['#10', '#2'],
  ])('%s normal is drilled %s', (size, drill) => expect(valueOf('clearanceHole', { size }, 'drill')).toBe(drill));
  it('metric by ISO 273 (from memory)', () => expect(numberOf('clearanceHole', { size: 'M10', fit: 'medium' }, 'hole', 'mm')).toBe(11));
  it('asks', () => expect(needed('clearanceHole', {})).toEqual(['size']));
});

// ASME B1.20.1 as reprinted [tz][md2], reamer column [dk].
describe('NPT', () => {
  it.each([
    ['1/8', 27, 0.405, 'R', '21/64'],
    ['1/4', 18, 0.54, '7/16', '27/64'],
    ['3/8', 18, 0.675, '37/64', '9/16'],
    ['1/2', 14, 0.84, '23/32', '11/16'],
    ['3/4', 14, 1.05, '59/64', '57/64'],
    ['1', 11.5, 1.315, '1-5/32', '1-1/8'],
  ] as const)('%s', (size, tpi, od, drill, reamed) => {
    expect(numberOf('pipeThread', { size }, 'pitch')).toBe(tpi);
    expect(numberOf('pipeThread', { size: `${size} NPT` }, 'outside', 'in')).toBe(od);
    expect([valueOf('pipeThread', { size: `${size}-${tpi} npt` }, 'drill'), valueOf('pipeThread', { size }, 'drillReamed')]).toEqual([
      drill,
      reamed,
    ]);
  });
  it("the 1/4 drill is under the thread's small end, .47739", () =>
    expect(numberOf('pipeThread', { size: '1/4' }, 'hole', 'in')).toBeLessThan(0.47739));
  it('BSP is refused', () => expect(refusal('pipeThread', { size: '1/4 BSP' })).toMatch(/55°/));
});

describe('a pipe tap asked of as a thread', () => {
  it.each(['1/4 NPT', '1/4-18 NPT', '1/4" pipe'])('%s', (size) => expect(valueOf('tapDrill', { size }, 'drill')).toBe('7/16'));
});
