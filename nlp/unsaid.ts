import { namedBy } from '../domain/model/named-by.ts';
import { nameWords } from '../domain/model/names.ts';
import type { Clause } from './clauses/clause.ts';
import type { Weighed } from './likely/net/weighed.ts';
import type { Odds } from './likely/odds.ts';
import { sortOf } from './likely/sort.ts';
import { spotOf } from './likely/spot.ts';
import { stretchOf } from './likely/stretch-of.ts';
import { isFastener } from './meanings/lib/fields.ts';
import { bids, takenOff } from './silenced.ts';
import { clauseText, type Telling, type Told } from './meanings/telling.ts';
import { show } from './trace.ts';

/** Under these the word or figure that an entry was told with tells no such thing, and no word of its name names one of its sort (log odds). */
const UNSAID = -1, UNNAMED = -2;
/** How likely a kind must be for what a rule read to hold, though nothing names it. */
const HELD = 0.9;
/** Over this another's name speaks for the sort, and over this its own does so surely, whatever its figure (log odds). */
const NAMED = -1, SURELY_NAMED = 3;

/** Drops what was read from a word or a figure that the net surely takes for something else, or of a thing that it surely takes to be told of otherwise; a clause of which nothing is left may be read in another way. */
export function unsaid(t: Telling, odds: Odds, left: Telling[], covered: Clause[], net: Weighed): void {
  for (const x of t.told.filter(y => y.clause === t.clause && (y.to ?? 0) <= t.clause.to && !(y.entry.kind === 'job' && bids(t)) && !(y.entry.kind === 'fit' && takenOff(t)) && !toMend(t, y))) {
    const at = SPOKEN.test(x.entry.kind) ? spotOf(t.sheet, x) : undefined, z = at && net.alone(...stretchOf(t.sheet, at)).get(x.entry.kind);
    const of = ofName(t, net, x), said = (z ?? 0) >= UNSAID || of > SURELY_NAMED;
    if (fitsOn(t, x) || said && (of >= UNNAMED || (odds.p(sortOf(x.entry)) ?? 0) > HELD && !better(t, net, x))) continue;
    t.told.splice(t.told.indexOf(x), 1);
    t.sheet.trace.push({ stage: 'odds', rule: 'unsaid', text: clauseText(t), gave: show(x.entry) });
    if (left.includes(t) || t.told.some(y => y.clause === t.clause)) continue;
    if (covered.includes(t.clause)) covered.splice(covered.indexOf(t.clause), 1);
    left.push(t);
    left.sort((a, b) => a.at - b.at);
  }
}

/** "Drag link end needs welding": how it was found goes with what is to be done to it. */
const toMend = (t: Telling, x: Told): boolean => x.entry.kind === 'finding' && x.entry.verdict === 'repair' && t.told.some(y => y.clause === x.clause && y.rule === x.rule && y.entry.kind === 'job' && x.entry.kind === 'finding' && y.entry.part === x.entry.part);

/** Whether a fit is taken in by another: of the same part ("is on, torqued to 65"), or of what only holds it ("plates are on, the bolts finger tight"). */
const fitsOn = (t: Telling, x: Told): boolean => x.entry.kind === 'fit' && t.told.some(y => y !== x && y.entry.kind === 'fit' && x.entry.kind === 'fit' && (y.entry.part === x.entry.part || x.entry.state === 'temporary' && isFastener(x.entry.part)));

/** Whether the clause names another thing of the sort, by the net's word: what nothing speaks for is not told beside it ("gasket sheet, two foot square" wants no square). */
const better = (t: Telling, net: Weighed, x: Told): boolean => t.told.some(y => y !== x && y.clause === x.clause && sortOf(y.entry) === sortOf(x.entry) && ofName(t, net, y) > NAMED);

const SPOKEN = /^(work|job|reading|hours)$/;

/** How strongly the net takes what names an entry for the name of one of its sort: the last word of it, where it is said strongest. Nothing against one that the note does not name. */
function ofName(t: Telling, net: Weighed, x: Told): number {
  const name = namedBy(x.entry), head = name && nameWords(name).at(-1);
  const said = head ? t.sheet.tokens.filter(w => nameWords(w.low).includes(head)) : [];
  return said.length ? Math.max(...said.map(w => net.alone(w.start, w.end).get(`of ${sortOf(x.entry)}`) ?? 0)) : 0;
}
