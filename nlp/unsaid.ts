import { namedBy } from '../domain/model/named-by.ts';
import { nameWords } from '../domain/model/names.ts';
import type { Clause } from './clauses/clause.ts';
import type { Weighed } from './likely/net/weighed.ts';
import type { Odds } from './likely/odds.ts';
import { sortOf } from './likely/sort.ts';
import { spotOf } from './likely/spot.ts';
import { stretchOf } from './likely/stretch-of.ts';
import { bids } from './silenced.ts';
import { clauseText, type Telling, type Told } from './meanings/telling.ts';
import { show } from './trace.ts';

/** Under these the word or figure that an entry was told with tells no such thing, and no word of its name names one of its sort (log odds). */
const UNSAID = -3, UNNAMED = -4;
/** How likely a kind must be for what a rule read to hold, though nothing names it. */
const HELD = 0.8;

/** Drops what was read from a word or a figure that the net surely takes for something else, or of a thing that it surely takes to be told of otherwise; a clause of which nothing is left may be read in another way. */
export function unsaid(t: Telling, odds: Odds, left: Telling[], covered: Clause[], net: Weighed): void {
  for (const x of t.told.filter(y => y.clause === t.clause && (y.to ?? 0) <= t.clause.to && !(y.entry.kind === 'job' && bids(t.clause)))) {
    const at = SPOKEN.test(x.entry.kind) ? spotOf(t.sheet, x) : undefined, z = at && net.alone(...stretchOf(t.sheet, at)).get(x.entry.kind);
    if ((z ?? 0) >= UNSAID && ((odds.p(sortOf(x.entry)) ?? 0) > HELD || ofName(t, net, x) >= UNNAMED)) continue;
    t.told.splice(t.told.indexOf(x), 1);
    t.sheet.trace.push({ stage: 'odds', rule: 'unsaid', text: clauseText(t), gave: show(x.entry) });
    if (left.includes(t) || t.told.some(y => y.clause === t.clause)) continue;
    if (covered.includes(t.clause)) covered.splice(covered.indexOf(t.clause), 1);
    left.push(t);
    left.sort((a, b) => a.at - b.at);
  }
}
const SPOKEN = /^(work|job|reading|hours)$/;

/** How strongly the net takes what names an entry for the name of one of its sort: the last word of it, where it is said strongest. Nothing against one that the note does not name. */
function ofName(t: Telling, net: Weighed, x: Told): number {
  const name = namedBy(x.entry), head = name && nameWords(name).at(-1);
  const said = head ? t.sheet.tokens.filter(w => nameWords(w.low).includes(head)) : [];
  return said.length ? Math.max(...said.map(w => net.alone(w.start, w.end).get(`of ${sortOf(x.entry)}`) ?? 0)) : 0;
}
