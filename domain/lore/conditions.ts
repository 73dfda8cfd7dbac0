import type { Conditions } from '../plan/conditions.ts';
import { rememberedBy } from '../model/remembered.ts';
import { actKey, actOf, type Act } from './act.ts';
import { isKindOf } from './words.ts';
import { COMMON_PRACTICE } from './order/rule.ts';

/** What an act usually asks of its hour. A missing field asks nothing. */
interface UsualConditions {
  conditions: Conditions;
  /** Done in one go. */
  unbroken: boolean;
  /** A hoist of one's own does for the second pair of hands. */
  orHoist: boolean;
  /** One line where the work can hurt. */
  caution?: string;
  source: string;
}

type Row = { verbs?: readonly string[]; parts?: readonly string[]; asks: Partial<Conditions>; unbroken?: boolean; hoist?: boolean; caution?: string; source?: string };

const COAT = { dry: true, maxRh: 85, minTempC: 10, dewMargin: 3 } as const;
const COAT_SOURCE = 'surface 3 °C over the dew point, under 85 % humidity: practice quoted from ISO 8502-4 and ISO 12944-7 by secondary sources; 10 °C common practice, no source; the product sheet beats it';
const LIFT = 'Lifting: rated gear, blocked and chocked, nobody under a load; follow the machine\'s manual.';
const HEAVY = ['engine', 'gearbox', 'front axle', 'rear axle', 'rear wheel', 'final drive', 'differential', 'block', 'hood', 'cab', 'lift cover', 'ballast weight', 'bell housing', 'torque tube'];
const COATS = ['paint', 'prime', 'varnish', 'coat'];

/** In this order; a later row that fits adds to the ones before, and the stricter of two wins. */
const ROWS: readonly Row[] = [
  { verbs: COATS, asks: { ...COAT, cureHours: 6, daylight: true }, unbroken: true, source: COAT_SOURCE,
    caution: 'Spray paint: breathing gear that suits the paint, air moving, no flame; two-pack paint needs supplied air; the sheet decides.' },
  { verbs: ['seal'], asks: { dry: true, maxRh: 85, minTempC: 5, dewMargin: 3, cureHours: 4 }, unbroken: true, source: COAT_SOURCE },
  { verbs: ['glue'], asks: { dry: true, minTempC: 10 }, unbroken: true },
  { verbs: COATS, parts: ['frame', 'tractor', 'machine', 'chassis'], asks: { place: 'outdoors' } },
  { verbs: ['blast'], asks: { place: 'outdoors' }, caution: 'Blasting: supplied air or a proper mask, eyes and skin covered, no silica sand.' },
  { verbs: ['degrease', 'clean'], parts: ['engine', 'gearbox', 'frame', 'tractor', 'machine', 'chassis', 'rear axle', 'radiator'], asks: { place: 'outdoors', minTempC: 2 } },
  { verbs: ['flush'], parts: ['block', 'radiator', 'fuel tank'], asks: { place: 'outdoors', minTempC: 2 } },
  { verbs: ['drain', 'fill', 'flush', 'clean', 'seal', 'test'], parts: ['fuel tank', 'fuel line', 'carburetor', 'sediment bowl'], asks: {},
    caution: 'Fuel: no flame, spark or heater near, air moving, an extinguisher at hand.' },
  { verbs: ['weld', 'braze', 'solder'], asks: { place: 'either' }, caution: 'Heat: tanks emptied and made safe by those who do that for a living, fire watch, covered eyes and skin.' },
  { verbs: ['weld', 'braze', 'solder'], parts: ['fuel tank'], asks: { place: 'outdoors' }, caution: 'Welding on a fuel tank kills: leave it to a licensed shop that makes tanks safe.' },
  { verbs: ['start'], parts: ['engine', 'tractor', 'machine'], asks: { place: 'outdoors' },
    caution: 'First start: fire bottle at hand, exhaust out in the open, clear of belts and fan, a second person at the switch.' },
  { verbs: ['drive'], asks: { place: 'outdoors', daylight: true }, caution: 'Driving: brakes proven at a crawl first, nobody on the drawbar.' },
  { verbs: ['lift'], asks: { hands: 2 }, hoist: true, caution: LIFT },
  { parts: HEAVY, asks: { hands: 2 }, hoist: true, caution: LIFT },
  { verbs: ['bleed'], parts: ['brake'], asks: { hands: 2 } },
  { verbs: ['charge'], parts: ['battery'], asks: {}, caution: 'Charging: gas burns and acid eats; air moving, no spark, eyes covered.' },
  { parts: ['tire', 'inner tube'], asks: {}, caution: 'Inflating: a bead can burst; cage or clip-on chuck, stand aside, never over the marked pressure.' },
  { parts: ['brake return spring', 'clutch spring', 'pressure plate', 'valve spring', 'seat spring'], asks: {}, caution: 'Springs: compressed ones fly; the right compressor, eyes covered.' },
  { verbs: ['test', 'bleed'], parts: ['hydraulics', 'hydraulic pump', 'hydraulic line', 'radiator'], asks: {}, caution: 'Pressure: let it down before a joint is opened; oil under pressure goes through skin.' },
  { parts: ['magneto', 'governor', 'piston', 'piston ring', 'crankshaft', 'main bearing', 'carburetor', 'injector', 'valve'], asks: { place: 'indoors' } },
];

const fits = ({ verbs, parts }: Row, { verb, words, off }: Act) =>
  (!verbs || verbs.includes(verb ?? '')) && (!parts || parts.some((part) => isKindOf(words, actOf(part).words))) && (verbs !== undefined || verb === undefined || off === true);

/** The usual conditions of an act: by its verb and the kind of part. A row with parts alone is about fitting and taking off. */
export const usualConditions = rememberedBy(actKey, (one: Act): UsualConditions => {
  const rows = ROWS.filter((row) => fits(row, one));
  const conditions: Conditions = { place: 'either', hands: 1 };
  for (const { asks } of rows) Object.assign(conditions, asks, { hands: Math.max(conditions.hands, asks.hands ?? 0) as Conditions['hands'] });
  const cautions = [...new Set(rows.flatMap(({ caution }) => caution ?? []))];
  return {
    conditions, unbroken: rows.some(({ unbroken }) => unbroken === true),
    orHoist: conditions.hands === 2 && rows.every(({ asks, hoist }) => asks.hands !== 2 || hoist === true),
    ...(cautions.length > 0 ? { caution: cautions.join(' ') } : {}),
    source: rows.find(({ source }) => source)?.source ?? COMMON_PRACTICE,
  };
});
