import type { Entry } from '../../../../domain/model/entry.ts';
import { namedBy } from '../../../../domain/model/named-by.ts';
import { nameWords } from '../../../../domain/model/names.ts';
import { kindOf, sortOf, type Sort } from '../../../likely/sort.ts';
import { nameIn } from '../../../likely/name-of.ts';
import type { Stretch } from '../../../likely/spot.ts';
import { stretchOf } from '../../../likely/stretch-of.ts';
import type { Weighed } from '../../../likely/net/weighed.ts';
import type { Telling } from '../../telling.ts';
import { JOINS } from '../beside.ts';
import { built } from '../built.ts';
import { surely } from '../surely.ts';

/** Sorts that a name may be told as without a word or figure of their own. */
const SORTS: readonly Sort[] = ['fit off', 'fit on', 'fit temporary', 'fit tight', 'fit tried', 'want'];
/** How strongly the net must speak for every word of a name, and of one of a thing wanted (log odds). */
const NAMES = 1.5, WANTED = 2;

/** What is told of things that the clause names, where the net takes the name itself to be of such an entry and nothing like it was read. */
export function things(t: Telling, net: Weighed): Entry[] {
  const { clause: c, sheet } = t, out: Entry[] = [];
  for (const sort of SORTS) {
    const runs: Stretch[] = [], kind = kindOf(sort);
    for (let i = c.from; i < c.to; i++) {
      if ((net.alone(...stretchOf(sheet, { from: i, to: i + 1 })).get(`of ${sort}`) ?? -Infinity) <= (sort === 'want' ? WANTED : NAMES)) continue;
      if (runs.at(-1)?.to === i) runs.at(-1)!.to = i + 1; else runs.push({ from: i, to: i + 1 });
    }
    for (const run of runs) {
      const said = nameWords(sheet.tokens.slice(run.from, run.to).map(x => x.low).join(' '));
      if (!said.length || out.some(e => e.kind === kind && nameWords(namedBy(e) ?? '').some(w => said.includes(w))) || t.told.some(x => x.entry.kind === kind && (sortOf(x.entry) === sort || x.clause === c) && nameWords(namedBy(x.entry) ?? '').some(w => said.includes(w)))) continue;
      if (kind === 'want' && t.told.some(x => x.entry.kind === kind && x.clause === c) && !sheet.tokens.slice(Math.max(c.from, run.from - 3), run.from).some(x => JOINS.test(x.low))) continue; // what it is for
      const thing = surely(t, net, sort, run)?.find(x => nameWords(x.name).some(w => said.includes(w))) ?? { ...run, name: nameIn(sheet, run) ?? '', plural: false };
      if (thing.name) out.push(...built({ ...t, pointed: [thing] }, net, kind, sort, run));
    }
  }
  return out;
}
