import { describe, expect, it } from 'vitest';
import { circularMils, ohmsPerFoot, wireDiameter } from '../../../domain/sums/wire.ts';
import { numberOf, refusal, valueOf } from './support.ts';

describe('wire gauge (ASTM B258 ratio [lq], circular mils [le])', () => {
  it.each([
    [36, 0.005],
    [-3, 0.46],
  ])('E10 AWG %s is exactly %s in', (n, inches) => expect(wireDiameter(n)).toBeCloseTo(inches, 12));
  it.each([
    [18, 0.0403],
    [16, 0.0508],
    [14, 0.0641],
    [12, 0.0808],
    [10, 0.1019],
    [8, 0.1285],
    [6, 0.162],
    [4, 0.2043],
    [2, 0.2576],
    [0, 0.3249],
    [-1, 0.3648],
  ])('AWG %s is %s in', (n, inches) => expect(wireDiameter(n)).toBeCloseTo(inches, 4));
  it.each([
    [18, 1624],
    [16, 2583],
    [14, 4107],
    [12, 6530],
    [10, 10380],
    [8, 16510],
    [6, 26250],
    [4, 41740],
    [2, 66370],
    [0, 105500],
    [-1, 133100],
    [-3, 211600],
  ])('AWG %s is %s cmil', (n, mils) => expect(Math.abs(circularMils(n) / mils - 1)).toBeLessThan(0.0006));
  it.each([
    [18, 6.385],
    [14, 2.525],
    [12, 1.588],
    [10, 0.9989],
    [8, 0.6282],
    [6, 0.3951],
    [4, 0.2485],
    [0, 0.0983],
    [-3, 0.049],
  ])('AWG %s is %s ohm per 1,000 ft at 20 °C', (n, ohms) => expect(ohmsPerFoot(n) * 1000).toBeCloseTo(ohms, 3));
  it.each([
    [14, 3.07],
    [12, 1.93],
    [10, 1.21],
    [8, 0.764],
    [6, 0.491],
    [4, 0.308],
    [2, 0.194],
    [0, 0.122],
  ])('AWG %s at 75 °C is near %s (NEC ch. 9 table 8, 2 %%)', (n, ohms) =>
    expect(Math.abs((ohmsPerFoot(n, 75) * 1000) / ohms - 1)).toBeLessThan(0.025),
  );
  it('E5 75 °C shortens the run to .822 (FAA formula)', () => expect(ohmsPerFoot(10) / ohmsPerFoot(10, 75)).toBeCloseTo(0.822, 3));
});

describe('a gauge by itself', () => {
  it('14 AWG is 2.08 mm² (IEC 60228 trade tables)', () => expect(numberOf('wireGauge', { gauge: 14 }, 'section')).toBeCloseTo(2.08, 2));
  it.each([
    [2.5, '12 AWG'],
    [1.5, '14 AWG'],
    [6, '8 AWG'],
    [2, '14 AWG'],
  ])('%s mm² is replaced by %s', (section, gauge) => expect(valueOf('wireGauge', { section }, 'gauge')).toBe(gauge));
  it('no such gauge', () => expect(refusal('wireGauge', { gauge: 90 })).toMatch(/no 90 gauge/));
});
