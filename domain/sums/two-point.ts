import { z } from 'zod';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum } from './sum.ts';

export const twoPoint = defineSum({
  of: 'twoPoint',
  answers: 'How a load shares between two supports or lifting points by where its balance point lies.',
  fields: { load: 'weight', a: 'from point 1 to the balance point', b: 'from the balance point to point 2' },
  given: z.object({ ...measure('load', 'mass'), ...measure('a', 'length', 'zero or more'), ...measure('b', 'length', 'zero or more') }),
  work(given) {
    if (given.load === undefined) return ask('load', 'What does it weigh?');
    if (given.a === undefined) return ask('a', 'How far from the first point to where it balances?');
    if (given.b === undefined) return ask('b', 'How far from where it balances to the second point?');
    const assumed = given.loadUnit ? [] : ['the load in lb; say kg if it was'];
    const unit = sharedUnit(given, ['a', 'b'], 'in', 'mm', []);
    const [a, b] = [valueIn(given, 'a', unit) ?? 0, valueIn(given, 'b', unit) ?? 0];
    if (a + b === 0) return ask('a', 'The two points cannot be one: how far apart are they?');
    const load = given.loadUnit ?? 'lb';
    return {
      results: [
        ...pair('load1', (given.load * b) / (a + b), load, 0, 0, 'at point 1'),
        ...pair('load2', (given.load * a) / (a + b), load, 0, 0, 'at point 2'),
      ],
      basis: 'moments about the balance point; the nearer point carries more',
      assumed,
      caution:
        "A sum only: block the base, crib the load at once, never work under a load on jacks alone; go by the jack's rating, the manual and local codes.",
      source: 'statics of a beam on two supports; jacks: 29 CFR 1910.244',
    };
  },
});
