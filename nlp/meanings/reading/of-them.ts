import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { isMachine, isPlural, partLike } from '../../clauses/name-kinds.ts';
import { trim } from '../lib/fields.ts';
import type { Telling } from '../telling.ts';
import { asWas } from './as-was.ts';

/** "counted the fingers on the bar, twenty three of them", "boiler tubes, forty six of them": how many there are of what was just named. */
export function ofThem(t: Telling, c: Clause): Entry[] | undefined {
  if (c.pred !== 'none' || c.asks || c.neg) return undefined;
  const items = c.items.filter(i => !/^(mark|adv|intj)$/.test(i.t)), k = items.findIndex((i, n) => i.f?.dim === 'number' && items[n + 1]?.low === 'of' && /^(them|these|those)$/.test(items[n + 2]?.low ?? ''));
  const value = k >= 0 && items[k]!.f!.dim === 'number' ? (items[k]!.f as { value: { value: number } }).value.value : undefined;
  if (value === undefined || !Number.isInteger(value) || value < 2 || items[k + 3] && !/^(prep|prt)$/.test(items[k + 3]!.t)) return undefined; // "five of them bent"
  const before = t.clauses[t.at - 1], near = [items.slice(0, k), before?.items ?? []].find(list => list.some(i => named(t, i)));
  const what = near?.findLast(i => named(t, i) && isPlural(i.np!.said))?.np;
  if (!what || near !== undefined && t.told.some(x => x.clause === before && x.entry.kind === 'reading')) return undefined;
  const on = [...items, ...near!].find((i, n, all) => named(t, i) && i.np !== what && /^(on|in|under|behind|round|around)$/.test(all[n - 1]?.low ?? ''))?.np;
  const part = on?.name ?? c.subj.concat(before?.subj ?? []).find(s => s.np !== what && s.from !== what.from && s.name !== what.name && !isMachine(t.sheet, s.name))?.name ?? t.memory.all().find(x => x.name !== what.name && !isMachine(t.sheet, x.name))?.name;
  const words = what.said.split(' '), owner = part ?? (words.length > 1 ? words.slice(0, -1).join(' ') : undefined); // "boiler tubes, forty six of them"
  return owner ? [trim({ kind: 'reading', part: owner, what: part ? what.said : words.at(-1)!, value, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry] : undefined;
}

const named = (t: Telling, i: Item): boolean => i.np !== undefined && !i.np.stands && i.np.count === undefined && partLike(t.sheet, i.np.name);
