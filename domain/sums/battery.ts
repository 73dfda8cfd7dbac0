import { z } from 'zod';
import { amount } from './given.ts';
import { result } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';

/** Resting lead-acid battery: charge %, volts of a 12 V battery, specific gravity. Source: two printed charts. 6 V is half. */
const REST = [[25, 12.06, 1.155], [50, 12.24, 1.19], [75, 12.45, 1.225], [100, 12.65, 1.265]] as const;

export const battery = defineSum({
  of: 'battery',
  answers: 'How full a resting battery is, by its volts or the gravity of its acid.',
  fields: { volts: 'at rest', gravity: 'specific gravity of the acid (instead)', system: '6 or 12 (by the volts where not said)' },
  given: z.object({ volts: amount().optional(), gravity: amount().optional(), system: z.number().optional() }),
  work(given) {
    if (given.volts === undefined && given.gravity === undefined) return ask('volts', 'What does it read at rest?');
    const system = given.system ?? ((given.volts ?? 12) < 8 ? 6 : 12);
    if (system !== 6 && system !== 12) return refuse('I have 6 and 12 volt batteries only.');
    const column = given.volts === undefined ? 2 : 1;
    const reading = given.volts === undefined ? given.gravity ?? 0 : given.volts * (12 / system);
    const [least, most] = [REST[0][column], REST[3][column]];
    if (reading < least) return refuse('Under a quarter charged: charge it, then test it; a lower figure is outside the table.');
    if (reading > most + (column === 1 ? 0.35 : 0.03)) return refuse('That is a charging voltage or reading, not a battery at rest: let it stand some hours.');
    const above = REST.findIndex((row) => row[column] >= Math.min(reading, most));
    const [low, high] = [REST[Math.max(above - 1, 0)] ?? REST[0], REST[above] ?? REST[3]];
    const share = high === low ? 0 : (Math.min(reading, most) - low[column]) / (high[column] - low[column]);
    return {
      results: [result('percent', low[0] + share * (high[0] - low[0]), '%', 0)],
      basis: `resting ${system} V lead-acid, straight lines between the printed quarters`,
      assumed: ['rested some hours with nothing drawing, near room temperature'],
      caution: 'Charging gives off explosive gas: vents clear, no sparks, eye protection; charge by the charger\'s and battery\'s instructions.',
      source: 'printed charts of rest voltage and specific gravity',
    };
  },
});
