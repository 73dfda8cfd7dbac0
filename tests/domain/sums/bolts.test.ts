import { describe, expect, it } from 'vitest';
import { inchStressArea, metricStressArea } from '../../../domain/sums/thread.ts';
import { UNIFIED } from '../../../domain/sums/thread-series.ts';
import { checkAll, needed, numberOf, valueOf, type Case } from './support.ts';

const load = (size: string, grade: string, name: string, unit: string, is: number, within: number, source: string): Case => ({
  of: 'boltStrength',
  given: { size, grade },
  name,
  unit,
  is,
  within,
  source,
});

describe('loads', () =>
  checkAll([
    load('1/2-13', 'A307', 'tensileLoad', 'lb', 8500, 50, 'F14 ASTM A307 load table [st]'),
    load('3/4-10', 'A307', 'tensileLoad', 'lb', 20050, 50, 'F15 ASTM A307 load table [st]'),
    // ISO 898-1 proof loads as printed [ss][et]; the two printings differ by up to 0.5 %, so 1 %.
    ...(
      [
        ['M5', 8230],
        ['M6', 11600],
        ['M8', 21200],
        ['M10', 33700],
        ['M12', 48900],
        ['M14', 66700],
        ['M16', 91000],
      ] as const
    ).map(([size, is]) => load(size, '8.8', 'proofLoad', 'N', is, is / 100, 'ISO 898-1 [ss]')),
    ...(
      [
        ['M5', 11800],
        ['M6', 16700],
        ['M8', 30400],
        ['M10', 48100],
        ['M12', 70000],
        ['M14', 95500],
        ['M16', 130000],
      ] as const
    ).map(([size, is]) => load(size, '10.9', 'proofLoad', 'N', is, is / 100, 'ISO 898-1 [ss]')),
    ...(
      [
        ['M5', 13800],
        ['M6', 19500],
        ['M8', 35500],
        ['M10', 56300],
        ['M12', 81800],
        ['M14', 112000],
      ] as const
    ).map(([size, is]) => load(size, '12.9', 'proofLoad', 'N', is, is / 100, 'ISO 898-1 [ss]')),
    ...(
      [
        ['M5', 7380],
        ['M6', 10400],
        ['M8', 19000],
        ['M10', 30200],
        ['M12', 43800],
        ['M14', 59800],
        ['M16', 81600],
        ['M18', 99800],
        ['M20', 127000],
        ['M22', 158000],
        ['M24', 184000],
      ] as const
    ).map(([size, is]) => load(size, '5.8', 'tensileLoad', 'N', is, is / 100, 'ISO 898-1 [et]')),
  ]));

describe('stress areas', () => {
  it('the printed inch areas are the formula within 0.15 % (ASME B1.1)', () => {
    for (const { d, coarse, fine, coarseArea, fineArea } of UNIFIED) {
      for (const [tpi, area] of [
        [coarse, coarseArea],
        [fine, fineArea],
      ] as const)
        expect(Math.abs(inchStressArea(d, tpi ?? 1) / (area ?? 1) - 1)).toBeLessThan(0.0016);
    }
  });
  it.each([
    [5, 0.8, 14.2],
    [6, 1, 20.1],
    [8, 1.25, 36.6],
    [10, 1.5, 58],
    [12, 1.75, 84.3],
    [14, 2, 115],
    [16, 2, 157],
    [18, 2.5, 192],
    [20, 2.5, 245],
    [22, 2.5, 303],
    [24, 3, 353],
  ])('M%s x %s is %s mm² (ISO 898-1 [ss])', (d, pitch, area) => expect(metricStressArea(d, pitch)).toBe(area));
});

describe("a substitute bolt (rules of a maker's manual: same or higher, tightened to the old class, shear bolts identical)", () => {
  const old = { size: '1/2-13', grade: '5' };
  it('higher class takes the old torque', () => {
    expect(valueOf('substitute', { ...old, newGrade: '8' }, 'verdict')).toMatch(/higher class/);
    expect(numberOf('substitute', { ...old, newGrade: '8' }, 'torque', 'lb-ft')).toBe(75.4);
  });
  it('lower is no', () => expect(valueOf('substitute', { ...old, newGrade: '2' }, 'verdict')).toMatch(/weaker/));
  it('another thread is no', () =>
    expect(valueOf('substitute', { ...old, newSize: '1/2-20', newGrade: '8' }, 'verdict')).toMatch(/thread differs/));
  it('a shear bolt only by its own class', () =>
    expect(valueOf('substitute', { ...old, newGrade: '8', joint: 'shear' }, 'verdict')).toMatch(/same class/));
  it('shorter is no', () =>
    expect(valueOf('substitute', { ...old, newGrade: '5', length: 3, newLength: 2.5 }, 'verdict')).toMatch(/shorter/));
  it('asks for the new grade by its own name', () => expect(needed('substitute', old)).toEqual(['newGrade']));
});
