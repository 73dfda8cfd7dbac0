import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';

const NAMES = ['holeLow', 'holeHigh', 'shaftLow', 'shaftHigh'] as const;
const METRIC_FROM = 10;
const ASK = {
  holeLow: 'What is the smallest hole?',
  holeHigh: 'What is the largest hole?',
  shaftLow: 'What is the smallest shaft?',
  shaftHigh: 'What is the largest shaft?',
};

export const pressFit = defineSum({
  of: 'pressFit',
  answers: 'Least and most interference of a shaft in a hole from their limits.',
  fields: { holeLow: 'smallest hole', holeHigh: 'largest hole', shaftLow: 'smallest shaft', shaftHigh: 'largest shaft' },
  given: z.object({
    ...measure('holeLow', 'length'),
    ...measure('holeHigh', 'length'),
    ...measure('shaftLow', 'length'),
    ...measure('shaftHigh', 'length'),
  }),
  work(said) {
    // A single measured hole or shaft is both its limits.
    const given = {
      ...said,
      holeHigh: said.holeHigh ?? said.holeLow,
      holeLow: said.holeLow ?? said.holeHigh,
      shaftHigh: said.shaftHigh ?? said.shaftLow,
      shaftLow: said.shaftLow ?? said.shaftHigh,
    };
    const missing = NAMES.find((name) => given[name] === undefined);
    if (missing) return ask(missing, ASK[missing]);
    const assumed: string[] = [];
    // No shaft of the shop is ten inches thick: figures so large without a unit are millimetres.
    const metric = (given.holeLow ?? 0) >= METRIC_FROM;
    const unit = sharedUnit(given, NAMES, metric ? 'mm' : 'in', metric ? 'inches' : 'mm', assumed);
    const [holeLow = 0, holeHigh = 0, shaftLow = 0, shaftHigh = 0] = NAMES.map((name) => valueIn(given, name, unit));
    if (holeLow > holeHigh || shaftLow > shaftHigh) return refuse('The low limit is over the high one: they are the wrong way round.');
    const [small, large] = unit === 'mm' ? [4, 5] : [5, 4];
    return {
      results: [...pair('least', shaftLow - holeHigh, unit, small, large), ...pair('most', shaftHigh - holeLow, unit, small, large)],
      basis: 'least = small shaft in large hole, most = large shaft in small hole; under zero is clearance',
      assumed,
      caution: `Guard the press and press square; a bush closes in the bore by part of its press, so ream after. ${MANUAL_FIRST}`,
      source: 'difference of limits (ISO 286 definitions)',
    };
  },
});
