import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { DEFLECTION_FORCE, findSection } from './belt-standards.ts';
import { measure, valueIn } from './given.ts';
import { inchFraction } from './inch-fraction.ts';
import { pair } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';

export const beltTension = defineSum({
  of: 'beltTension',
  answers: 'How far a belt is pushed to test its tension, and with what force.',
  fields: { span: 'free length between pulleys', section: 'A, B, C (for the force)', d1: 'small pulley (for the force)' },
  given: z.object({ ...measure('span', 'length'), ...measure('d1', 'length'), section: z.string().optional() }),
  work(given) {
    if (given.span === undefined) return ask('span', 'How long is the free span between the pulleys?');
    const unit = given.spanUnit ?? 'in';
    const inches = valueIn({ ...given, spanUnit: unit }, 'span', 'in') ?? 0;
    const section = given.section === undefined ? undefined : findSection(given.section);
    if (given.section !== undefined && !section) return refuse(`I have forces for sections A, B and C, not "${given.section}".`);
    const small = valueIn(given, 'd1', 'in');
    const force = DEFLECTION_FORCE.find(
      (each) => each.section === section?.name && small !== undefined && small >= each.from && small <= each.to,
    );
    if (section && small !== undefined && !force) return refuse(`The force table has no ${section.name} section on a ${small} in pulley.`);
    return {
      results: [
        ...pair('deflection', given.span / 64, unit, unit === 'in' ? 4 : 2, 3),
        ...(force ? [...pair('force', force.fresh, 'lbf', 1, 0, 'new belt'), ...pair('force', force.used, 'lbf', 1, 0, 'used belt')] : []),
      ],
      basis: `1/64 of the span${unit === 'in' ? `, ${inchFraction(inches / 64)} in` : ''}, pushed at the middle`,
      assumed: [
        ...(given.spanUnit ? [] : ['the span in inches; say mm if it was']),
        ...(force ? [] : ['no force: say the section and the small pulley for it']),
      ],
      caution: `A measured push, not the feel of a thumb; new belts go again after run-in. ${MANUAL_FIRST}`,
      source: "a belt maker's installation guide, pp. 13 and 22 (uncogged belts)",
    };
  },
});
