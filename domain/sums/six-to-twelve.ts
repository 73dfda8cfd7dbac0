import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { amount } from './given.ts';
import { result } from './results.ts';
import { ask, defineSum } from './sum.ts';

export const sixToTwelve = defineSum({
  of: 'sixToTwelve',
  answers: 'What a 6 volt part does on 12 volts, and the resistor that would save it.',
  fields: { amps: 'what the part draws on 6 V', watts: 'or its watts on 6 V', ohms: 'or its resistance' },
  given: z.object({ amps: amount().optional(), watts: amount().optional(), ohms: amount().optional() }),
  work(given) {
    const amps = given.amps ?? (given.watts !== undefined ? given.watts / 6 : given.ohms !== undefined ? 6 / given.ohms : undefined);
    if (amps === undefined) return ask('amps', 'What does the part draw on six volts, in amps?');
    return {
      results: [
        result('resistor', 6 / amps, 'Ω', 2),
        result('resistorWatts', 6 * amps, 'W', 1, 'heat in it: fit one rated for twice that'),
        result('amps', 2 * amps, 'A', 2, 'on 12 V with nothing in line'),
        result('watts', 24 * amps, 'W', 1, 'on 12 V with nothing in line, four times'),
        result('ampsSameWatts', amps / 2, 'A', 2, 'a 12 V part of the same watts'),
      ],
      basis: 'a fixed resistance: twice the volts is twice the amps and four times the heat',
      assumed: ['a plain resistance such as a coil, heater or gauge; a starter motor and lamps are not'],
      caution: `12 V doubles the volts on coil, gauges and starter; polarise a generator, never an alternator; grounded post off first. ${MANUAL_FIRST}`,
      source: "Ohm's law",
    };
  },
});
