import type { Clause } from './clauses/clause.ts';
import type { Odds } from './likely/odds.ts';
import type { Telling } from './meanings/telling.ts';

/**
 * Whether a meaning that gives these kinds need not be asked of a clause: the odds (one for each clause of the note; none where they have no say) speak plainly against
 * them, no clause beside it is likely to tell them together with it, and it does not go on about something said before.
 */
export const silenced = (t: Telling, kinds: readonly string[], odds: readonly Odds[]): boolean =>
  odds[t.at] !== undefined && odds[t.at]!.against(kinds) && ![odds[t.at - 1], odds[t.at + 1]].some(x => x?.likely(kinds)) && !goesOn(t, kinds);

/** Whether a clause may go on about what was said before it in words that tell no kind by themselves: "it'll do", "counted the staves: eighteen", the answer to a quote. */
function goesOn(t: Telling, kinds: readonly string[]): boolean {
  const last = t.told.at(-1);
  if (last && kinds.includes(last.entry.kind) && t.clauses.slice(Math.max(0, t.at - 2), t.at).includes(last.clause)) return true;
  return t.clause.join === ':' || kinds.includes('job') && bids(t.clause) || kinds.some(k => /^(order|bought|arrival)$/.test(k)) && t.prior.some(e => /^(quote|order|out)$/.test(e.kind));
}

/** "take the head off": an order to oneself, which the notes that were learned from seldom give so barely. */
const bids = (c: Clause): boolean => c.verb?.form === 'base' && c.obj.length > 0 && c.items.find(i => !/^(mark|cc|adv|intj)$/.test(i.t)) === c.verb;
