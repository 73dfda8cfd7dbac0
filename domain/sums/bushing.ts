import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { measure } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum } from './sum.ts';

const PER_UNIT = 0.0015;

export const bushing = defineSum({
  of: 'bushing',
  answers: 'Running clearance of a plain bushing on its shaft.',
  fields: { diameter: 'of the shaft' },
  given: z.object({ ...measure('diameter', 'length') }),
  work(given) {
    if (given.diameter === undefined) return ask('diameter', 'What diameter is the shaft?');
    const unit = given.diameterUnit ?? 'in';
    const [own, other] = unit === 'in' ? ([4, 3] as const) : ([3, 4] as const);
    return {
      results: [
        ...pair('clearance', PER_UNIT * given.diameter, unit, own, other),
        ...pair('bore', (1 + PER_UNIT) * given.diameter, unit, own, other, 'after pressing in and reaming'),
      ],
      basis: '0.0015 per inch of shaft diameter',
      assumed: given.diameterUnit ? [] : ['inches; say mm if it was'],
      caution: `Press guard on; the bore closes as the bush goes in, so ream after. ${MANUAL_FIRST}`,
      source: "a bearing maker's guide",
    };
  },
});
