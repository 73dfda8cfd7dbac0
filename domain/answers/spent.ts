import type { SpentAnswer, SpentItem } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Paid, Shop, Thing } from '../log/shop.ts';
import type { More } from './given.ts';
import { covered, lookUp } from './find.ts';
import { amount, paidCents } from './money.ts';
import { some } from './supply.ts';

/** As many purchases as an answer names; the newest are taken. The total is of all. */
const MOST = 200;

/**
 * Money so far: bought, or ordered and come. `onOrder`: orders still open, not in the total. `unpriced`: got without a price said.
 * For a part: it, what belongs to it, and what was got for it.
 */
export function spent(shop: Shop, ask: AskOf<'spent'>, more: More): SpentAnswer {
  const { things, counts } = scope(shop, ask.part, more);
  const paid = things.flatMap(t => t.paid.filter(p => counts(t, p)).map(p => ({ t, p })));
  const priced = paid.filter(({ p }) => p.price);
  const items = newest(priced).map(({ t, p }): SpentItem => ({ item: t.name, price: amount(paidCents(p.price!)), ...some({ source: p.source }), at: p.at }));
  const total = priced.reduce((sum, { p }) => sum + paidCents(p.price!), 0);
  const open = things.flatMap(t => t.orders.filter(o => o.price && counts(t, { ...o, for: t.wants[0]?.for })));
  const unpriced = [...new Set(paid.filter(({ p }) => !p.price).map(({ t }) => t.name))];
  return {
    kind: 'spent', ...some({ part: ask.part }), total: amount(total), items,
    ...(open.length ? { onOrder: amount(open.reduce((sum, o) => sum + paidCents(o.price!), 0)) } : {}), ...(unpriced.length ? { unpriced } : {}),
    ...(priced.length > MOST ? { older: true } : {}),
  };
}

interface Purchase { t: Thing; p: Paid }

/** The newest purchases in the order of the log; numbers alone are sorted, for there may be very many. */
function newest(paid: readonly Purchase[]): Purchase[] {
  const since = paid.length > MOST ? Float64Array.from(paid, ({ p }) => p.id).sort()[paid.length - MOST]! : 0;
  return paid.filter(({ p }) => p.id >= since).sort((a, b) => a.p.id - b.p.id);
}

function scope(shop: Shop, part: string | undefined, more: More): { things: Thing[]; counts: (t: Thing, p: Paid) => boolean } {
  if (part === undefined) return { things: [...shop.machines.values()].flatMap(m => [...m.things.values()]), counts: () => true };
  const found = lookUp(shop, part, more.machine);
  if (!found) return { things: [], counts: () => false };
  const all = [...found.machine.things.values()];
  if (found.whole) return { things: all, counts: () => true };
  const own = new Set(covered(found));
  return { things: all, counts: (t, p) => own.has(t) || p.for?.key === found.ref.key };
}
