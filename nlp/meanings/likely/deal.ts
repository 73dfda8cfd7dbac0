import type { Entry } from '../../../domain/model/entry.ts';
import type { Odds } from '../../likely/odds.ts';
import { kindOf } from '../../likely/sort.ts';
import { dayIn } from '../lib/day.ts';
import { trim } from '../lib/fields.ts';
import type { Telling, Told } from '../telling.ts';

const DEAL = /^(?:order|bought|quote)$/;
/** How likely one kind of deal must be, and how unlikely the one that a rule read, for the rule's to give way. */
const SURE = 0.5, DOUBTED = 0.35;

/**
 * A thing, a seller and a price may be a purchase, an order or only a price heard: "starter cord, four pounds twenty at the mower shop". A rule goes by the verb, and
 * where none tells, takes it for a price heard; the net goes by the whole clause, so a deal read by a rule becomes the kind that is plainly likelier.
 */
export function likelierDeal(t: Telling, odds: Odds): void {
  const [best, p] = odds.sorts().find(([s]) => DEAL.test(s)) ?? ['', 0], kind = kindOf(best);
  if (p < SURE) return;
  const own = t.told.filter((x): x is Told => x.clause === t.clause && DEAL.test(x.entry.kind));
  if (!own.length || own.some(x => x.entry.kind === kind)) return;
  for (const x of own) if ((odds.p(x.entry.kind) ?? 1) < DOUBTED && (kind !== 'quote' || 'price' in x.entry)) x.entry = trim({ ...x.entry, kind, ...(kind === 'bought' ? { shipping: undefined } : {}), expected: kind === 'order' ? t.clauses.slice(t.at, t.at + 3).filter(c => !c.asks && !/^(?:i|we)$/.test(c.who ?? '')).map(c => dayIn(t, c, true)).find(Boolean) : undefined }) as Entry;
}
