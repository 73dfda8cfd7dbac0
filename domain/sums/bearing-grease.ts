import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { measure, valueIn } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum } from './sum.ts';

/** Grams of grease per mm² of outside diameter times width (bearing makers, from memory; one page's 0.0005 is a misprint). */
const GRAMS = 0.005;

export const bearingGrease = defineSum({
  of: 'bearingGrease',
  answers: 'How much grease a rolling bearing takes when it is topped up.',
  fields: { diameter: 'outside diameter of the bearing', width: 'its width' },
  given: z.object({ ...measure('diameter', 'length'), ...measure('width', 'length') }),
  work(said) {
    if (said.diameter === undefined) return ask('diameter', 'What is the outside diameter of the bearing?');
    if (said.width === undefined) return ask('width', 'How wide is it?');
    const unit = said.diameterUnit ?? said.widthUnit ?? 'mm';
    const given = { ...said, diameterUnit: said.diameterUnit ?? unit, widthUnit: said.widthUnit ?? unit };
    return {
      results: pair('grease', GRAMS * (valueIn(given, 'diameter', 'mm') ?? 0) * (valueIn(given, 'width', 'mm') ?? 0), 'g', 1, 2),
      basis: '0.005 g x outside diameter x width, both in mm',
      assumed: unit === 'mm' && !said.diameterUnit ? ['millimetres; say inches if it was'] : [],
      caution: `For regreasing, not the first packing; too much heats the bearing. ${MANUAL_FIRST}`,
      source: "bearing makers' rule, from memory",
    };
  },
});
