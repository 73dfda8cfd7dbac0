import { z } from 'zod';
import { amount, measure, sharedUnit, valueIn } from './given.ts';
import { pair, result } from './results.ts';
import { drivenSpeed } from './sheave.ts';
import { ask, defineSum, refuse } from './sum.ts';

const USUAL_GROOVE = 36;

/**
 * Loss of pitch diameter for one turn of the moving flange: the gap opens by one thread, and a belt of the same width sinks by
 * gap / (2 tan of half the groove angle) on each side of the shaft. All in the unit of the thread's lead.
 */
export const lossPerTurn = (lead: number, grooveDegrees: number): number => lead / Math.tan((grooveDegrees * Math.PI) / 360);

export const adjustableSheave = defineSum({
  of: 'adjustableSheave',
  answers: 'Pitch diameter and speed of a sheave by turns open of its flange.',
  fields: {
    d1: 'pitch diameter with the flange closed',
    turns: 'turns open',
    pitch: 'threads per inch of the flange',
    angle: `groove angle, ° (${USUAL_GROOVE} where not said)`,
    smallest: 'pitch diameter fully open, with',
    turnsOpen: 'turns from closed to fully open (instead of pitch and angle)',
    rpm1: 'speed of the sheave, rpm',
    d2: 'driven pulley (for its speed)',
  },
  given: z.object({
    ...measure('d1', 'length'),
    ...measure('smallest', 'length'),
    ...measure('d2', 'length'),
    turns: amount('zero or more').optional(),
    pitch: amount().optional(),
    angle: amount().max(60, { error: 'of a V groove is under 60°' }).optional(),
    turnsOpen: amount().optional(),
    rpm1: amount().optional(),
  }),
  work(given) {
    if (given.d1 === undefined) return ask('d1', 'What is the pitch diameter with the flange closed?');
    if (given.turns === undefined) return ask('turns', 'How many turns open?');
    const assumed: string[] = [];
    const unit = sharedUnit(given, ['d1', 'smallest', 'd2'], 'in', 'mm', assumed);
    const [d1, smallest, d2] = [given.d1, valueIn(given, 'smallest', unit), valueIn(given, 'd2', unit)];
    const byRange = smallest !== undefined && given.turnsOpen !== undefined;
    if (!byRange && given.pitch === undefined) return ask('pitch', 'How many threads per inch has the moving flange?');
    if (!byRange && given.angle === undefined) assumed.push(`a ${USUAL_GROOVE}° groove; say the angle if it isn't`);
    const lead = (unit === 'mm' ? 25.4 : 1) / (given.pitch ?? 1);
    const loss = byRange ? (d1 - (smallest ?? 0)) / (given.turnsOpen ?? 1) : lossPerTurn(lead, given.angle ?? USUAL_GROOVE);
    const diameter = d1 - loss * given.turns;
    if ((byRange && given.turns > (given.turnsOpen ?? 0)) || diameter <= (smallest ?? 0) - 1e-9)
      return refuse(`${given.turns} turns open is past what the sheave has.`);
    const rpm =
      given.rpm1 !== undefined && d2 !== undefined ? [result('rpm', drivenSpeed(given.rpm1, diameter, d2), 'rpm', 0, 'driven shaft')] : [];
    return {
      results: [
        ...pair('diameter', diameter, unit, unit === 'mm' ? 1 : 3, unit === 'mm' ? 3 : 1),
        ...pair('lossPerTurn', loss, unit, unit === 'mm' ? 2 : 4, unit === 'mm' ? 4 : 2),
        ...rpm,
      ],
      basis: byRange ? 'straight line between closed and open' : 'the belt sinks as the groove opens by one thread a turn',
      assumed,
      caution: 'Stop the engine and lock it off before turning a flange; lock the set screw after.',
      source: 'geometry of a V groove',
    };
  },
});
