import { z } from 'zod';
import { amount } from './given.ts';
import { named, pair, result } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { circularMils, gaugeName, ohmsPerFoot, parseGauge, STOCK_GAUGES, wireDiameter } from './wire.ts';

/** Copper section of a gauge, mm². */
const sectionOf = (n: number): number => (Math.PI / 4) * (wireDiameter(n) * 25.4) ** 2;

export const wireGauge = defineSum({
  of: 'wireGauge',
  answers: 'Diameter, section and resistance of a wire gauge, or the gauge at least as thick as a section.',
  fields: { gauge: 'AWG, 14 or "1/0"', section: 'mm² (instead: the gauge that replaces it)' },
  given: z.object({ gauge: z.union([z.number(), z.string()], { error: 'must be a wire gauge' }).optional(), section: amount().optional() }),
  work({ gauge, section }) {
    if (gauge === undefined && section === undefined) return ask('gauge', 'Which gauge?');
    // A section is nominal: a gauge within 4 % of it is the one sold for it (2.08 mm² for 2).
    const n = gauge !== undefined ? parseGauge(gauge) : STOCK_GAUGES.find((each) => sectionOf(each) >= (section ?? 0) * 0.96);
    if (n === undefined)
      return refuse(gauge === undefined ? 'That is thicker than 4/0.' : `There is no ${gauge} gauge wire; gauges run 4/0 to 40.`);
    return {
      results: [
        ...(gauge === undefined ? [named('gauge', gaugeName(n))] : []),
        ...pair('diameter', wireDiameter(n), 'in', 4, 2),
        result('section', sectionOf(n), 'mm²', 3),
        result('circularMils', circularMils(n), 'cmil', 0),
        result('resistance', ohmsPerFoot(n) * 1000, 'Ω/1000 ft', 4),
      ],
      basis: `${gaugeName(n)} solid copper at 20 °C`,
      assumed: ['bare conductor; stranded wire of the same gauge is a little thicker over all'],
      source: 'ASTM B258: .005 in x 92^((36 - n)/39), copper 10.371 Ω·cmil/ft',
    };
  },
});
