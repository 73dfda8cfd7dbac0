import { z } from 'zod';
import { measure } from './given.ts';
import { pair, result, round } from './results.ts';
import { ANGLE_FIELDS, ANGLE_SHAPE, LEGS, slingAngle } from './sling-angle.ts';
import { countedLegs, legLoad } from './sling-geometry.ts';
import { ask, defineSum } from './sum.ts';

export const LIFT_CAUTION =
  'A sum only, no judgement of the lift: keep to the ratings on the tags, nothing and nobody under the load, aim for 60° or more, ' +
  'go by the maker, local codes and a licensed rigger.';

/** Units of which a fraction counts. */
const LARGE: ReadonlySet<string> = new Set(['ton', 't', 'long ton', 'kN']);

export const sling = defineSum({
  of: 'sling',
  answers: 'What each sling leg pulls.',
  fields: { load: 'weight lifted', ...ANGLE_FIELDS, legs: 'how many legs (2 where not said)' },
  given: z.object({
    ...measure('load', 'mass'),
    ...ANGLE_SHAPE,
    legs: LEGS,
  }),
  work(given) {
    if (given.load === undefined) return ask('load', 'What does it weigh?');
    const assumed: string[] = [];
    const legs = given.legs ?? 2;
    const vertical = legs === 1 && given.angle === undefined && given.height === undefined;
    const read = vertical ? { angle: 90 } : slingAngle(given, assumed);
    if ('answer' in read) return read.answer;
    const unit = given.loadUnit ?? 'lb';
    if (!given.loadUnit) assumed.push('the load in lb; say kg if it was');
    if (given.legs === undefined) assumed.push('two legs; say how many if not');
    if (vertical) assumed.push('one leg hanging straight');
    if (legs > 3) assumed.push('four legs counted as three, as they are rated');
    if (legs > 2) assumed.push('the load shared evenly: a stiff load can ride on two legs alone');
    const factor = 1 / Math.sin((read.angle * Math.PI) / 180);
    return {
      results: [
        ...pair('legLoad', legLoad(given.load, legs, read.angle), unit, LARGE.has(unit) ? 3 : 0, 0),
        result('angle', read.angle, '°', 1),
        result('factor', factor, '', 3),
      ],
      basis: `load over ${countedLegs(legs)} ${legs === 1 ? 'leg' : 'legs'}, times ${round(factor, 3)} at ${round(read.angle, 1)}° from the horizontal`,
      assumed,
      caution: LIFT_CAUTION,
      source: 'statics of a sling; load factors as in 29 CFR 1910.184 tables; 30° limit of ASME B30.9',
    };
  },
});
