import { namedBy } from '../../domain/model/named-by.ts';
import { nameWords } from '../../domain/model/names.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import type { Stretch } from './spot.ts';

/**
 * The words of its clause that name what an entry is about: the longest run of them, the last of several. What the net is asked from there is asked of this entry, not of all that its clause
 * tells. Nothing where the clause does not name it.
 */
export function nameRun(sheet: Sheet, x: Told): Stretch | undefined {
  const name = nameWords(namedBy(x.entry) ?? ''), to = Math.max(x.clause.to, x.to ?? 0);
  let best: Stretch | undefined, run: Stretch | undefined;
  for (let i = x.clause.from; i < to; i++) {
    const of = nameWords(sheet.tokens[i]!.low);
    if (!of.length || !of.every(w => name.includes(w))) { run = undefined; continue; }
    if (run) run.to = i + 1; else run = { from: i, to: i + 1 };
    if (!best || run.to - run.from >= best.to - best.from) best = run;
  }
  return best;
}
