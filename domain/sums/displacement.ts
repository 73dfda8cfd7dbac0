import { z } from 'zod';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum } from './sum.ts';
import { convert } from './units.ts';

/** Swept volume of one cylinder, cubic units of its dimensions. */
export const sweptVolume = (bore: number, stroke: number): number => (Math.PI / 4) * bore ** 2 * stroke;

export const displacement = defineSum({
  of: 'displacement',
  answers: 'Displacement of an engine.',
  fields: { bore: 'bore', stroke: 'stroke', cylinders: 'how many' },
  given: z.object({
    ...measure('bore', 'length'),
    ...measure('stroke', 'length'),
    cylinders: z.number().int({ error: 'must be a whole number' }).positive({ error: 'must be over zero' }).optional(),
  }),
  work(given) {
    if (given.bore === undefined) return ask('bore', 'What is the bore?');
    if (given.stroke === undefined) return ask('stroke', 'What is the stroke?');
    if (given.cylinders === undefined) return ask('cylinders', 'How many cylinders?');
    const assumed: string[] = [];
    const unit = sharedUnit(given, ['bore', 'stroke'], 'in', 'mm', assumed);
    const inches = (name: 'bore' | 'stroke') => convert(valueIn(given, name, unit) ?? 0, unit, 'in');
    const cubicInches = sweptVolume(inches('bore'), inches('stroke')) * given.cylinders;
    const results = [
      ...pair('volume', cubicInches, 'in³', 1, 0),
      ...pair('volume', convert(cubicInches, 'in³', 'L'), 'L', 3, 1).slice(0, 1),
    ];
    return {
      results: unit === 'in' ? results : [...results.slice(1), ...results.slice(0, 1)],
      basis: 'π/4 x bore² x stroke x cylinders',
      assumed,
      source: 'swept volume of a cylinder',
    };
  },
});
