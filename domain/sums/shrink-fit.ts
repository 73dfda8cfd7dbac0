import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { findMaterial, MATERIAL_CHOICES } from './expansion.ts';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair, risePair, round } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';

/** Room to slip together, per unit of diameter: common practice, no source. */
const SLIP = 0.0005;
/** Past this most parts lose their temper or their shape, °F of rise (ring gears about 450 °F hot, from memory). */
const HOTTEST_RISE = 600;
const NAMES = ['diameter', 'interference', 'clearance'] as const;

/** Rise (or drop) in °F that changes a diameter by so much; `perF` in millionths. */
const riseFor = (change: number, diameter: number, perF: number): number => change / (perF * 1e-6 * diameter);

export const shrinkFit = defineSum({
  of: 'shrinkFit',
  answers: 'How much hotter (or colder) a part must be for a shrink fit to go together.',
  fields: {
    diameter: 'of the fit',
    interference: 'of the fit',
    clearance: 'room wanted for it to slip on (none where not said)',
    material: 'of the part heated or cooled',
  },
  given: z.object({
    ...measure('diameter', 'length'),
    ...measure('interference', 'length'),
    ...measure('clearance', 'length', 'zero or more'),
    material: z.string().optional(),
  }),
  work(given) {
    if (given.diameter === undefined) return ask('diameter', 'What diameter is the fit?');
    if (given.interference === undefined) return ask('interference', 'How much interference?');
    if (!given.material) return ask('material', 'What is the part that is heated or cooled made of?', MATERIAL_CHOICES);
    const material = findMaterial(given.material);
    if (!material) return refuse(`I have no expansion for "${given.material}"; I have ${MATERIAL_CHOICES.join(', ')}.`);
    const assumed: string[] = [];
    const unit = sharedUnit(given, NAMES, 'in', 'mm', assumed);
    const [diameter = 0, interference = 0, clearance = 0] = NAMES.map((name) => valueIn(given, name, unit));
    if (interference > diameter / 100)
      return refuse(`${interference} on ${diameter} ${unit} is over one percent: no shrink fit is that tight.`);
    const rise = riseFor(interference + clearance, diameter, material.perF);
    if (rise > HOTTEST_RISE) return refuse(`That wants ${round(rise, 0)} °F of heat: more than a part keeps its temper or shape through.`);
    const slip = riseFor(interference + SLIP * diameter, diameter, material.perF);
    const heat = metricAsked(unit) ? '°C' : '°F';
    const asked = (value: number) => convertRiseTo(value, heat);
    if (given.clearance === undefined)
      assumed.push(
        `just enough to touch; for room to slip on say a clearance (another 0.05 % of the diameter makes it ${round(asked(slip), 0)} ${heat})`,
      );
    assumed.push(
      `${material.name} at ${material.perF} millionths per °F (printed ${material.range}); the other part stays at room temperature`,
    );
    return {
      results: [
        ...risePair('rise', asked(rise), heat),
        ...(given.clearance === undefined ? risePair('riseToSlip', asked(slip), heat) : []),
        ...pair('temperature', (heat === '°F' ? 70 : 20) + asked(rise), heat, 0, 0, 'if heated from room temperature'),
      ],
      basis: `${material.name}, (interference + clearance) over expansion times diameter; the same number of degrees down if it is cooled`,
      assumed,
      caution: `Hot steel, cold burns: gloves, no oil near, no torch on a bearing; ring gears stay under about 450 °F and bearings under 250 °F. ${MANUAL_FIRST}`,
      source: 'linear expansion; coefficients of printed tables (steel, stainless and brass from memory)',
    };
  },
});

const metricAsked = (unit: string): boolean => unit === 'mm' || unit === 'cm' || unit === 'µm';
const convertRiseTo = (fahrenheit: number, unit: string): number => (unit === '°C' ? fahrenheit / 1.8 : fahrenheit);
