import type { Entry } from '../../../domain/model/entry.ts';
import { namedBy } from '../../../domain/model/named-by.ts';
import { nameWords } from '../../../domain/model/names.ts';
import { allPointed, pointedApart } from '../../likely/pointed.ts';
import { onlyWhich } from '../../likely/name-of.ts';
import { sortOf } from '../../likely/sort.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import { trim } from '../lib/fields.ts';
import { lowText, type Telling } from '../telling.ts';

/** How sure the net must be of a further name, on the whole. */
const SURE = 0.6;
/** What joins a further thing on; what stands between pieces of one name does not. */
export const JOINS = /^(and|plus|then|&|also|but|,)$/;

/** What a clause says of several things named before it, by kind: a look again is at the last of them unless it says that it is at all. */
const SEVERAL: Partial<Record<Entry['kind'], RegExp>> = { recheck: /\b(both|all|each|the lot)\b/, stow: /^(?!.*\bit\b)/, out: /^(?!.*\bit\b)/, wait: /^(?!.*\bit\b(?! all))/ }, NEVER = /(?!)/;

/**
 * The same told of other things that the clause joins on and the rules left out ("bought the belt for 210 and a tin of dressing that was nine"; "adjusted the left track and then the
 * right one"): each is told as the one before it, a thing got with the price that is said after it.
 */
export function beside(t: Telling, net: Weighed, told: readonly Entry[]): Entry[] {
  const first = told[0]!, several = (SEVERAL[first.kind] ?? NEVER).test(lowText(t)), all = several && told.length === 1 ? allPointed(t.sheet, net, t.clause, sortOf(first)) : [];
  if (all.length > 1 && all.every(n => !onlyWhich(n.name) && n.p > SURE && (n.at ?? t.clause.from) < t.clause.from && n.at !== undefined) && all.some(n => n.name === namedBy(first))) return all.filter(n => n.name !== namedBy(first)).map(n => ({ ...first, part: n.name }) as Entry); // "both of them are on the tailgate"
  if (!/^(fit|work|want|bought|arrival|job)$/.test(first.kind) || told.some(e => sortOf(e) !== sortOf(first))) return [];
  const have = new Set(told.flatMap(e => nameWords(namedBy(e) ?? ''))), names = pointedApart(t.sheet, net, t.clause, sortOf(first));
  return names.flatMap((n, k): Entry[] => {
    const before = names[k - 1];
    if (!before || onlyWhich(n.name) || n.p <= SURE || before.p <= SURE || nameWords(n.name).every(w => have.has(w))) return [];
    if (!t.sheet.tokens.slice(before.to, n.from).some(x => JOINS.test(x.low))) return [];
    return [trim(as(t, told.at(-1)!, n.name, n.to, names[k + 1]?.from ?? t.clause.to)) as Entry];
  });
}

/** An entry of the same kind about another name; `from`, `to`: the tokens after that name, in which its own price stands. */
function as(t: Telling, e: Entry, name: string, from: number, to: number): Partial<Entry> {
  switch (e.kind) {
    case 'fit': return { kind: 'fit', part: name, state: e.state };
    case 'work': return { kind: 'work', part: name, action: e.action, product: e.product, done: e.done };
    case 'job': return { kind: 'job', do: e.do, part: name };
    case 'bought': {
      const paid = t.sheet.found.find(f => f.dim === 'money' && f.from >= from && f.to <= to);
      return { kind: 'bought', item: name, source: e.source, price: paid?.dim === 'money' ? paid.value.value : undefined };
    }
    case 'arrival': return { kind: 'arrival', item: name };
    default: return { kind: 'want', item: name };
  }
}
