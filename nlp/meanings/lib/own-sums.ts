import type { Entry } from '../../../domain/model/entry.ts';
import { spotOf } from '../../likely/spot.ts';
import type { Found, Sheet } from '../../types.ts';
import { roleBeside } from './money.ts';
import type { Told } from '../telling.ts';

type Deal = Extract<Entry, { kind: 'quote' | 'order' | 'bought' }>;
const isDeal = (x: Told): x is Told & { entry: Deal } => x.entry.kind === 'quote' || x.entry.kind === 'order' || x.entry.kind === 'bought';

/** What asks the same carriage of every seller. */
const OF_EACH = /\b(both|either|same (post|postage|carriage|shipping|freight|delivery))\b/;
/** That nothing is asked for it. */
const FREE = /\b(no (extra )?(ship|post|postage|shipping|carriage|freight|delivery)|(incl|including|inclusive of|includes|with) (the )?(ship|shipping|post|postage|carriage|freight|delivery) (in|included)|incl(uding|\.)? (the )?(ship|shipping|post|postage|carriage|freight|delivery)|(freight|post|postage|shipping|carriage|delivery) (is |was )?(nothing|thrown in))\b/;

/**
 * Deals with the sums that are theirs by where they stand: a carriage is of the offer before it ("75 at the yard, the site has one for 140 and 38 postage"), whichever sentence says it; what the only thing
 * bought in the note cost may stand in another clause ("New lining riveted on, 55 euros").
 */
export function ownSums(sheet: Sheet, all: readonly Told[]): Told[] {
  const deals = all.filter(isDeal), text = sheet.tokens.map(t => t.low).join(' ');
  if (!deals.length) return [...all];
  const offers = deals.flatMap(x => { const at = spotOf(sheet, x); return at ? [{ x, from: at.from, to: at.to }] : []; }).sort((a, b) => a.from - b.from);
  const carriages = sheet.found.filter(f => (f.dim === 'money' || f.dim === 'number') && ('role' in f.value ? f.value.role ?? roleBeside(sheet, f) : roleBeside(sheet, f)) === 'shipping');
  return all.map(x => {
    if (!isDeal(x)) return x;
    const e = x.entry, own = offers.find(o => o.x === x);
    if (e.kind === 'bought') {
      const paid = deals.length === 1 && e.price === undefined ? onlySum(sheet) : undefined;
      return paid === undefined ? x : { ...x, entry: { ...e, price: paid } as Entry };
    }
    const said = e.shipping ? new Set(sheet.found.filter(f => 'value' in f.value && f.value.value === e.shipping).map(f => f.from)) : undefined;
    if (e.kind === 'quote' && said?.size === 1 && !OF_EACH.test(text)) {
      const owner = offers.filter(o => o.x.entry.kind === 'quote' && o.from < [...said][0]!).at(-1);
      if (owner && owner.x !== x && owner.x.entry.source !== e.source) { const { shipping: _, ...rest } = e; return { ...x, entry: rest as Entry }; }
    }
    if (e.shipping !== undefined || !own) return x;
    const next = offers.find(o => o.from > own.from)?.from ?? sheet.tokens.length, near = carriages.find(f => f.from >= own.to && f.to <= next), mine = near && !unreadBetween(sheet, own.to, near.from, carriages) ? near : undefined, stretch = sheet.tokens.slice(own.to, next).map(t => t.low).join(' ');
    const value = mine && 'value' in mine.value ? mine.value.value as number : FREE.test(stretch) ? 0 : undefined;
    return value === undefined || value > 0 && deals.some(y => y.entry.kind === 'order' && y !== x && e.kind === 'order') ? x : { ...x, entry: { ...e, shipping: value } as Entry };
  });
}

/** Whether another sum stands before a carriage, of an offer that was not read: the carriage may be its. */
const unreadBetween = (sheet: Sheet, from: number, to: number, carriages: readonly Found[]): boolean =>
  sheet.found.some(f => (f.dim === 'money' || f.dim === 'number' && f.value.value >= 5) && f.from > from && f.to <= to && !carriages.some(c => c.from === f.from));

/** The note's only sum of money that is a price. */
function onlySum(sheet: Sheet): number | undefined {
  const sums = sheet.found.filter((f): f is Extract<Found, { dim: 'money' }> => f.dim === 'money' && f.sure === 'certain' && (f.value.role ?? roleBeside(sheet, f)) === undefined && f.value.per === undefined);
  const starts = new Set(sums.map(f => f.from));
  return starts.size === 1 ? sums.sort((a, b) => b.to - a.to)[0]!.value.value : undefined;
}
