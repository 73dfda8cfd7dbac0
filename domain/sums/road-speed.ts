import { z } from 'zod';
import { MANUAL_FIRST, type SumResult } from './answer.ts';
import { amount, measure } from './given.ts';
import { pair, result } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert } from './units.ts';

const INCHES_A_MILE = 63_360;

const given = z.object({
  rpm: amount().optional(),
  ratio: amount().optional(),
  ...measure('radius', 'length'),
  ...measure('diameter', 'length'),
  ...measure('speed', 'speed'),
  tyre: z.string().optional(),
});
type Given = z.infer<typeof given>;

export const roadSpeed = defineSum({
  of: 'roadSpeed',
  answers: 'Road speed by engine speed and gearing, or the engine speed for a road speed.',
  fields: {
    rpm: 'engine speed',
    ratio: 'engine turns to one of the wheel, all gears together',
    radius: 'loaded radius of the tyre',
    diameter: 'rolling diameter (instead)',
    speed: 'road speed (rpm asked)',
    tyre: 'the size on the tyre, which settles nothing',
  },
  given,
  work(said) {
    if (said.radius === undefined && said.diameter === undefined) {
      return said.tyre
        ? refuse(`The size on the tyre ("${said.tyre}") gives no sure diameter: measure the loaded radius, or take the maker's.`)
        : ask('radius', 'What is the loaded radius, floor to axle centre?');
    }
    const radius = said.radius === undefined ? undefined : convert(said.radius, said.radiusUnit ?? 'in', 'in');
    const diameter = radius === undefined ? convert(said.diameter ?? 0, said.diameterUnit ?? 'in', 'in') : 2 * radius;
    return speeds(said, INCHES_A_MILE / (Math.PI * diameter));
  },
});

/** @param perMile turns of the wheel in a mile */
function speeds(said: Given, perMile: number): Outcome {
  const turns = result('revPerMile', perMile, 'rev/mi', 0);
  if (said.rpm === undefined && said.speed === undefined && said.ratio === undefined) return finish(said, [turns]);
  if (said.ratio === undefined) return ask('ratio', 'What is the whole ratio, engine to wheel?');
  if (said.rpm !== undefined) {
    const mph = (said.rpm * 60) / said.ratio / perMile;
    const metric = [said.speedUnit, said.radiusUnit, said.diameterUnit].some((unit) => unit === 'km/h' || unit === 'mm');
    return finish(said, [...(metric ? pair('speed', convert(mph, 'mph', 'km/h'), 'km/h', 2, 2) : pair('speed', mph, 'mph', 2, 2)), turns]);
  }
  if (said.speed === undefined) return ask('rpm', 'At what engine speed?');
  const mph = convert(said.speed, said.speedUnit ?? 'mph', 'mph');
  return finish(said, [result('rpm', (mph / 60) * perMile * said.ratio, 'rpm', 0), turns]);
}

const finish = (said: Given, results: SumResult[]): Outcome => ({
  results,
  basis: 'wheel turns times the rolling circumference',
  assumed: [
    ...((said.radiusUnit ?? said.diameterUnit) ? [] : ['the tyre in inches; say mm if not']),
    'no wheel slip; tyres differ by 3 % among makers',
  ],
  caution: `A sum, not a safe speed: brakes, steering and tyres set that. ${MANUAL_FIRST}`,
  source: 'geometry; 63,360 in a mile',
});
