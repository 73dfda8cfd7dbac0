import { z } from 'zod';
import type { Dimension } from './unit-table.ts';
import { convert, findUnit } from './units.ts';

type Bound = 'over zero' | 'zero or more' | 'any';

const UNIT_WORDS: Record<Dimension, string> = {
  length: 'length',
  area: 'area',
  volume: 'volume',
  mass: 'weight',
  force: 'force',
  torque: 'torque',
  pressure: 'pressure',
  power: 'power',
  speed: 'speed',
  temperature: 'temperature',
  flow: 'flow',
  time: 'time',
  angle: 'angle',
  energy: 'energy',
  turning: 'turning speed',
};

/** A plain number of `given`. */
export function amount(bound: Bound = 'over zero') {
  const number = z.number({ error: 'must be a number' });
  if (bound === 'over zero') return number.positive({ error: 'must be over zero' });
  if (bound === 'zero or more') return number.nonnegative({ error: 'cannot be under zero' });
  return number;
}

/** A unit of one dimension, any usual spelling, read into the contract's spelling. */
export function unitOf(dimension: Dimension) {
  return z.string({ error: 'must be a unit' }).transform((text, context) => {
    const unit = findUnit(text, dimension);
    if (unit) return unit.name;
    context.addIssue({ code: 'custom', message: `"${text}" is not a unit of ${UNIT_WORDS[dimension]} that I know` });
    return z.NEVER;
  });
}

type MeasureShape<N extends string> = { [K in N]: z.ZodOptional<z.ZodNumber> } & {
  [K in `${N}Unit`]: z.ZodOptional<ReturnType<typeof unitOf>>;
};

/** The two fields of a measure, `name` and `nameUnit`, both optional. */
export const measure = <N extends string>(name: N, dimension: Dimension, bound: Bound = 'over zero') =>
  ({ [name]: amount(bound).optional(), [`${name}Unit`]: unitOf(dimension).optional() }) as MeasureShape<N>;

/** The unit said with the first of these fields that has one. */
export function unitSaid(given: object, names: readonly string[]): string | undefined {
  const fields = given as Record<string, unknown>;
  for (const name of names) {
    const unit = fields[`${name}Unit`];
    if (typeof unit === 'string') return unit;
  }
  return undefined;
}

const SPOKEN: Record<string, string> = { in: 'inches', mm: 'millimetres', ft: 'feet', mil: 'mils' };

/** The unit shared by several fields; where none was said, the fallback, which is then noted among what was assumed. */
export function sharedUnit(given: object, names: readonly string[], fallback: string, other: string, assumed: string[]): string {
  const unit = unitSaid(given, names);
  if (unit) return unit;
  assumed.push(`figures taken as ${SPOKEN[fallback] ?? fallback}; say ${other} if they were`);
  return fallback;
}

/** The field's value in `unit`; its own unit where said, else it already is in `unit`. */
export function valueIn(given: object, name: string, unit: string): number | undefined {
  const fields = given as Record<string, unknown>;
  const value = fields[name];
  if (typeof value !== 'number') return undefined;
  const own = fields[`${name}Unit`];
  return convert(value, typeof own === 'string' ? own : unit, unit);
}
