import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum } from './sum.ts';

/** End gap per unit of bore, least and most: common practice, no source. */
const GAP_PER_BORE = [0.003, 0.004] as const;
const NAMES = ['bore', 'change', 'gap'] as const;

export const ringGap = defineSum({
  of: 'ringGap',
  answers: 'End gap of a piston ring from the bore, and what a worn or bored cylinder adds to it.',
  fields: { bore: 'bore', change: 'how much larger the bore has become (gap growth asked)', gap: 'gap at the old bore, with change' },
  given: z.object({
    ...measure('bore', 'length'),
    ...measure('change', 'length', 'zero or more'),
    ...measure('gap', 'length', 'zero or more'),
  }),
  work(given) {
    if (given.bore === undefined && given.change === undefined) return ask('bore', 'What is the bore?');
    const assumed: string[] = [];
    const unit = sharedUnit(given, NAMES, 'in', 'mm', assumed);
    const [bore, change, gap] = NAMES.map((name) => valueIn(given, name, unit));
    const show = (name: string, value: number, note?: string) =>
      pair(name, value, unit, unit === 'in' ? 4 : 3, unit === 'in' ? 2 : 4, note);
    const grown =
      change === undefined
        ? []
        : [...show('gapChange', Math.PI * change), ...(gap === undefined ? [] : show('gap', gap + Math.PI * change, 'as it is now'))];
    const rule =
      bore === undefined || gap !== undefined
        ? []
        : [...show('gap', GAP_PER_BORE[0] * bore, 'least'), ...show('gap', GAP_PER_BORE[1] * bore, 'most of the rule, not a wear limit')];
    return {
      results: change === undefined ? rule : [...grown, ...rule],
      basis: change === undefined ? '0.003 to 0.004 per inch of bore' : 'the gap grows by π times the bore',
      assumed,
      caution: `A gap too small breaks the ring or the piston; measure it square, in the unworn bottom of the bore. ${MANUAL_FIRST}`,
      source: 'growth: TM 5-3805-261-34 (.003 per .001) and the circumference; gap per inch: common practice, no source',
    };
  },
});
