import { z } from 'zod';
import { findDrill } from './drills.ts';
import { named, pair, result } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';

interface PipeSize {
  tpi: number;
  od: number;
  drill: string;
  reamed: string;
}
const pipe = (tpi: number, od: number, drill: string, reamed: string): PipeSize => ({ tpi, od, drill, reamed });

/**
 * American taper pipe: threads per inch, pipe outside (in), tap drill without and before a taper reamer.
 * Source: ASME B1.20.1 as reprinted in two charts, 1/8 to 1/2; 3/4 to 1-1/4 read on two web charts;
 * the rest from memory. Charts differ by a drill step or two.
 */
const NPT: Readonly<Record<string, PipeSize>> = {
  '1/16': pipe(27, 0.3125, 'C', '15/64'),
  '1/8': pipe(27, 0.405, 'R', '21/64'),
  '1/4': pipe(18, 0.54, '7/16', '27/64'),
  '3/8': pipe(18, 0.675, '37/64', '9/16'),
  '1/2': pipe(14, 0.84, '23/32', '11/16'),
  '3/4': pipe(14, 1.05, '59/64', '57/64'),
  '1': pipe(11.5, 1.315, '1-5/32', '1-1/8'),
  '1-1/4': pipe(11.5, 1.66, '1-1/2', '1-15/32'),
  '1-1/2': pipe(11.5, 1.9, '1-47/64', '1-23/32'),
  '2': pipe(11.5, 2.375, '2-7/32', '2-3/16'),
};

/** "1/4-18 NPT", "quarter inch pipe tap 1/4", "1 1/4" -> the nominal size as the table names it. */
const tidySize = (text: string): string =>
  text
    .toLowerCase()
    .replace(/n\.?p\.?t\.?|pipe|thread|tap|inch(es)?|["”]|\bin\b/g, ' ')
    .trim()
    .replace(/[-\s]+(27|18|14|11\.5|11-1\/2)$/, '')
    .replace(/^(\d)[\s-]+(\d\/\d)/, '$1-$2');

export const pipeThread = defineSum({
  of: 'pipeThread',
  answers: 'Which drill to tap a taper pipe thread (NPT), its threads per inch and the outside of the pipe.',
  fields: { size: 'nominal pipe size, "1/4", "1-1/4"' },
  given: z.object({ size: z.coerce.string().optional() }),
  work: ({ size }) => pipeAnswer(size),
});

/** Drill and thread of a taper pipe size, also for one asked of as a thread to tap. */
export function pipeAnswer(size: string | undefined): Outcome {
  if (!size) return ask('size', 'What pipe size?');
  if (/bsp|metric|british/i.test(size))
    return refuse('British pipe (BSP, 55°) is another thread and will not seal in NPT: I have no table for it.');
  const name = tidySize(size);
  const found = NPT[name];
  if (!found) return refuse(`"${size}" is not an NPT size that I have; they are ${Object.keys(NPT).join(', ')}.`);
  const hole = findDrill(found.drill)?.inches ?? 0;
  return {
    results: [
      named('drill', found.drill),
      named('drillReamed', found.reamed),
      ...pair('hole', hole, 'in', 4, 2),
      result('pitch', found.tpi, 'tpi', 1),
      ...pair('outside', found.od, 'in', 4, 1),
    ],
    basis: `${name} NPT, tapped without a reamer; ${found.reamed} before a taper reamer`,
    assumed: ['no taper reamer; charts differ by one or two drill steps, so try the plug'],
    source: 'ASME B1.20.1; the taper is 1 in 16 (3/4 in per foot)',
  };
}
