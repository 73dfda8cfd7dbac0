import { z } from 'zod';
import { PAINT_CAUTION } from './coverage.ts';
import { amount, measure, unitSaid } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';

export const paintMix = defineSum({
  of: 'paintMix',
  answers: 'How much of each part makes a ready-mixed amount, such as 4:1:1.',
  fields: { parts: 'list of the parts, [4, 1, 1]', total: 'ready-mixed amount wanted', first: 'or the amount of the first part on hand' },
  given: z.object({
    parts: z.array(amount('zero or more'), { error: 'must be a list of parts' }).max(6, { error: 'are more than six' }).optional(),
    ...measure('total', 'volume'),
    ...measure('first', 'volume'),
  }),
  work(given) {
    const parts = given.parts ?? [];
    if (parts.length < 2) return ask('parts', 'What parts, such as 4 to 1 to 1?');
    const sum = parts.reduce((total, each) => total + each, 0);
    const [lead = 0] = parts;
    if (sum <= 0 || lead <= 0) return refuse('The first part of the mix cannot be nothing.');
    if (given.total === undefined && given.first === undefined) return ask('total', 'How much ready to spray?');
    const unit = unitSaid(given, ['total', 'first']) ?? 'fl oz';
    const share = given.total === undefined ? (given.first ?? 0) / lead : given.total / sum;
    const decimals = unit === 'mL' ? 0 : 2;
    return {
      results: [
        ...parts.flatMap((each, i) => pair(`part${i + 1}`, each * share, unit, decimals, unit === 'fl oz' ? 0 : 2)),
        ...pair('volume', sum * share, unit, decimals, unit === 'fl oz' ? 0 : 2, 'ready mixed'),
      ],
      basis: `${parts.join(':')} by volume`,
      assumed: unitSaid(given, ['total', 'first']) ? [] : ['ounces; say millilitres if not'],
      caution: `Mix by the parts of the same paint's sheet. ${PAINT_CAUTION}`,
      source: 'parts by volume',
    };
  },
});
