import { describe, expect, it } from 'vitest';
import { ohmsPerFoot } from '../../../domain/sums/wire.ts';
import { computeSum } from '../../../domain/sums/compute.ts';
import { checkAll, needed, numberOf, refusal, results, valueOf, type Case } from './support.ts';

const faa = (gauge: number | string, feet: number, amps: number, is: number, within: number, source: string): Case => ({
  of: 'voltDrop',
  given: { amps, length: feet, lengthUnit: 'ft', gauge, wire: 'tinned', return: 'frame' },
  name: 'drop',
  unit: 'V',
  is,
  within,
  source,
});

describe('volt drop', () =>
  checkAll([
    faa(6, 107, 20, 0.942, 0.001, 'E1 FAA AC 43.13-1B'),
    faa(4, 90, 20, 0.504, 0.001, 'E2 FAA'),
    faa(10, 39, 20, 0.983, 0.01, 'E4 FAA'),
    faa(10, 156, 20, 3.93, 0.01, 'E4 FAA'),
    faa(10, 273, 20, 6.88, 0.01, 'E4 FAA'),
    {
      of: 'voltDrop',
      given: { volts: 6, watts: 60, length: 12, gauge: 14 },
      name: 'drop',
      unit: 'V',
      is: 0.606,
      within: 0.002,
      source: 'E6',
    },
    { of: 'voltDrop', given: { volts: 6, watts: 60, length: 12, gauge: 14 }, name: 'percent', is: 10.1, within: 0.05, source: 'E6' },
    {
      of: 'voltDrop',
      given: { amps: 1, length: 20, lengthUnit: 'm', gauge: 16 },
      name: 'drop',
      is: 0.549,
      within: 0.03,
      source: "a solar shop's page, 1.3 mm² at 0.01785; 5 %",
    },
    {
      of: 'voltDrop',
      given: { volts: 12, watts: 100, length: 10, gauge: 16 },
      name: 'drop',
      is: 0.694,
      within: 0.035,
      source: 'a battery page, 10 ft; 5 %',
    },
    { of: 'voltDrop', given: { volts: 12, watts: 100, length: 10, gauge: 12 }, name: 'drop', is: 0.272, within: 0.014, source: 'the same' },
    {
      of: 'voltDrop',
      given: { amps: 10, length: 10, lengthUnit: 'm', gauge: 2.5, gaugeUnit: 'mm²', return: 'wire' },
      name: 'drop',
      is: (10 * 20 * 0.017241) / 2.5,
      within: 0.001,
      source: 'IEC 60028 copper',
    },
  ]));

describe('misprints that are not matched', () => {
  it('[fa] table 11-8 row 2: .366 V is .491 V', () => {
    const drop = numberOf('voltDrop', { amps: 20, length: 19.5, gauge: 10, wire: 'tinned', return: 'frame' }, 'drop');
    expect(drop).toBeCloseTo(0.491, 3);
    expect(Math.abs(drop - 0.366)).toBeGreaterThan(0.1);
  });
  it('[fa] table 11-7 row 3: 3.555 V, not 3.60', () =>
    expect(numberOf('voltDrop', { amps: 20, length: 88, gauge: 12, wire: 'tinned', return: 'frame' }, 'drop')).toBeCloseTo(3.555, 2));
  it('solid and stranded are not mixed up: 75 °C is within the solid column', () => expect(ohmsPerFoot(14, 75) * 1000).toBeLessThan(3.09));
});

describe('both returns are told', () => {
  const given = { volts: 6, amps: 11, length: 18, lengthUnit: 'ft', gauge: 14 };
  it('by wire is twice by the frame', () =>
    expect(numberOf('voltDrop', given, 'drop', 'V', 'by wire')).toBeCloseTo(2 * numberOf('voltDrop', given, 'drop', 'V', 'frame'), 2));
  it('the one said leads', () => expect(results('voltDrop', { ...given, return: 'through the frame' })[0]?.note).toMatch(/frame/));
  it.each([14, '14 AWG', '#14'])('gauge %s', (gauge) => expect(numberOf('voltDrop', { ...given, gauge }, 'drop')).toBe(1));
  it('1/0 and 00 are gauges', () =>
    expect(numberOf('voltDrop', { ...given, gauge: '1/0' }, 'drop')).toBeGreaterThan(
      numberOf('voltDrop', { ...given, gauge: '00' }, 'drop'),
    ));
});

