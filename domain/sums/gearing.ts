import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { amount } from './given.ts';
import { result } from './results.ts';
import { ask, defineSum } from './sum.ts';

export const gearing = defineSum({
  of: 'gearing',
  answers: 'Ratio and speed of a gear or chain drive, or the ratio between two speeds.',
  fields: { teeth1: 'teeth of the driver', teeth2: 'teeth of the driven', rpm1: 'speed of the driver', rpm2: 'speed of the driven' },
  given: z.object({ teeth1: amount().optional(), teeth2: amount().optional(), rpm1: amount().optional(), rpm2: amount().optional() }),
  work({ teeth1, teeth2, rpm1, rpm2 }) {
    const byTeeth = teeth1 !== undefined && teeth2 !== undefined ? teeth2 / teeth1 : undefined;
    const ratio = byTeeth ?? (rpm1 !== undefined && rpm2 !== undefined ? rpm1 / rpm2 : undefined);
    if (ratio === undefined)
      return teeth1 === undefined && teeth2 === undefined
        ? ask(rpm1 === undefined ? 'rpm1' : 'rpm2', `How fast does the ${rpm1 === undefined ? 'driving' : 'driven'} shaft turn?`)
        : ask(teeth1 === undefined ? 'teeth1' : 'teeth2', 'How many teeth has the other gear?');
    const speed =
      byTeeth === undefined
        ? []
        : rpm1 !== undefined
          ? [result('rpm', rpm1 / ratio, 'rpm', 1, 'driven')]
          : rpm2 !== undefined
            ? [result('rpm', rpm2 * ratio, 'rpm', 1, 'driver')]
            : [];
    return {
      results: [...speed, result('ratio', ratio, ':1', 3)],
      basis: byTeeth === undefined ? 'driving speed over driven speed' : 'driven teeth over driving teeth',
      assumed: ['a positive drive, no slip'],
      caution: `Never over a shaft's rated speed; guards on. ${MANUAL_FIRST}`,
      source: 'gear ratio',
    };
  },
});
