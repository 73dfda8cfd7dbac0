import { z } from 'zod';
import { amount, measure } from './given.ts';
import { pair, result } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { convert } from './units.ts';

const INCHES_A_MILE = 63_360;

export const roadSpeed = defineSum({
  of: 'roadSpeed',
  answers: 'Road speed by engine speed and gearing, or the engine speed for a road speed.',
  fields: {
    rpm: 'engine speed',
    ratio: 'engine turns to one of the wheel, all gears together',
    radius: 'loaded radius of the tyre',
    diameter: 'rolling diameter (instead)',
    speed: 'road speed (rpm asked)',
  },
  given: z.object({
    rpm: amount().optional(),
    ratio: amount().optional(),
    ...measure('radius', 'length'),
    ...measure('diameter', 'length'),
    ...measure('speed', 'speed'),
    tyre: z.string().optional(),
  }),
  work(given) {
    const metric = given.speedUnit === 'km/h' || given.radiusUnit === 'mm' || given.diameterUnit === 'mm';
    if (given.radius === undefined && given.diameter === undefined) {
      return given.tyre
        ? refuse(`The size on the tyre ("${given.tyre}") gives no sure diameter: measure the loaded radius, or take the maker's.`)
        : ask('radius', 'What is the loaded radius, floor to axle centre?');
    }
    const inches =
      given.radius !== undefined
        ? 2 * convert(given.radius, given.radiusUnit ?? 'in', 'in')
        : convert(given.diameter ?? 0, given.diameterUnit ?? 'in', 'in');
    const perMile = INCHES_A_MILE / (Math.PI * inches);
    const turns = [result('revPerMile', perMile, 'rev/mi', 0)];
    const assumed = [
      ...((given.radiusUnit ?? given.diameterUnit) ? [] : ['the tyre in inches; say mm if not']),
      'no wheel slip; tyres differ by 3 % among makers',
    ];
    const common = {
      assumed,
      basis: 'wheel turns times the rolling circumference',
      source: 'geometry; 63,360 in a mile',
      caution: "A sum, not a safe speed: brakes, steering and tyres set that. The machine's own manual beats this.",
    };
    if (given.rpm === undefined && given.speed === undefined && given.ratio === undefined) return { results: turns, ...common };
    if (given.ratio === undefined) return ask('ratio', 'What is the whole ratio, engine to wheel?');
    if (given.speed !== undefined && given.rpm === undefined) {
      return {
        results: [result('rpm', (convert(given.speed, given.speedUnit ?? 'mph', 'mph') / 60) * perMile * given.ratio, 'rpm', 0), ...turns],
        ...common,
      };
    }
    if (given.rpm === undefined) return ask('rpm', 'At what engine speed?');
    const mph = (given.rpm * 60) / given.ratio / perMile;
    return {
      results: [...(metric ? pair('speed', convert(mph, 'mph', 'km/h'), 'km/h', 2, 2) : pair('speed', mph, 'mph', 2, 2)), ...turns],
      ...common,
    };
  },
});
