import { z } from 'zod';
import { CHAIN_WLL, OVERHEAD_GRADES } from './chain-ratings.ts';
import { measure } from './given.ts';
import { pair, round } from './results.ts';
import { ANGLE_FIELDS, ANGLE_SHAPE, LEGS, slingAngle } from './sling-angle.ts';
import { countedLegs } from './sling-geometry.ts';
import { LIFT_CAUTION } from './sling.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';

export const slingCapacity = defineSum({
  of: 'slingCapacity',
  answers: 'What a rated sling is left with at an angle.',
  fields: {
    rating: 'rating of one leg hanging straight',
    size: 'chain size, "3/8" (instead of the rating)',
    grade: 'chain grade, "80"',
    ...ANGLE_FIELDS,
    legs: 'how many legs (1 where not said)',
  },
  given: z.object({
    ...measure('rating', 'mass'),
    size: z.string().optional(),
    grade: z.coerce.string().optional(),
    ...ANGLE_SHAPE,
    legs: LEGS,
  }),
  work(given) {
    const assumed: string[] = [];
    const rated = given.rating ?? chainRating(given.size, given.grade);
    if (typeof rated !== 'number') return rated;
    const legs = given.legs ?? 1;
    if (given.legs === undefined) assumed.push('one leg; say how many if more');
    const read = slingAngle(given, assumed);
    if ('answer' in read) return read.answer;
    if (given.rating === undefined) assumed.push('new chain at the listed limit; the tag on yours beats it');
    const capacity = rated * countedLegs(legs) * Math.sin((read.angle * Math.PI) / 180);
    return {
      results: pair('capacity', capacity, given.ratingUnit ?? 'lb', 0, 0),
      basis: `${rated} ${given.ratingUnit ?? 'lb'} a leg, ${countedLegs(legs)} counted, at ${round(read.angle, 1)}° from the horizontal`,
      assumed,
      caution: LIFT_CAUTION,
      source: 'statics of a sling; NACM working load limits as reprinted; 30° limit of ASME B30.9',
    };
  },
});

function chainRating(size: string | undefined, said: string | undefined): number | Outcome {
  if (!size) return ask('rating', 'What is one leg rated for, on its tag?');
  const grade = said?.replace(/[^\d]/g, '');
  if (!grade) return ask('grade', 'What grade is stamped on the chain?', ['80', '100']);
  const sizes = CHAIN_WLL[grade];
  if (!sizes) return refuse(`There is no chain grade "${said}" in the list; it has ${Object.keys(CHAIN_WLL).join(', ')}.`);
  if (!OVERHEAD_GRADES.includes(grade)) return refuse(`Grade ${grade} chain is not for overhead lifting: only alloy, 80 or 100, is.`);
  const rating = sizes[size.replace(/["\s]|in$/g, '')];
  return rating ?? refuse(`Grade ${grade} is listed in ${Object.keys(sizes).join(', ')}, not ${size}.`);
}
