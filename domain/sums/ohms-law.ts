import { z } from 'zod';
import { amount } from './given.ts';
import { result } from './results.ts';
import { ask, defineSum } from './sum.ts';

export const ohmsLaw = defineSum({
  of: 'ohmsLaw',
  answers: 'Volts, amps, ohms and watts: any two give the other two.',
  fields: { volts: 'V', amps: 'A', ohms: 'Ω', watts: 'W' },
  given: z.object({ volts: amount().optional(), amps: amount().optional(), ohms: amount().optional(), watts: amount().optional() }),
  work({ volts, amps, ohms, watts }) {
    const v = volts ?? (amps && ohms ? amps * ohms : watts && amps ? watts / amps : watts && ohms ? Math.sqrt(watts * ohms) : undefined);
    const i = amps ?? (v && ohms ? v / ohms : watts && v ? watts / v : undefined);
    if (v === undefined) return ask('volts', 'How many volts?');
    if (i === undefined) return ask('amps', 'How many amps, ohms or watts?');
    const all = [result('volts', v, 'V', 3), result('amps', i, 'A', 3), result('ohms', v / i, 'Ω', 3), result('watts', v * i, 'W', 2)];
    const told = new Set(
      Object.entries({ volts, amps, ohms, watts })
        .filter(([, value]) => value !== undefined)
        .map(([name]) => name),
    );
    return {
      results: [...all.filter((each) => !told.has(each.name)), ...all.filter((each) => told.has(each.name))],
      basis: 'V = I R, P = V I',
      assumed: ['direct current, steady'],
      caution: 'Battery side only: mains is for a licensed electrician.',
      source: "Ohm's law",
    };
  },
});
