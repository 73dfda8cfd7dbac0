import type { Thing } from '../../clauses/clause.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import { allPointed } from '../../likely/pointed.ts';
import { onlyWhich } from '../../likely/name-of.ts';
import type { Sort } from '../../likely/sort.ts';
import type { Stretch } from '../../likely/spot.ts';
import type { Telling } from '../telling.ts';

/** How likely the words must be on the whole that the net points to, for them to name what is told before the rules are asked; less where they stand in the note before, for what a rule takes up from there is seldom better. */
const POINTED = 0.7, BEFORE = 0.65;

/** The things that the net surely points to, asked from the clause or from the word or figure that tells it. */
export function surely(t: Telling, net: Weighed, sort: Sort, asking: Stretch = t.clause): Thing[] | undefined {
  const own = allPointed(t.sheet, net, t.clause, sort, asking);
  if (!own.length || own.some(o => onlyWhich(o.name) || o.p <= (o.at === undefined ? BEFORE : POINTED))) return undefined;
  return own.map(o => { const from = o.at ?? t.clause.from; return { name: o.name, from, to: from + 1, plural: /s$/.test(o.name), carried: o.at === undefined || from < t.clause.from }; });
}
