import { isDeepStrictEqual } from 'node:util';
import type { Entry } from '../domain/model/entry.ts';
import { namedBy } from '../domain/model/named-by.ts';
import type { Clause } from './clauses/clause.ts';
import type { Weighed } from './likely/net/weighed.ts';
import type { Odds } from './likely/odds.ts';
import { sortOf } from './likely/sort.ts';
import { alone } from './meanings/likely/alone/alone.ts';
import { apart } from './meanings/likely/apart.ts';
import { beside } from './meanings/likely/beside.ts';
import { byOthers } from './meanings/likely/by-others.ts';
import { deedOf } from './meanings/lib/deed-of.ts';
import { likelierDeal } from './meanings/likely/deal.ts';
import { likely } from './meanings/likely/likely.ts';
import { clauseText, type Telling } from './meanings/telling.ts';
import { show } from './trace.ts';
import { unsaid } from './unsaid.ts';

/** Adds what a clause most likely tells beside what the rules read from the note. */
export function guess(t: Telling, odds: Odds, left: Telling[], covered: Clause[], net: Weighed): void {
  likelierDeal(t, odds);
  const open = !closed(t);
  if (open) severally(t, odds, left, covered, net);
  others(t, odds, left, covered, net);
  unsaid(t, odds, left, covered, net);
  if (!open) return;
  for (const entry of alone(t, net)) add(t, entry, left, covered);
  const have = t.told.filter(x => x.clause === t.clause).map(x => x.entry);
  if (!have.length && !left.includes(t)) return; // it added to what another clause told
  const more = likely(t, odds, have, net);
  if (more.length) t.sheet.trace.push({ stage: 'odds', rule: 'learned', text: clauseText(t), gave: odds.why() });
  for (const entry of more) {
    // One part has many kinds of work done to it; other entries of a kind and a name say the same.
    const name = namedBy(entry);
    if (t.told.some(x => x.entry.kind === entry.kind && (name === undefined ? isDeepStrictEqual(x.entry, entry) : sameThing(namedBy(x.entry), name) && deedOf(x.entry) === deedOf(entry)))) continue;
    if (entry.kind === 'out' && have.some(e => e.kind === 'order' && sameThing(e.item, name))) continue; // "sent off for a tap to the fittings people"
    add(t, entry, left, covered);
  }
}

/** Whether two names are one thing's: the same, but for "old". */
const sameThing = (one: string | undefined, other: string | undefined): boolean => one?.replace(/^old /, '') === other?.replace(/^old /, '');

/** Whether a clause tells nothing that the rules did not read: a question, what is held to a condition, a correction (which says what it says of an entry that is there already), what others say. */
const closed = (t: Telling): boolean => t.clause.asks || /^(if|unless|whether)$/.test(t.clause.sub ?? '') || t.told.some(x => x.clause === t.clause && x.entry.kind === 'amend') || byOthers(t);

/** What is told by likelihood, of a clause that is no longer left unread. */
export function add(t: Telling, entry: Entry, left: Telling[], covered: Clause[]): void {
  t.told.push({ entry, clause: t.clause, rule: 'likely' });
  t.sheet.trace.push({ stage: 'meaning', rule: 'likely', text: clauseText(t), gave: show(entry) });
  if (!left.includes(t)) return;
  left.splice(left.indexOf(t), 1);
  covered.push(t.clause);
}

/** How likely a kind must be for a clause to be read as several of it. */
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
