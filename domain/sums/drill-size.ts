import { z } from 'zod';
import { findDrill, INCH_DRILLS, METRIC_DRILLS, nearestDrills } from './drills.ts';
import { measure } from './given.ts';
import { named, pair } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { convert } from './units.ts';

export const drillSize = defineSum({
  of: 'drillSize',
  answers: 'How big a named drill is, or which drill is nearest to a hole.',
  fields: { drill: 'name, "#7", "F", "27/64", "6.8 mm"', hole: 'diameter, in or mm' },
  given: z.object({ drill: z.coerce.string().optional(), ...measure('hole', 'length') }),
  work(given) {
    if (given.drill !== undefined) {
      const drill = findDrill(given.drill);
      if (!drill) return refuse(`I don't know a drill "${given.drill}".`);
      return {
        results: [...pair('hole', drill.inches, 'in', 4, 2), named('drill', drill.name)],
        basis: 'drill gauge table',
        assumed: [],
        source: SOURCE,
      };
    }
    if (given.hole === undefined) return ask('hole', 'Which drill, or what size of hole?');
    const metric = given.holeUnit === 'mm' || given.holeUnit === 'cm';
    const found = nearestDrills(convert(given.hole, given.holeUnit ?? 'in', 'in'), metric ? METRIC_DRILLS : INCH_DRILLS);
    if (!found) return refuse('That is over the biggest drill in the table.');
    return {
      results: [
        named('drill', found.nearest.name),
        ...(metric ? pair('hole', found.nearest.inches * 25.4, 'mm', 2, 4) : pair('hole', found.nearest.inches, 'in', 4, 2)),
      ],
      basis: `nearest ${metric ? 'metric' : 'number, letter or fraction'} drill`,
      assumed: given.holeUnit ? [] : ['the hole in inches; say mm if it was'],
      also: [found.below && `next under: ${found.below.name}`, found.above && `next over: ${found.above.name}`].filter(
        (each) => each !== undefined,
      ),
      source: SOURCE,
    };
  },
});

const SOURCE = 'number and letter drill gauges, fractions by 1/64, metric by 0.1 mm';
