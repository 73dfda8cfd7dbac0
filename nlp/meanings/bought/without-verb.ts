import type { Entry } from '../../../domain/model/entry.ts';
import { trim, sourceIn } from '../lib/fields.ts';
import { isSeller } from '../lib/goods.ts';
import { pricedThings } from '../lib/priced-things.ts';
import { moneyClause } from '../lib/money.ts';
import { sellerBefore } from '../lib/sellers.ts';
import { lowText, type Telling } from '../telling.ts';

/** "Stopped at the mower shop. 18.40 for knife sections, six bucks for the rivets": paid at a counter that he stood at. */
export function overTheCounter(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.pred !== 'none' || c.verb || !moneyClause(t, c) || !/^(money|number)$/.test(c.items.find(i => i.t !== 'mark' && i.t !== 'cc')?.f?.dim ?? '')) return undefined;
  const visit = t.clauses.slice(Math.max(0, t.at - 2), t.at).findLast(p => /^(stop|drop|swing|pop|nip|call|go|drive|run|walk|be)$/.test(p.verb?.base ?? '') && /^(past|part)$/.test(p.verb!.form ?? '') && p.items.some(i => /^(at|in|by|into|to|past)$/.test(i.low)));
  const source = visit && sellerBefore(t), pairs = source ? pricedThings(t, c.items).filter(p => !isSeller(p.item)) : [];
  return pairs.length ? pairs.map(p => trim({ kind: 'bought', item: p.item, source, price: p.price, qty: p.qty }) as Entry) : undefined;
}

/** "Sixty quid for a pair of lamps off the stall, and a fiver for the lenses": each price before its thing. */
export function pricedFirst(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!cashed(t)) return undefined;
  const source = sourceIn(t.sheet, c.items)?.source;
  const pairs = c.items.flatMap((i, k) => (i.f?.dim === 'money' && c.items[k + 1]?.low === 'for' && c.items[k + 2]?.np ? [{ price: i.f.value.value, np: c.items[k + 2]!.np! }] : []));
  if (pairs.length < 2) return undefined;
  return pairs.map(p => trim({ kind: 'bought', item: p.np.name, source, price: p.price, qty: p.np.count }) as Entry);
}

/** "Sixty quid for a pair of lamps off the stall", "two studs at 3.25 each from the tyre shop, paid cash": bought, without a verb. */
export function cashed(t: Telling): boolean {
  const c = t.clause;
  if (c.verb && !/^(pay)$/.test(c.verb.base!) || c.pred !== 'none' || !moneyClause(t, c)) return false;
  const text = lowText(t), next = t.clauses[t.at + 1];
  if (next && /\bpaid\b|\bcash\b/.test(lowText(t, next))) return true;
  const first = c.items.find(i => i.t !== 'mark' && i.t !== 'cc');
  if (first?.f?.dim === 'money' && first.f.value.role === undefined && (/^(spent|gone|went|blown|laid out|parted with)$/.test(c.items[c.items.indexOf(first) + 1]?.low ?? '') && /^(on|for|at)$/.test(c.items[c.items.indexOf(first) + 2]?.low ?? '') || /^(got|bought)$/.test(c.items[c.items.indexOf(first) + 1]?.low ?? '') && /^(me|us)$/.test(c.items[c.items.indexOf(first) + 2]?.low ?? ''))) return true; // "$11.40 spent on fuel line"
  if (first?.f?.dim !== 'money' || !/\bfor\b/.test(text)) return false;
  return c.items.some((i, k) => i.low === 'off' && c.items[k + 1]?.np) || first.f.sure === 'certain' && first.f.value.role === undefined && c.items[c.items.indexOf(first) + 1]?.low === 'for' && /\bat\b/.test(text) && sourceIn(t.sheet, c.items) !== undefined; // "58 dollars for a pail of oil at the marine supply"
}
