import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { amount, measure } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { convert } from './units.ts';

export const twoStroke = defineSum({
  of: 'twoStroke',
  answers: 'How much oil to put in fuel for a mix.',
  fields: { fuel: 'fuel, gal or L', ratio: 'parts of fuel to one of oil, 50 for 50:1' },
  given: z.object({ ...measure('fuel', 'volume'), ratio: amount().optional() }),
  work(given) {
    if (given.ratio === undefined) return ask('ratio', 'What mix, such as 50 to 1?');
    if (given.ratio < 8 || given.ratio > 100) return refuse(`${given.ratio} to 1 is no two-stroke mix; they run 16 to 100.`);
    const fuel = given.fuel ?? 1;
    const unit = given.fuelUnit ?? 'gal';
    const metric = unit === 'L' || unit === 'mL';
    const oil = convert(fuel, unit, metric ? 'mL' : 'fl oz') / given.ratio;
    return {
      results: metric ? pair('volume', oil, 'mL', 0, 2) : pair('volume', oil, 'fl oz', 2, 0),
      basis: `${fuel} ${unit} over ${given.ratio}`,
      assumed: [
        ...(given.fuel === undefined ? ['for one gallon; say how much fuel'] : given.fuelUnit ? [] : ['US gallons; say litres if not']),
      ],
      caution: `Fuel: no flame, outdoors, engine cold. ${MANUAL_FIRST}`,
      source: 'volume over ratio, 128 fl oz a gallon',
    };
  },
});
