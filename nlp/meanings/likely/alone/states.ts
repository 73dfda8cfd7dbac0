import type { Entry } from '../../../../domain/model/entry.ts';
import { wordsIn } from '../../../likely/said.ts';
import { spotOf, type Stretch } from '../../../likely/spot.ts';
import { stretchOf } from '../../../likely/stretch-of.ts';
import type { Weighed } from '../../../likely/net/weighed.ts';
import { trim } from '../../lib/fields.ts';
import { verdictIn } from '../../lib/verdict.ts';
import type { Telling } from '../../telling.ts';
import { mayBear } from '../bearer.ts';
import { namesFrom } from './names.ts';

/** How strongly the net must speak for words to say how a part was found: for each of them, and for the surest (log odds). */
const OF_STATE = 0, SURE = 2.5;

/** How parts were found, in words of the clause that nothing read so far. */
export function states(t: Telling, net: Weighed): Entry[] {
  const { clause: c, sheet } = t, runs: (Stretch & { most: number })[] = [];
  for (let i = c.from; i < c.to; i++) {
    const z = net.alone(...stretchOf(sheet, { from: i, to: i + 1 })).get('finding') ?? -Infinity, last = runs.at(-1);
    if (z <= OF_STATE) continue;
    if (last?.to === i) { last.to = i + 1; last.most = Math.max(last.most, z); } else runs.push({ from: i, to: i + 1, most: z });
  }
  const taken = t.told.flatMap(x => (x.clause.from < c.to && c.from < Math.max(x.clause.to, x.to ?? 0) && x.entry.kind === 'finding' ? spotOf(sheet, x) ?? x.clause : []));
  return runs.filter(r => r.most > SURE && !taken.some(x => x.from < r.to && r.from < x.to)).flatMap(r => {
    const condition = wordsIn(sheet, { ...r, p: 1 });
    return condition && !t.told.some(x => x.entry.kind === 'finding' && x.entry.condition.includes(condition)) ? namesFrom(t, net, 'finding', r, false).filter(name => mayBear(t, { ...r, name, plural: false })).map(part => trim({ kind: 'finding', part, condition, verdict: verdictIn(condition) }) as Entry) : [];
  });
}