describe('wire size', () => {
  it('the gauge answered keeps the loss, the next thinner does not', () => {
    expect(valueOf('voltDrop', { volts: 6, amps: 10, length: 12 }, 'gauge')).toBe('8 AWG');
    expect(numberOf('voltDrop', { volts: 6, amps: 10, length: 12, gauge: 8 }, 'percent')).toBeLessThanOrEqual(3);
    expect(numberOf('voltDrop', { volts: 6, amps: 10, length: 12, gauge: 10 }, 'percent')).toBeGreaterThan(3);
  });
  it("10 A, 10 % of 12 V, 21 ft there and back: 16 AWG (a chandler's table)", () =>
    expect(valueOf('voltDrop', { volts: 12, amps: 10, length: 10.5, percent: 10 }, 'gauge')).toBe('16 AWG'));
  it('a short heavy run is held by what the wire may carry', () =>
    expect(valueOf('voltDrop', { volts: 12, amps: 25, length: 1, percent: 10 }, 'gauge')).toBe('10 AWG'));
});

describe('fuse, ohms, six to twelve, battery', () => {
  checkAll([
    { of: 'fuse', given: { amps: 10 }, name: 'fuse', unit: 'A', is: 15, within: 0, source: 'E9' },
    { of: 'fuse', given: { amps: 10 }, name: 'gauge', is: '14 AWG', source: 'E9' },
    { of: 'fuse', given: { watts: 60, volts: 12 }, name: 'fuse', is: 7.5, within: 0, source: '5 A over 0.8' },
    { of: 'ohmsLaw', given: { watts: 60, volts: 6 }, name: 'amps', is: 10, within: 0, source: 'P = V I' },
    { of: 'ohmsLaw', given: { ohms: 4, watts: 9 }, name: 'volts', is: 6, within: 0, source: 'P = V² / R' },
    { of: 'sixToTwelve', given: { amps: 4 }, name: 'resistor', unit: 'Ω', is: 1.5, within: 0, source: "Ohm's law" },
    { of: 'sixToTwelve', given: { amps: 4 }, name: 'watts', is: 96, within: 0, source: 'twice the volts, four times the heat' },
    ...(
      [
        [12.65, 100],
        [12.45, 75],
        [12.24, 50],
        [12.06, 25],
        [6.3, 100],
      ] as const
    ).map(([volts, is]): Case => ({ of: 'battery', given: { volts }, name: 'percent', is, within: 1.5, source: '[re][lw]' })),
    ...(
      [
        [1.265, 100],
        [1.225, 75],
        [1.19, 50],
        [1.155, 25],
      ] as const
    ).map(([gravity, is]): Case => ({
      of: 'battery',
      given: { gravity },
      name: 'percent',
      is,
      within: 0,
      source: '[re][lw] specific gravity',
    })),
  ]);
  it('a fuse over the wire is refused with the wire it needs', () =>
    expect(refusal('fuse', { amps: 15, gauge: 14 })).toMatch(/20 A.*12 AWG/));
  it('too big for the table', () => expect(refusal('fuse', { amps: 40 })).toMatch(/breaker/));
  it('a battery on charge is not read', () => expect(refusal('battery', { volts: 14.2 })).toMatch(/on charge/));
  it('asks', () => {
    expect(needed('voltDrop', {})).toEqual(['amps']);
    expect(needed('voltDrop', { amps: 5 })).toEqual(['length']);
    expect(needed('voltDrop', { amps: 5, length: 5 })).toEqual(['volts']);
    expect(needed('voltDrop', { watts: 5, length: 5 })).toEqual(['volts']);
    expect(refusal('voltDrop', { amps: 5, length: 5, gauge: 77 })).toMatch(/no 77 gauge/);
    expect('caution' in computeSum('voltDrop', { volts: 6, amps: 5, length: 5 })).toBe(true);
  });
});
