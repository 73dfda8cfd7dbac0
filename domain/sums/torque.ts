import { z } from 'zod';
import { MANUAL_FIRST, type SumResult } from './answer.ts';
import { gradeTitle, proofOf, readBolt, type Bolt } from './bolt.ts';
import { measure } from './given.ts';
import { ARMY_PLATED, NUT_FACTORS, readSurface, type Surface } from './nut-factor.ts';
import { pair, round } from './results.ts';
import { ask, defineSum } from './sum.ts';
import { convert } from './units.ts';

/** Charts tighten to three quarters of proof. */
const SHARE_OF_PROOF = 0.75;
/** Below this charts are printed in lb-in as well. */
const SMALL_TORQUE_LB_FT = 50;

const TORQUE_CAUTION =
  `K scatters by 30 % either way, and the charts are for new, clean steel on steel: not for threads in cast iron or aluminium, ` +
  `wheel bolts, heads or rods. ${MANUAL_FIRST}`;

/** Clamp load at 75 % of proof: lbf for an inch bolt, N for a metric one. */
const clampLoad = (bolt: Bolt): number => SHARE_OF_PROOF * proofOf(bolt).stress * bolt.thread.area;

/** T = K D F in the bolt's own system: lb-ft, or N·m. */
const tighteningTorque = (bolt: Bolt, k: number): number =>
  (k * bolt.thread.d * clampLoad(bolt)) / (bolt.thread.system === 'inch' ? 12 : 1000);

/** The torque in the bolt's own system first, lb-in beside it where it is small. */
export function torqueResults(bolt: Bolt, k: number, note?: string): SumResult[] {
  const torque = tighteningTorque(bolt, k);
  const results = pair('torque', torque, bolt.thread.system === 'inch' ? 'lb-ft' : 'N·m', 1, 1, note);
  const pounds = bolt.thread.system === 'inch' ? torque : convert(torque, 'N·m', 'lb-ft');
  if (pounds >= SMALL_TORQUE_LB_FT) return results;
  const small: SumResult = { name: 'torque', value: round(pounds * 12, 1), unit: 'lb-in' };
  return [...results, note ? { ...small, note } : small];
}

const torqueBasis = (bolt: Bolt, surface: Surface): string =>
  `${gradeTitle(bolt)}, ${bolt.thread.label}, ${surface}, K ${NUT_FACTORS[surface].k.toFixed(2)}, 75 % of ${proofOf(bolt).word}`;

const TORQUE_SOURCE =
  'SAE J429 and ISO 898-1 proof loads, ASME B1.1 and ISO 898-1 stress areas, nut factors of the printed torque charts';

export const torque = defineSum({
  of: 'torque',
  answers: 'How tight a bolt is pulled, and what clamp load that gives.',
  fields: {
    size: 'thread, "5/8-11", "5/8 fine", "#10-32", "M12x1.75"',
    grade: 'grade or class as a string, "5", "8.8", "B7"',
    surface: 'dry, oiled, anti-seize, plated, waxed',
    length: 'bolt length, in or mm (only matters for grade 2 over 6 in)',
  },
  given: z.object({
    size: z.string().optional(),
    grade: z.coerce.string().optional(),
    surface: z.string().optional(),
    ...measure('length', 'length'),
  }),
  work(given) {
    const length = given.length === undefined ? undefined : convert(given.length, given.lengthUnit ?? 'in', 'in');
    const read = readBolt({ size: given.size, grade: given.grade, length });
    if ('answer' in read) return read.answer;
    const { bolt } = read;
    const surface = given.surface === undefined ? 'dry' : readSurface(given.surface);
    if (!surface)
      return ask('surface', `I have no nut factor for "${given.surface}". Dry, oiled, anti-seize or plated?`, [
        'dry',
        'oiled',
        'anti-seize',
        'plated',
      ]);
    return {
      results: [
        ...torqueResults(bolt, NUT_FACTORS[surface].k, surface === 'plated' ? 'chart for zinc plated, not oiled' : undefined),
        ...armyPlated(bolt, surface),
        ...pair('clampLoad', clampLoad(bolt), bolt.thread.system === 'inch' ? 'lbf' : 'N', 0, 0),
      ],
      basis: torqueBasis(bolt, surface),
      assumed: assumptions(bolt, surface, given.surface === undefined),
      caution: TORQUE_CAUTION,
      source: TORQUE_SOURCE,
      also: surface === 'oiled' ? ['charts take a quarter off dry for oil; the Army takes 10 %'] : [],
    };
  },
});

/** The charts disagree on plating, so both conventions are given side by side. */
const armyPlated = (bolt: Bolt, surface: Surface): SumResult[] =>
  surface === 'plated' ? torqueResults(bolt, NUT_FACTORS.dry.k * ARMY_PLATED, 'Army rule, new plated 20 % under dry') : [];

function assumptions(bolt: Bolt, surface: Surface, taken: boolean): string[] {
  const notes = [...bolt.notes];
  if (taken) notes.push('dry, clean threads; say oiled, anti-seize or plated if they are');
  else if (surface === 'anti-seize') notes.push(NUT_FACTORS['anti-seize'].about);
  if (surface === 'plated') notes.push('charts disagree on plating: K runs 0.17 to 0.35, and the Army takes 20 % off dry instead');
  if (bolt.grade.name === '8.8' && bolt.thread.d > 16) notes.push('class 8.8 over M16 at its 600 MPa proof; some charts keep 580');
  if (bolt.grade.name === 'B7') notes.push('B7 has no printed proof load, so it is 75 % of yield');
  return notes;
}
