import type { Entry } from '../../../../domain/model/entry.ts';
import { valueAt } from '../../../clauses/items.ts';
import { spotOf } from '../../../likely/spot.ts';
import { stretchOf } from '../../../likely/stretch-of.ts';
import type { Weighed } from '../../../likely/net/weighed.ts';
import { trim } from '../../lib/fields.ts';
import type { Telling } from '../../telling.ts';
import { readOff } from '../read-off.ts';
import { namesFrom } from './names.ts';

/** How strongly the net must speak for a figure to be read off a part, and to be as it was before anything was touched (log odds). */
const READ = 2, AS_WAS = 1;

/** Figures of the clause that were read off a part and no rule read. */
export function readings(t: Telling, net: Weighed): Entry[] {
  const { clause: c, sheet } = t, out: Entry[] = [];
  const have = t.told.flatMap(x => (x.entry.kind === 'reading' ? spotOf(sheet, x) ?? (x.clause === c ? c : []) : []));
  for (let i = c.from; i < c.to; i++) {
    const f = valueAt(sheet, i, c.to);
    if (!f || !/^(measure|percent|number|span)$/.test(f.dim)) continue;
    i = f.to - 1;
    if (have.some(h => h.from < f.to && f.from < h.to)) continue;
    const says = net.alone(...stretchOf(sheet, f));
    if ((says.get('reading') ?? -Infinity) <= READ) continue;
    const read = readOff(t, net, { from: f.from, to: f.to, p: 1 }, true), was = (says.get('asWas') ?? 0) > AS_WAS;
    if (read) for (const part of namesFrom(t, net, 'reading', f, false).slice(0, 1)) out.push(trim({ kind: 'reading', part, ...read, asWas: read.asWas ?? (was || undefined) }) as Entry);
  }
  return out;
}
