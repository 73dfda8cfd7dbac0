import { spotOf } from '../../likely/spot.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import type { Sheet } from '../../types.ts';
import type { Told } from '../telling.ts';

/** What asks the same carriage of every seller. */
const OF_EACH = /^(both|either|each|all|same)$/;

/** "75 at the yard, the site has one for 140 and 38 postage": a carriage that is said once is of the offer before it, not of another seller's. */
export function ownCarriage(sheet: Sheet, x: Told, all: readonly Told[]): Told {
  const e = x.entry;
  if (e.kind !== 'quote' || !e.shipping || sheet.tokens.some(t => OF_EACH.test(t.low))) return x;
  const said = [...new Set(sheet.found.filter(f => 'value' in f.value && f.value.value === e.shipping).map(f => f.from))];
  if (said.length !== 1) return x;
  const offers = all.flatMap(y => { const at = y.entry.kind === 'quote' ? spotOf(sheet, y) : undefined; return at && at.from < said[0]! ? [{ from: at.from, entry: y.entry as Extract<Entry, { kind: 'quote' }> }] : []; });
  const owner = offers.sort((a, b) => b.from - a.from)[0];
  if (!owner || owner.entry.source === e.source) return x;
  const { shipping: _, ...rest } = e;
  return { ...x, entry: rest as Entry };
}
