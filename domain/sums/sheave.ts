import { z } from 'zod';
import { amount, measure, sharedUnit, valueIn } from './given.ts';
import { pair, result } from './results.ts';
import { ask, defineSum, type Outcome } from './sum.ts';

/** Speed the driven pulley turns at: n2 = n1 d1 / d2. */
export const drivenSpeed = (rpm1: number, d1: number, d2: number): number => (rpm1 * d1) / d2;

export const sheave = defineSum({
  of: 'sheave',
  answers: 'How fast a pulley turns, or what pulley gives a speed. Any three of the four settle the fourth.',
  fields: { d1: 'driving pulley', d2: 'driven pulley', rpm1: 'speed of the driving shaft, rpm', rpm2: 'speed of the driven shaft, rpm' },
  given: z.object({
    ...measure('d1', 'length'),
    ...measure('d2', 'length'),
    rpm1: amount('zero or more').optional(),
    rpm2: amount('zero or more').optional(),
  }),
  work(given) {
    const assumed = ['no slip, pulleys at the pitch line'];
    if (given.d1 === undefined && given.d2 === undefined) return ask('d1', 'What diameter is the driving pulley?');
    const unit = given.d1Unit ?? given.d2Unit ?? sharedUnit(given, ['d1', 'd2'], 'in', 'mm', assumed);
    const [d1, d2] = [valueIn(given, 'd1', unit), valueIn(given, 'd2', unit)];
    const { rpm1, rpm2 } = given;
    if (d1 !== undefined && d2 !== undefined) return speed(d1, d2, rpm1, rpm2, assumed);
    if (!rpm1 || !rpm2)
      return ask(d1 === undefined ? 'd1' : 'd2', `What diameter is the ${d1 === undefined ? 'driving' : 'driven'} pulley?`);
    const found = d1 === undefined ? ((d2 ?? 0) * rpm2) / rpm1 : (d1 * rpm1) / rpm2;
    return finish(
      [
        ...pair(
          'diameter',
          found,
          unit,
          unit === 'in' ? 3 : 1,
          unit === 'in' ? 1 : 3,
          d1 === undefined ? 'driving pulley' : 'driven pulley',
        ),
        result('ratio', rpm1 / rpm2, ':1', 3),
      ],
      assumed,
    );
  },
});

function speed(d1: number, d2: number, rpm1: number | undefined, rpm2: number | undefined, assumed: string[]): Outcome {
  if (rpm1 === undefined && rpm2 === undefined) return ask('rpm1', 'How fast does the driving shaft turn?');
  const found =
    rpm1 !== undefined
      ? result('rpm', drivenSpeed(rpm1, d1, d2), 'rpm', 1, 'driven shaft')
      : result('rpm', drivenSpeed(rpm2 ?? 0, d2, d1), 'rpm', 1, 'driving shaft');
  return finish([found, result('ratio', d2 / d1, ':1', 3)], assumed);
}

const finish = (results: ReturnType<typeof pair>, assumed: string[]): Outcome => ({
  results,
  basis: 'speed times diameter is the same on both shafts',
  assumed,
  caution: 'A faster pulley or fan can burst: keep under the speed it is marked for.',
  source: 'pulley ratio, n1 d1 = n2 d2',
});
