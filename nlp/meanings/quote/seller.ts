import type { Clause } from '../../clauses/clause.ts';
import { sourceIn } from '../lib/fields.ts';
import { sumsIn } from '../lib/money.ts';
import { sourceSubject } from '../lib/source.ts';
import { bareSeller, pricedAt } from '../lib/sellers.ts';
import { next, type Telling } from '../telling.ts';

/** "cork sheet 14 and gasket paper 9 at the mill supply": the seller named with the last of the list. */
export function sellerOfList(t: Telling): string | undefined {
  const c = t.clause, n = next(t);
  const priced = (x: Clause): boolean => x.pred === 'none' && x.items[x.items.findIndex(i => i.np) + 1]?.f !== undefined && sumsIn(t, x.from, x.to, true).price !== undefined;
  return n && n.join === 'and' && priced(c) && priced(n) ? pricedAt(t, n) : undefined;
}

/** "Ship chandler up the shore: 693 for the wire rope": the seller stands alone before his price. */
export function headingSeller(t: Telling): string | undefined {
  const c = t.clause, p = t.clauses[t.at - 1];
  return p && p.pred === 'none' && !p.items.some(i => i.f) && (c.join === ':' || t.sheet.tokens[p.to - 1]?.low === ':') ? bareSeller(t, [p]) ?? sourceSubject(t, [p]) : undefined;
}

/** "they want fifteen apiece": the seller named in the clauses before. */
export function lastSource(t: Telling): string | undefined {
  const gone = t.told.at(-1)?.entry;
  if (gone?.kind === 'out' && gone.where) return gone.where;
  for (let i = t.at - 1; i >= 0 && i > t.at - 4; i--) {
    const s = sourceIn(t.sheet, t.clauses[i]!.items)?.source ?? sourceSubject(t, [t.clauses[i]!]);
    if (s) return s;
  }
  return undefined;
}
