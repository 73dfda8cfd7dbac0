import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { amount } from './given.ts';
import { named, result, round } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { FUSE_OF_GAUGE, gaugeName, parseGauge } from './wire.ts';

/** Standard blade and cartridge sizes, A (from memory). */
const FUSES = [3, 5, 7.5, 10, 15, 20, 25, 30];
/** A fuse carries 80 % of its mark for good: common practice, from memory. */
const LOADED = 0.8;

export const fuse = defineSum({
  of: 'fuse',
  answers: 'Which fuse for a load, and the thinnest wire it may protect.',
  fields: { amps: 'steady current', watts: 'of the load, with', volts: 'of the system', gauge: 'AWG of the wire, to check it' },
  given: z.object({
    amps: amount().optional(),
    watts: amount().optional(),
    volts: amount().optional(),
    gauge: z.union([z.number(), z.string()]).optional(),
  }),
  work(given) {
    const amps = given.amps ?? (given.watts !== undefined && given.volts !== undefined ? given.watts / given.volts : undefined);
    if (amps === undefined)
      return given.watts === undefined ? ask('amps', 'How many amps does it draw?') : ask('volts', 'Six volts or twelve?', ['6', '12']);
    const least = amps / LOADED;
    const size = FUSES.find((each) => each >= least - 1e-9);
    if (!size)
      return refuse(`${round(least, 1)} A is over the 30 A fuses of the table: that wants a breaker or a fusible link by the manual.`);
    const thinnest = [...FUSE_OF_GAUGE].find(([, most]) => most >= size);
    const n = given.gauge === undefined ? undefined : parseGauge(given.gauge);
    if (given.gauge !== undefined && n === undefined) return refuse(`There is no ${given.gauge} gauge wire in the table.`);
    if (n !== undefined && thinnest && n > thinnest[0]) {
      return refuse(
        `This load wants a ${size} A fuse and ${gaugeName(n)} may not be fused that high: run ${gaugeName(thinnest[0])} or thicker.`,
      );
    }
    return {
      results: [result('fuse', size, 'A', 1), ...(thinnest ? [named('gauge', gaugeName(thinnest[0]))] : []), result('amps', amps, 'A', 2)],
      basis: `${round(amps, 2)} A over 0.8 is ${round(least, 2)} A, next size up; wire rated for the fuse`,
      assumed: ['a steady load; a motor draws several times as much as it starts'],
      caution: `A fuse protects the wire: never above the wire's rating, never a bigger one because it blows. ${MANUAL_FIRST}`,
      source: '80 % rule and fuse sizes: common practice, from memory; wire under fuse: FAA AC 43.13-1B table 11-3',
    };
  },
});
