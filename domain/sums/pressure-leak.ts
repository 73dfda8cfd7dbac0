import { z } from 'zod';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair, result, significant } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert } from './units.ts';

const ATMOSPHERE = 101_325;
const GAS_CONSTANT = 8.314462618;
const given = z.object({
  ...measure('pressure1', 'pressure', 'zero or more'),
  ...measure('pressure2', 'pressure', 'zero or more'),
  ...measure('volume', 'volume'),
  ...measure('time', 'time'),
  ...measure('temp1', 'temperature', 'any'),
  ...measure('temp2', 'temperature', 'any'),
  absolute: z.boolean().optional(),
});
type Given = z.infer<typeof given>;

export const pressureLeak = defineSum({
  of: 'pressureLeak',
  answers: 'How big a leak a fall of air pressure means, and how much of the fall is only cooling.',
  fields: {
    pressure1: 'gauge pressure at the start',
    pressure2: 'at the end (left out: what cooling alone would make it)',
    volume: 'air volume',
    time: 'between the readings, min',
    temp1: 'temperature at the start',
    temp2: 'at the end',
    absolute: 'true where the pressures are absolute',
  },
  given,
  work(said) {
    if (said.pressure1 === undefined) return ask('pressure1', 'What pressure did it start at?');
    const assumed: string[] = [];
    const unit = sharedUnit(said, ['pressure1', 'pressure2'], 'psi', 'bar or kPa', assumed);
    const base = said.absolute ? 0 : ATMOSPHERE;
    if (!said.absolute) assumed.push('gauge pressures over a sea-level atmosphere of 14.7 psi');
    const pascals = (name: string) => {
      const value = valueIn(said, name, unit);
      return value === undefined ? undefined : convert(value, unit, 'Pa') + base;
    };
    const [start, end] = [pascals('pressure1') ?? 0, pascals('pressure2')];
    const heat = sharedUnit(said, ['temp1', 'temp2'], '°F', '°C', []);
    const [warm, cool] = ['temp1', 'temp2']
      .map((name) => valueIn(said, name, heat))
      .map((each) => (each === undefined ? undefined : convert(each, heat, 'K')));
    if ((warm ?? 1) <= 0 || (cool ?? 1) <= 0) return refuse('That temperature is under absolute zero.');
    const frame = { unit, base, assumed, start, end, warm, cool };
    return end === undefined ? coolingOnly(frame) : leak(said, { ...frame, end });
  },
});

interface Frame {
  unit: string;
  base: number;
  assumed: string[];
  start: number;
  end: number | undefined;
  warm: number | undefined;
  cool: number | undefined;
}

const CAUTION =
  "Air stores energy: test at low pressure, never over the system's own cap, stand clear; liquid-full systems fall fast on a tiny leak.";
const SOURCE = 'ideal gas, Q = V dp / t; 40 CFR 1065.644 form';

function coolingOnly({ unit, base, assumed, start, warm, cool }: Frame): Outcome {
  if (warm === undefined || cool === undefined) return ask('pressure2', 'What does it read now?');
  const expected = (start * cool) / warm;
  return {
    results: [
      ...pair('pressure', convert(expected - base, 'Pa', unit), unit, 2, 2),
      ...pair('fall', convert(start - expected, 'Pa', unit), unit, 2, 2),
    ],
    basis: 'a sealed volume, pressure by absolute temperature',
    assumed,
    caution: CAUTION,
    source: SOURCE,
  };
}

function leak(said: Given, { assumed, start, end, warm, cool }: Frame & { end: number }): Outcome {
  if (said.volume === undefined) return ask('volume', 'What volume of air is shut in?');
  if (said.time === undefined) return ask('time', 'How many minutes between the readings?');
  const cubic = convert(said.volume, said.volumeUnit ?? 'gal', 'm³');
  const seconds = convert(said.time, said.timeUnit ?? 'min', 's');
  if (!said.volumeUnit) assumed.push('the volume in gallons; say litres if not');
  const corrected = warm !== undefined && cool !== undefined;
  if (!corrected) assumed.push('no change of temperature; a fall of 10 °F alone looks like a leak');
  const [t1, t2] = [warm ?? 293.15, corrected ? (cool ?? 293.15) : (warm ?? 293.15)];
  const lost = start - (end * t1) / t2;
  const flow = (cubic * lost) / seconds;
  return {
    results: [
      result('leak', (flow / ATMOSPHERE) * 1e6 * 60, 'std cc/min', 1),
      { name: 'leak', value: significant(flow, 4), unit: 'Pa·m³/s' },
      { name: 'molar', value: significant((cubic / GAS_CONSTANT / seconds) * (start / t1 - end / t2), 4), unit: 'mol/s' },
    ],
    basis: corrected ? 'fall of pressure, put right for temperature' : 'fall of pressure at steady temperature',
    assumed,
    caution: CAUTION,
    source: SOURCE,
  };
}
