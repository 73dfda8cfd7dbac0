import { z } from 'zod';
import { amount } from './given.ts';
import { result } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';

/** A resting lead-acid battery by quarters of charge. Source: two printed charts. */
const QUARTERS = [25, 50, 75, 100] as const;
const AT_REST = {
  12: { points: [12.06, 12.24, 12.45, 12.65], slack: 0.35 },
  6: { points: [6, 6.1, 6.2, 6.3], slack: 0.17 },
  gravity: { points: [1.155, 1.19, 1.225, 1.265], slack: 0.03 },
} as const;

/** Charge in percent, straight between the printed quarters; 'low' or 'high' outside them. A little over full counts as full. */
function charge(reading: number, { points, slack }: (typeof AT_REST)[keyof typeof AT_REST]): number | 'low' | 'high' {
  if (reading < points[0]) return 'low';
  if (reading > points[3] + slack) return 'high';
  if (reading >= points[3]) return 100;
  const i = points.findIndex((each) => each > reading) - 1;
  const [low, high] = [points[i] ?? 0, points[i + 1] ?? 0];
  return (QUARTERS[i] ?? 0) + (25 * (reading - low)) / (high - low);
}

export const battery = defineSum({
  of: 'battery',
  answers: 'How full a resting battery is, by its volts or the gravity of its acid.',
  fields: { volts: 'at rest', gravity: 'specific gravity of the acid (instead)', system: '6 or 12 (by the volts where not said)' },
  given: z.object({ volts: amount().optional(), gravity: amount().optional(), system: z.number({ error: 'must be a number' }).optional() }),
  work(given) {
    if (given.volts === undefined && given.gravity === undefined) return ask('volts', 'What does it read at rest?');
    const system = given.system ?? ((given.volts ?? 12) < 8 ? 6 : 12);
    if (system !== 6 && system !== 12) return refuse('I have 6 and 12 volt batteries only.');
    const percent = given.volts === undefined ? charge(given.gravity ?? 0, AT_REST.gravity) : charge(given.volts, AT_REST[system]);
    if (percent === 'low') return refuse('That is under a quarter charged, outside the table: charge it, then test it.');
    if (percent === 'high') return refuse('That is a battery on charge or just off it: let it stand some hours, then read it.');
    return {
      results: [result('percent', percent, '%', 0)],
      basis: `resting ${given.volts === undefined ? '' : `${system} V `}lead-acid, straight lines between the printed quarters`,
      assumed: ['rested some hours with nothing drawing, near room temperature'],
      caution:
        "Charging gives off explosive gas: vents clear, no sparks, eye protection; go by the charger's and the battery's instructions.",
      source: 'printed charts of rest voltage and specific gravity',
    };
  },
});
