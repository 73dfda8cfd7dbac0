import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { measure, valueIn } from './given.ts';
import { pair, result, round, risePair } from './results.ts';
import { airPressure, boilingPoint } from './saturation.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { convert } from './units.ts';

/** 50/50 ethylene glycol boils about 11 °F over water, open or under a 15 psi cap (223 and 262 °F printed). */
const HALF_GLYCOL_RISE_F = 11;
const HIGHEST_CAP_PSI = 30;
const HIGHEST_FEET = 15_000;

export const boiling = defineSum({
  of: 'boiling',
  answers: 'At what temperature the coolant boils under a pressure cap.',
  fields: {
    cap: 'cap pressure (psi, or bar, kPa); 0 for an open system',
    percent: 'glycol by volume, 0 to 50',
    altitude: 'height over the sea, ft or m',
  },
  given: z.object({
    ...measure('cap', 'pressure', 'zero or more'),
    percent: z.number().min(0).optional(),
    ...measure('altitude', 'length', 'any'),
  }),
  work(given) {
    if (given.cap === undefined) return ask('cap', 'What pressure is the cap?');
    const assumed: string[] = [];
    if (!given.capUnit) assumed.push('the cap in psi; say bar or kPa if it was');
    const cap = valueIn({ ...given, capUnit: given.capUnit ?? 'psi' }, 'cap', 'psi') ?? 0;
    if (cap > HIGHEST_CAP_PSI) return refuse(`No radiator cap is ${round(cap, 0)} psi: the table stops at ${HIGHEST_CAP_PSI}.`);
    const feet = valueIn({ ...given, altitudeUnit: given.altitudeUnit ?? 'ft' }, 'altitude', 'ft') ?? 0;
    if (feet < -1000 || feet > HIGHEST_FEET) return refuse(`That altitude is outside the sum, which runs to ${HIGHEST_FEET} ft.`);
    if (given.altitude === undefined) assumed.push('at sea level; say the altitude if you are high');
    const percent = given.percent ?? 0;
    if (percent > 50) return refuse("Boiling points here go to 50 % glycol; past that, by the antifreeze maker's table.");
    if (given.percent === undefined) assumed.push('plain water; say the percent of antifreeze for the mix');
    const atmosphere = airPressure(feet * 0.3048);
    const water = convert(boilingPoint(atmosphere + convert(cap, 'psi', 'Pa')), 'K', '°F');
    const boils = water + (HALF_GLYCOL_RISE_F * percent) / 50;
    const unit = given.capUnit === 'bar' || given.capUnit === 'kPa' ? '°C' : '°F';
    return {
      results: [
        ...pair('boils', convert(boils, '°F', unit), unit, 1, 1),
        ...risePair('margin', (boils - 212) / (unit === '°C' ? 1.8 : 1), unit, 1, 'over open water at sea level'),
        result('absolute', convert(atmosphere, 'Pa', 'psi') + cap, 'psi', 2),
      ],
      basis: percent ? `water by IAPWS-IF97, plus a straight share of 11 °F at 50 % glycol (within 5 °F)` : 'water by IAPWS-IF97',
      assumed,
      caution: `Open a cap only when the radiator is cold to the touch, and never raise the pressure over the system's own. ${MANUAL_FIRST}`,
      source: 'IAPWS-IF97 region 4; 50/50 glycol 223 °F open and 262 °F at 15 psi as printed by radiator makers',
      also: ['the 3 °F a psi rule overstates at high caps: 15 psi gives water 38 °F, not 45'],
    };
  },
});
