import { describe, expect, it } from 'vitest';
import { LETTER_DRILLS, NUMBER_DRILLS } from '../../../domain/sums/drill-sizes.ts';
import { checkAll, needed, numberOf, refusal, valueOf, type Case } from './support.ts';

const tap = (size: string, drill: string, percent: number, source: string): Case[] => [
  { of: 'tapDrill', given: { size }, name: 'drill', is: drill, source },
  { of: 'tapDrill', given: { size }, name: 'percent', is: percent, within: 0.6, source: 'worked from the printed drill' },
];
const left = (size: string, drill: string, percent: number, within: number, source: string): Case => ({
  of: 'tapDrill',
  given: { size, drill },
  name: 'percent',
  unit: '%',
  is: percent,
  within,
  source,
});

// Drills of three printed charts [mf][dl][bw]; percentages worked from them.
describe('the usual tap drill', () =>
  checkAll([
    ...tap('1/4-20', '#7', 75.4, '[mf]'),
    ...tap('1/4-28', '#3', 79.8, '[mf]'),
    ...tap('5/16-18', 'F', 76.9, '[mf]'),
    ...tap('5/16-24', 'I', 74.8, '[mf]'),
    ...tap('3/8-16', '5/16', 77, '[mf]'),
    ...tap('3/8-24', 'Q', 79.4, '[mf]'),
    ...tap('7/16-14', 'U', 74.9, '[mf]'),
    ...tap('7/16-20', '25/64', 72.2, '[mf]'),
    ...tap('1/2-13', '27/64', 78.2, '[mf]'),
    ...tap('1/2-20', '29/64', 72.2, '[mf]'),
    ...tap('9/16-12', '31/64', 72.2, '[mf]'),
    ...tap('5/8-11', '17/32', 79.4, '[mf]'),
    ...tap('3/4-10', '21/32', 72.2, '[bw]'),
    ...tap('3/4-16', '11/16', 77, '[bw]'),
    ...tap('7/8-9', '49/64', 75.8, 'from memory'),
    ...tap('1-8', '7/8', 77, 'from memory'),
    ...tap('M6', '5 mm', 77, 'web list'),
    ...tap('M8', '6.8 mm', 74, 'web list'),
    ...tap('M10', '8.5 mm', 77, 'web list'),
    ...tap('M12', '10.2 mm', 79, 'web list'),
  ]));

describe('percent that a drill leaves', () =>
  checkAll([
    left('0-80', '1.30 mm', 54, 1, "T1 Machinery's Handbook 31 p. 2155"),
    left('1-64', '1/16', 51, 1, 'T3 the same, which truncates'),
    left('1-64', '1.50 mm', 69, 1, 'T5 the same'),
    left('1/2-13', '29/64', 50, 4, 'T7 printed in a 50 % column'),
    {
      of: 'tapDrill',
      given: { size: '3/8-16', percent: 75 },
      name: 'hole',
      unit: 'in',
      is: 0.3141,
      within: 0.0001,
      source: 'T8, formula [fm]',
    },
  ]));

// Machine-screw tap drill chart, American National form, 75 % and 50 % columns, as carried by the open bolt table aeakett/tappy_tap_tap.
const CHART: readonly (readonly [string, string, string])[] = [
  ['0-80', '3/64', '#55'],
  ['1-64', '#53', '1/16'],
  ['1-72', '#53', '#52'],
  ['2-56', '#50', '#49'],
  ['2-64', '#50', '#48'],
  ['3-48', '#47', '#44'],
  ['3-56', '#45', '#43'],
  ['4-40', '#43', '#41'],
  ['4-48', '#42', '#40'],
  ['5-40', '#38', '7/64'],
  ['5-44', '#37', '#35'],
  ['6-32', '#36', '#32'],
  ['6-40', '#33', '#31'],
  ['8-32', '#29', '#27'],
  ['8-36', '#29', '#26'],
  ['10-24', '#25', '#20'],
  ['10-32', '#21', '#18'],
  ['12-24', '#16', '#12'],
  ['12-28', '#14', '#10'],
];
describe('a printed 75 % and 50 % chart', () => {
  it.each(CHART)('%s: %s at 75 %%, %s at 50 %%', (size, usual, free) => {
    // Charts pick a neighbour now and then where two drills are as near: theirs must be ours or leave within 6 % of what was asked.
    for (const [percent, drill] of [
      [75, usual],
      [50, free],
    ] as const) {
      const ours = valueOf('tapDrill', { size, percent }, 'drill');
      if (ours === drill) continue;
      const theirs = numberOf('tapDrill', { size, drill }, 'percent');
      expect(Math.abs(numberOf('tapDrill', { size, percent }, 'percent') - percent), `${String(ours)} for ${drill}`).toBeLessThanOrEqual(
        Math.abs(theirs - percent),
      );
    }
  });
});

describe('drill gauges [pt][ef]', () => {
  it.each([
    ['#1', 0.228],
    ['#2', 0.221],
    ['#3', 0.213],
    ['#4', 0.209],
    ['#7', 0.201],
    ['#10', 0.1935],
    ['#21', 0.159],
    ['#25', 0.1495],
    ['#80', 0.0135],
    ['A', 0.234],
    ['F', 0.257],
    ['I', 0.272],
    ['Q', 0.332],
    ['U', 0.368],
    ['Z', 0.413],
  ])('%s is %s', (drill, inches) => expect(numberOf('drillSize', { drill }, 'hole', 'in')).toBe(inches));
  it('80 numbers and 26 letters, each finer or coarser than the one before', () => {
    expect([NUMBER_DRILLS.length, LETTER_DRILLS.length]).toEqual([80, 26]);
    for (let i = 1; i < 80; i += 1) expect(NUMBER_DRILLS[i]?.inches).toBeLessThan(NUMBER_DRILLS[i - 1]?.inches ?? 0);
    for (let i = 1; i < 26; i += 1) expect(LETTER_DRILLS[i]?.inches).toBeGreaterThan(LETTER_DRILLS[i - 1]?.inches ?? 1);
  });
  it('nearest to a hole', () => expect(valueOf('drillSize', { hole: 0.2, holeUnit: 'in' }, 'drill')).toBe('#8'));
});

describe('tapping refused or asked', () => {
  it.each([
    [{ size: '3/8-16', percent: 120 }, /full thread/],
    [{ size: '3/8-16', percent: 10 }, /hardly/],
    [{ size: '3/8-16', drill: '3/8' }, /nothing is left/],
    [{ size: '3/8-16', drill: '1/4' }, /would not go in/],
    [{ size: '1/2 whitworth' }, /British/],
    [{ size: '3/8-16', drill: '#99' }, /don't know a drill/],
  ])('%j', (given, why) => expect(refusal('tapDrill', given)).toMatch(why));
  it('asks for the thread', () => expect(needed('tapDrill', {})).toEqual(['size']));
});
