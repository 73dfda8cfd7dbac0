import type { Entry } from '../../../../domain/model/entry.ts';
import { valueAt } from '../../../clauses/items.ts';
import { allSaid, wordsIn } from '../../../likely/said.ts';
import { spotOf } from '../../../likely/spot.ts';
import { stretchOf } from '../../../likely/stretch-of.ts';
import type { Weighed } from '../../../likely/net/weighed.ts';
import { trim } from '../../lib/fields.ts';
import { isSeller } from '../../lib/goods.ts';
import type { Telling } from '../../telling.ts';
import { surely } from '../surely.ts';

/** How strongly the net must speak for a sum to be a price, and for the kind of deal it was said in (log odds). */
const PRICE = 3, DEAL = 1;
const DEALS = ['quote', 'bought', 'order'] as const;

/** Prices of the clause that no rule read, each of what the net surely points to from there, by the seller named nearest: "seal 38 at the bearing counter, 51 at the dealer". */
export function prices(t: Telling, net: Weighed): Entry[] {
  const { clause: c, sheet } = t, told = net.told(...stretchOf(sheet, c)), out: Entry[] = [];
  const kind = DEALS.reduce((a, b) => ((told?.get(b) ?? -Infinity) > (told?.get(a) ?? -Infinity) ? b : a));
  if ((told?.get(kind) ?? -Infinity) <= DEAL) return out;
  const have = t.told.flatMap(x => ('price' in x.entry ? spotOf(sheet, x) ?? x.clause : [])), sellers = allSaid(sheet, net, c, `${kind} source`);
  for (let i = c.from; i < c.to; i++) {
    const f = valueAt(sheet, i, c.to);
    if (!f || f.dim !== 'money' && f.dim !== 'number') continue;
    i = f.to - 1;
    if (have.some(h => h.from < f.to && f.from < h.to) || (net.alone(...stretchOf(sheet, f)).get('price') ?? -Infinity) <= PRICE) continue;
    const near = sellers.filter(s => s.from >= c.from && s.to <= c.to).sort((a, b) => Math.abs(a.from - f.from) - Math.abs(b.from - f.from))[0];
    for (const thing of surely(t, net, kind, f)?.slice(0, 1) ?? []) if (!isSeller(thing.name) && !(kind === 'bought' && thing.carried)) out.push(trim({ kind, item: thing.name, source: near && wordsIn(sheet, near), price: f.value.value }) as Entry);
  }
  return out;
}
