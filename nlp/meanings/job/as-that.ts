import type { Entry } from '../../../domain/model/entry.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { fellow, swap } from '../lib/fellow.ts';
import type { Telling } from '../telling.ts';
import { entry } from './act.ts';

/** What "do" may be done to that is no part. */
const NO_PART = /^(?:jobs?|work|rest|lot|things?|something|anything|nothing|everything|one|ones|same|trick|tests?|research|sums?|shopping|dishes|chores)$/;

/** "Packed the left bearings. I'll do the right tomorrow", "starboard one still to do", "still got the chamber to do": to be worked on as the part that was told of last. */
export function asThat(t: Telling): Entry[] | undefined {
  const c = t.clause, k = c.items.findLastIndex(i => i.low === 'do' && (i.t === 'do' || i.t === 'verb'));
  if (k < 0 || c.items.slice(k + 1).some(i => i.t === 'verb' || i.t === 'to')) return undefined;
  const toDo = c.items[k - 1]?.t === 'to', mine = /^(i|we)$/.test(c.who ?? 'i');
  if (!mine || !toDo && !/^(plan|must)$/.test(c.reality)) return undefined;
  const last = [...t.prior, ...t.told.map(x => x.entry)].findLast(e => e.kind === 'work' || e.kind === 'job'), act = last?.kind === 'work' ? last.action : last?.kind === 'job' ? last.do : undefined;
  if (act === undefined || last?.kind !== 'work' && last?.kind !== 'job') return undefined;
  const np = c.items.find(i => i.np && !NO_PART.test(i.np.said))?.np, target = np && last.part !== undefined ? fellow(t, last.part) : undefined;
  const part = target && last.part !== undefined ? swap(t, last.part, target, last.part) : undefined;
  return part !== undefined && partLike(t.sheet, part) ? [entry(act, part)] : undefined;
}
