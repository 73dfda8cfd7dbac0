import { z } from 'zod';
import { MANUAL_FIRST, type SumResult } from './answer.ts';
import { beltCentre, beltLength, beltSpan, closestCentre, smallArc } from './belt-geometry.ts';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair, result, round } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';

const NAMES = ['d1', 'd2', 'centre', 'length'] as const;
/** Under this the belt slips before it is at its rating. Common practice, no source. */
const LEAST_ARC = 120;

export const belt = defineSum({
  of: 'belt',
  answers: 'How long a belt must be, or how far apart the shafts sit with a belt on hand.',
  fields: {
    d1: 'pitch diameter of one pulley',
    d2: 'pitch diameter of the other',
    centre: 'shaft to shaft (length asked)',
    length: 'belt on hand, pitch length (centre asked)',
  },
  given: z.object({
    ...measure('d1', 'length'),
    ...measure('d2', 'length'),
    ...measure('centre', 'length'),
    ...measure('length', 'length'),
  }),
  work(given) {
    if (given.d1 === undefined) return ask('d1', 'What diameter is the first pulley?');
    if (given.d2 === undefined) return ask('d2', 'What diameter is the other pulley?');
    if (given.centre === undefined && given.length === undefined) return ask('centre', 'How far apart are the shafts, centre to centre?');
    const assumed = ["pulleys measured at the pitch line, where the belt's cord runs; outside diameters give a longer belt"];
    const unit = sharedUnit(given, NAMES, 'in', 'mm', assumed);
    const [d1, d2, centre, length] = NAMES.map((name) => valueIn(given, name, unit));
    if (centre !== undefined) return lengthFor(d1 ?? 0, d2 ?? 0, centre, unit, assumed);
    return centreFor(d1 ?? 0, d2 ?? 0, length ?? 0, unit, assumed);
  },
});

/** A length of the drive, and the same in the other system. */
const inBoth = (name: string, value: number, unit: string): SumResult[] => pair(name, value, unit, unit === 'in' ? 3 : unit === 'mm' ? 1 : 4, unit === 'mm' ? 3 : 1);

function lengthFor(d1: number, d2: number, centre: number, unit: string, assumed: string[]): Outcome {
  if (centre <= closestCentre(d1, d2)) {
    const closest = round(closestCentre(d1, d2), 3);
    return refuse(`Pulleys of ${d1} and ${d2} ${unit} touch at ${closest} ${unit} between centres: ${centre} ${unit} can't be.`);
  }
  return finish({ d1, d2, centre, unit, assumed }, inBoth('length', beltLength(d1, d2, centre), unit), `centres at ${centre} ${unit}`);
}

function centreFor(d1: number, d2: number, length: number, unit: string, assumed: string[]): Outcome {
  const centre = beltCentre(d1, d2, length);
  if (centre === undefined) {
    const shortest = round(beltLength(d1, d2, closestCentre(d1, d2)), 2);
    return refuse(`A ${length} ${unit} belt is too short: these pulleys touch before it reaches round them, at ${shortest} ${unit}.`);
  }
  assumed.push('the length at the pitch line; a classical A, B or C number is the inside length');
  return finish({ d1, d2, centre, unit, assumed }, inBoth('centre', centre, unit), `belt of ${length} ${unit}`);
}

/** Two pulleys, so far apart; lengths in one unit. */
interface Drive { d1: number; d2: number; centre: number; unit: string; assumed: string[] }

/** What was asked for, and what goes with any such drive. */
function finish({ d1, d2, centre, unit, assumed }: Drive, asked: SumResult[], how: string): Outcome {
  const span = beltSpan(d1, d2, centre);
  const arc = smallArc(d1, d2, centre);
  const far = centre > 2 * (d1 + d2) ? ['the centres are over twice the two diameters: long belts whip'] : [];
  return {
    results: [
      ...asked,
      result('arc', arc, '°', 1),
      ...inBoth('span', span, unit),
      ...pair('deflection', span / 64, unit, unit === 'in' ? 3 : 2, 3),
    ],
    basis: `open belt, exact form, ${how}`,
    assumed,
    caution: `Set tension by force at span/64, retension after run-in, and never pry on an alternator's body. ${MANUAL_FIRST}`,
    source: "geometry of an open belt, arc against Machinery's Handbook 31 p. 2581; span/64 of a belt maker's guide",
    also: [...far, ...(arc < LEAST_ARC ? [`only ${round(arc, 0)}° on the small pulley: expect slip`] : [])],
  };
}
