import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { amount, measure, sharedUnit, valueIn } from './given.ts';
import { result } from './results.ts';
import { drivenSpeed } from './sheave.ts';
import { ask, defineSum } from './sum.ts';

/** Shaft speed at which an alternator is near its full output (from memory). */
const FULL_OUTPUT = 3000;

export const alternatorSpeed = defineSum({
  of: 'alternatorSpeed',
  answers: 'How fast the alternator turns, and the engine speed at which it is near full output.',
  fields: { d1: 'crank pulley', d2: 'alternator pulley', rpm1: 'engine speed, rpm' },
  given: z.object({ ...measure('d1', 'length'), ...measure('d2', 'length'), rpm1: amount().optional() }),
  work(given) {
    if (given.d1 === undefined) return ask('d1', 'What diameter is the crank pulley?');
    if (given.d2 === undefined) return ask('d2', 'What diameter is the alternator pulley?');
    if (given.rpm1 === undefined) return ask('rpm1', 'At what engine speed?');
    const unit = sharedUnit(given, ['d1', 'd2'], 'in', 'mm', []);
    const [d1, d2] = [valueIn(given, 'd1', unit) ?? 1, valueIn(given, 'd2', unit) ?? 1];
    const rpm = drivenSpeed(given.rpm1, d1, d2);
    return {
      results: [
        result('rpm', rpm, 'rpm', 0),
        result('engineRpm', (FULL_OUTPUT * d2) / d1, 'rpm', 0, `engine speed for ${FULL_OUTPUT} at the alternator`),
        result('ratio', d1 / d2, ':1', 3),
      ],
      basis: 'pulley ratio, no slip',
      assumed: [`near full output at ${FULL_OUTPUT} rpm of its shaft (from memory); the maker's curve beats that`],
      caution: `Keep fingers and sleeves off the running belt; stay under the alternator's top speed. ${MANUAL_FIRST}`,
      source: 'pulley ratio, n1 d1 = n2 d2',
    };
  },
});
