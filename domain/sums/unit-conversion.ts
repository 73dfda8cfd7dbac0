import { z } from 'zod';
import type { SumResult } from './answer.ts';
import { amount } from './given.ts';
import { inchFraction } from './inch-fraction.ts';
import { named, significant } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert, findUnit } from './units.ts';

const FIGURES = 7;
const ROUGH = new Set(['inHg', 'inH2O', 'Btu']);
const THREADS = /^(tpi|threads? per inch|threads? an inch)$/i;
const FRACTION = /fraction|64ths?|sixty.?fourths?/i;

export const unitConversion = defineSum({
  of: 'convert',
  answers: 'A figure in another unit.',
  fields: {
    value: 'number',
    from: 'unit it is in',
    to: 'unit wanted ("fraction" for 64ths of an inch, "tpi" for threads per inch of a mm pitch)',
  },
  given: z.object({ value: amount('any').optional(), from: z.string().optional(), to: z.string().optional() }),
  work({ value, from, to }) {
    if (value === undefined) return ask('value', 'What figure?');
    if (!from) return ask('from', `${value} what?`);
    if (!to) return ask('to', 'Into what?');
    if (THREADS.test(from) || THREADS.test(to)) return threads(value, from, to);
    const source = findUnit(from);
    if (!source) return refuse(`I don't know the unit "${from}".`);
    if (FRACTION.test(to)) return fraction(value, source.name);
    const target =
      findUnit(to, source.dimension === 'mass' && findUnit(to)?.dimension === 'force' ? 'force' : source.dimension) ?? findUnit(to);
    if (!target) return refuse(`I don't know the unit "${to}".`);
    const start = source.dimension === target.dimension ? source : findUnit(from, target.dimension);
    if (!start) return refuse(`${source.name} is ${source.dimension} and ${target.name} is ${target.dimension}: one is not the other.`);
    const converted = convert(value, start.name, target.name);
    if (start.dimension === 'temperature' && convert(value, start.name, 'K') < -1e-9) return refuse('That is under absolute zero.');
    return done(
      [{ name: 'converted', value: significant(converted, FIGURES), unit: spell(target.name, to) }],
      start.dimension === 'force' && source.dimension === 'mass' ? ['a weight taken as the force it presses with'] : [],
      ROUGH.has(start.name) || ROUGH.has(target.name),
    );
  },
});

/** Pounds of force asked for as "lb" are answered as lb. */
const spell = (name: string, asked: string): string => (name === 'lbf' && /^lbs?$|^pounds?$/i.test(asked.trim()) ? 'lb' : name);

const done = (results: SumResult[], assumed: string[], rough: boolean): Outcome => ({
  results,
  basis: rough ? 'conventional factor' : 'exact factor',
  assumed,
  source: 'NIST Handbook 44 app. C, 16 CFR 500.19',
});

function threads(value: number, from: string, to: string): Outcome {
  const other = THREADS.test(from) ? to : from;
  const unit = findUnit(other.replace(/\s*pitch/i, ''), 'length');
  if (!unit || (THREADS.test(from) && THREADS.test(to)) || value <= 0)
    return refuse('Threads per inch turn into a pitch in mm or in, and back.');
  const pitch = THREADS.test(from) ? convert(1 / value, 'in', unit.name) : 1 / convert(value, unit.name, 'in');
  return done(
    [{ name: 'converted', value: significant(pitch, 5), unit: THREADS.test(from) ? unit.name : 'tpi' }],
    ['pitch is one inch over threads per inch'],
    false,
  );
}

function fraction(value: number, from: string): Outcome {
  if (findUnit(from)?.dimension !== 'length' || value < 0) return refuse('Only a length is named in 64ths of an inch.');
  const inches = convert(value, from, 'in');
  const off = inches - Math.round(inches * 64) / 64;
  return done(
    [named('converted', inchFraction(inches), 'in'), { name: 'off', value: significant(off, 3), unit: 'in' }],
    ['nearest 1/64'],
    false,
  );
}
