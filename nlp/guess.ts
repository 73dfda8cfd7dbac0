import type { Entry } from '../domain/model/entry.ts';
import { namedBy } from '../domain/model/named-by.ts';
import { nameWords } from '../domain/model/names.ts';
import type { Clause } from './clauses/clause.ts';
import type { Weighed } from './likely/net/weighed.ts';
import type { Odds } from './likely/odds.ts';
import { sortOf } from './likely/sort.ts';
import { spotOf } from './likely/spot.ts';
import { stretchOf } from './likely/stretch-of.ts';
import { alone } from './meanings/likely/alone/alone.ts';
import { apart } from './meanings/likely/apart.ts';
import { beside } from './meanings/likely/beside.ts';
import { deedOf } from './meanings/lib/deed-of.ts';
import { likelierDeal } from './meanings/likely/deal.ts';
import { likely } from './meanings/likely/likely.ts';
import { bids } from './silenced.ts';
import { clauseText, type Telling, type Told } from './meanings/telling.ts';
import { show } from './trace.ts';

/** Adds what a clause most likely tells beside what the rules read from the note. */
export function guess(t: Telling, odds: Odds, left: Telling[], covered: Clause[], net?: Weighed): void {
  likelierDeal(t, odds);
  if (net) {
    severally(t, odds, left, covered, net);
    others(t, odds, left, covered, net);
    unsaid(t, odds, left, covered, net);
    for (const entry of alone(t, net)) add(t, entry, left, covered);
  }
  const have = t.told.filter(x => x.clause === t.clause).map(x => x.entry);
  if (!have.length && !left.includes(t)) return; // it added to what another clause told
  const more = likely(t, odds, have, net);
  if (more.length) t.sheet.trace.push({ stage: 'odds', rule: 'learned', text: clauseText(t), gave: odds.why() });
  for (const entry of more) {
    // One part has many kinds of work done to it; other entries of a kind and a name say the same.
    if (t.told.some(x => x.entry.kind === entry.kind && namedBy(x.entry) === namedBy(entry) && deedOf(x.entry) === deedOf(entry))) continue;
    add(t, entry, left, covered);
  }
}

/** What is told by likelihood, of a clause that is no longer left unread. */
function add(t: Telling, entry: Entry, left: Telling[], covered: Clause[]): void {
  t.told.push({ entry, clause: t.clause, rule: 'likely' });
  t.sheet.trace.push({ stage: 'meaning', rule: 'likely', text: clauseText(t), gave: show(entry) });
  if (!left.includes(t)) return;
  left.splice(left.indexOf(t), 1);
  covered.push(t.clause);
}

/** How likely a kind must be for a clause to be read as several of it, and to hold what a rule read though nothing names it. */
const SURELY = 0.8;

/** A clause that tells the same of several things one after another, of which the rules read fewer, is read as the net has it. */
function severally(t: Telling, odds: Odds, left: Telling[], covered: Clause[], net: Weighed): void {
  for (const kind of ['finding', 'reading'] as const) {
    if ((odds.p(kind) ?? 0) < SURELY) continue;
    const own = t.told.filter(x => x.clause === t.clause && x.entry.kind === kind), more = apart(t, net, kind);
    if (more.length <= own.length) continue;
    for (const x of own) t.told.splice(t.told.indexOf(x), 1);
    for (const entry of more) add(t, entry, left, covered);
  }
}

/** What the rules read of one thing and the clause tells of others too. */
function others(t: Telling, odds: Odds, left: Telling[], covered: Clause[], net: Weighed): void {
  const own = t.told.filter(x => x.clause === t.clause);
  for (const kind of new Set(own.map(x => x.entry.kind))) {
    const told = own.filter(x => x.entry.kind === kind).map(x => x.entry);
    if ((odds.p(sortOf(told[0]!)) ?? 0) < SURELY) continue;
    for (const entry of beside(t, net, told)) add(t, entry, left, covered);
  }
}

/** Under these the word or figure that an entry was told with tells no such thing, and no word of its name names one of its sort (log odds). */
const UNSAID = -3, UNNAMED = -4;

/** Drops what a rule read from a word or a figure that the net surely takes for something else, or of a thing that it surely takes to be told of otherwise. */
function unsaid(t: Telling, odds: Odds, left: Telling[], covered: Clause[], net: Weighed): void {
  for (const x of t.told.filter(y => y.clause === t.clause && (y.to ?? 0) <= t.clause.to && !(y.entry.kind === 'job' && bids(t.clause)))) {
    const at = SPOKEN.test(x.entry.kind) ? spotOf(t.sheet, x) : undefined, z = at && net.alone(...stretchOf(t.sheet, at)).get(x.entry.kind);
    if ((z ?? 0) >= UNSAID && ((odds.p(sortOf(x.entry)) ?? 0) > SURELY || ofName(t, net, x) >= UNNAMED)) continue;
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
