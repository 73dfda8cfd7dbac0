import { isDeepStrictEqual } from 'node:util';
import type { Ask } from '../domain/model/ask.ts';
import type { Entry } from '../domain/model/entry.ts';
import { namedBy } from '../domain/model/named-by.ts';
import { nameWords } from '../domain/model/names.ts';
import type { NearMiss } from '../domain/model/reading.ts';
import type { Placed } from './clauses/clauses.ts';
import type { Clause } from './clauses/clause.ts';
import { isSource } from './clauses/name-kinds.ts';
import type { Memory } from './clauses/memory.ts';
import { isSpoken } from './meanings/lib/reach.ts';
import { fuller } from './fuller.ts';
import { add, guess } from './guess.ts';
import { headed, remarked } from './left-over.ts';
import { inTheShopsName } from './own-name.ts';
import { paidOnReturn } from './meanings/bought/came-back.ts';
import { wholeList } from './likely/whole-list.ts';
import { Odds } from './likely/odds.ts';
import type { Weighed } from './likely/net/weighed.ts';
import { weighNote } from './likely/net/weigh-note.ts';
import { stretchOf } from './likely/stretch-of.ts';
import { awaitedHelp } from './likely/awaited-help.ts';
import { qualified } from './likely/attributes.ts';
import { filled } from './likely/filled.ts';
import { measured } from './likely/measured.ts';
import { moved } from './likely/moved.ts';
import { promised } from './likely/promised.ts';
import { silenced } from './silenced.ts';
import { renamed } from './likely/named.ts';
import { settle } from './settle.ts';
import { show } from './trace.ts';
import { tidied } from './meanings/finding/tidied.ts';
import { joinedFindings } from './meanings/finding/joined.ts';
import { heldByThings } from './meanings/fit/held-by-things.ts';
import { onlyHeld } from './meanings/fit/only-held.ts';
import { offAgain } from './meanings/fit/off-again.ts';
import { asQuoted } from './meanings/lib/quoted.ts';
import { paidForAll, smallPriced } from './meanings/lib/paid.ts';
import { ownSums } from './meanings/lib/own-sums.ts';
import { wholePlace } from './meanings/stow/whole-place.ts';
import { phrasal } from './meanings/lib/phrasal.ts';
import { inOneUnit } from './meanings/reading/one-unit.ts';
import { inUnitMeant } from './meanings/reading/unit-meant.ts';
import { sidedOnce } from './meanings/reading/side.ts';
import { clauseText, type Telling, type Told } from './meanings/telling.ts';
import { BESIDE, MEANINGS } from './pipeline.ts';
import type { Sheet } from './types.ts';

/** So likely a clause must hold a reading that its figure is one, though a sum takes it as well: "hub bore 50.4 mm. What's that in inches". */
const READ_OFF = 0.9;

interface Tale { entries: Entry[]; told: Told[]; covered: Clause[]; questions: NearMiss[] }

/**
 * Shows every clause to the meanings in their order and gathers what they give. Clauses whose figures feed a sum give no reading. With `odds`, where there is a net, a
 * meaning is not asked where that speaks plainly against it, and a clause that no meaning knows is read by what it most likely is.
 */
export function tell(sheet: Sheet, clauses: readonly Placed[], prior: readonly Entry[], used: readonly [number, number][], odds: boolean): Tale {
  const told: Told[] = [], covered: Clause[] = [], questions: NearMiss[] = [], left: Telling[] = [], shown: Telling[] = [], weighed: [Telling, Odds][] = [];
  const net = odds ? weighNote(sheet) : undefined;
  const chances = clauses.map(c => (net ? oddsOf(sheet, net, c) : undefined));
  clauses.forEach((clause, at) => {
    const t: Telling = { sheet, clause, memory: clause.memory, clauses, at, told, prior, questions };
    const feeds = used.some(([a, b]) => a < clause.to && clause.from < b) && (chances[at]?.p('reading') ?? 0) <= READ_OFF;
    const before = told.length;
    if (!feeds) shown.push(t);
    let known = isSpoken(clause);
    if (known && told.length) told.at(-1)!.to = clause.to;
    if (!known) {
      for (const [name, meaning, gives] of MEANINGS) {
        if (feeds && !(name === 'quote' && clause.items.some(i => i.np && isSource(i.np))) && (/^(fit|stow)$/.test(name) && clause.pred !== 'verb' && clause.items.some(i => i.f && i.f.dim !== 'when') || name === 'reading' || /^(finding|want|quote|weather|rule|job)$/.test(name) && clause.items.some(i => i.f && i.f.dim !== 'when' || i.np?.spec || i.np?.count !== undefined))) continue;
        if (silenced(t, gives, chances)) continue;
        const got = meaning(t);
        if (got === undefined) continue;
        known = true;
        for (const entry of got) told.push({ entry, clause, rule: name });
        sheet.trace.push({ stage: 'meaning', rule: name, text: clauseText(t), gave: got.map(show).join(' ') || 'adds to what was said' });
        break;
      }
    }
    for (const [name, meaning] of BESIDE) {
      const got = isSpoken(clause) || told.slice(before).some(x => /^(recheck|wait|out|order|hands|weather|rule|job|amend)$/.test(x.rule)) ? undefined : meaning(t);
      if (!got?.length) continue;
      known = true;
      for (const entry of got) told.push({ entry, clause, rule: name });
      sheet.trace.push({ stage: 'meaning', rule: name, text: clauseText(t), gave: got.map(show).join(' ') });
    }
    if (known || told.length > before) covered.push(clause);
    else if (feeds) covered.push(clause);
    else left.push(t);
    if (chances[at] && !feeds) weighed.push([t, chances[at]]);
  });
  if (net) for (const [t, odds] of weighed) if (!isSpoken(t.clause)) guess(t, odds, left, covered, net);
  if (net) for (const x of onTheWhole(sheet, clauses, told, prior, left, net)) {
    const t = left.find(y => y.clause === x.clause);
    if (t) add(t, x.entry, left, covered);
  }
  for (const t of shown) afterward(t, left, covered);
  for (const t of shown) for (const part of offAgain(t, told)) add(t, { kind: 'fit', part, state: 'off' } as Entry, left, covered);
  if (net) promised(told, left, covered, net);
  headed(left, covered);
  const remarks = remarked(left, covered, net);
  for (const x of remarks) told.push(x);
  told.sort((a, b) => a.clause.from - b.clause.from);
  const settled = settle(sheet, told.map(x => fuller(sheet, x))), kept = ownSums(sheet, (net ? settled.map((x, i) => renamed(sheet, x, settled.toSpliced(i, 1), net)).map((x, i, all) => completed(sheet, x, all.toSpliced(i, 1), net)) : settled).map(x => inUnitMeant(sheet, asQuoted(sheet, heldByThings(onlyHeld(sheet, paidForAll(sheet, smallPriced(sheet, old(sheet, x, told))))), { prior, told }))));
  for (const t of shown) for (const part of net ? offAgain(t, kept) : []) kept.push({ entry: { kind: 'fit', part, state: 'off' }, clause: t.clause, rule: 'likely' }); // what the net took for a trial
  kept.sort((a, b) => a.clause.from - b.clause.from);
  const each = once(tidied(joinedFindings(sheet, inOneUnit(sheet, kept))).map(x => wholePlace(sheet, x)).map(x => phrasal(sheet, { ...x, entry: sidedOnce(x.entry) })).map(wholeList));
  whichOnes(each, questions);
  return { entries: each.map(x => finish(sheet, x)), told: each, covered, questions };
}

/** What no clause tells alone and the net takes the whole note to tell. */
function onTheWhole(sheet: Sheet, clauses: readonly Placed[], told: readonly Told[], prior: readonly Entry[], left: readonly Telling[], net: Weighed): Told[] {
  const anew = told.length ? undefined : moved(sheet, clauses, prior, net), help = told.some(x => x.entry.kind === 'hands') ? undefined : awaitedHelp(left, net);
  return [anew, help].filter(x => x !== undefined);
}

/** An entry with what the net says of it beside its kind and its name. `others`: those told with it. */
const completed = (sheet: Sheet, x: Told, others: readonly Told[], net: Weighed): Told => filled(sheet, measured(sheet, qualified(sheet, x, net, others), net), net, others);

/** What a clause most likely tells; nothing of one without words. */
function oddsOf(sheet: Sheet, net: Weighed, c: Clause): Odds | undefined {
  const at = stretchOf(sheet, c), z = net.sorts(...at);
  return z && new Odds({ z, loudest: sort => { const piece = net.loudest(...at, sort); return sheet.tokens.find(t => piece && t.start <= piece.start && piece.start < t.end)?.low ?? ''; } });
}

/** Two clauses may turn out to tell the very same ("is up there on four bolts finger tight"), or one no more than a part of what the other tells: it is told once. */
const once = (told: readonly Told[]): Told[] => told.filter((x, i) => !told.some((y, k) => k !== i && tellsAll(y.entry, x.entry) && (k < i || !tellsAll(x.entry, y.entry))));

/** Whether an entry says all that another says; of what was put somewhere, with its owner in front or without. */
const tellsAll = (more: Entry, e: Entry): boolean => Object.entries(e).every(([field, v]) => isDeepStrictEqual((more as unknown as Record<string, unknown>)[field], v) || field === 'part' && e.kind === 'stow' && more.kind === 'stow' && more.part.endsWith(` ${e.part}`));

/** What a clause adds once all of the note is read: it says no more than a sum, and what the sum is for stands in another clause. */
function afterward(t: Telling, left: Telling[], covered: Clause[]): void {
  const got = isSpoken(t.clause) ? undefined : paidOnReturn(t);
  if (!got) return;
  const paid = got.length ? undefined : t.told.findLast(x => x.entry.kind === 'bought');
  if (paid) paid.to = Math.max(paid.to ?? 0, t.clause.to); // it completes what was told
  for (const entry of got) {
    t.told.push({ entry, clause: t.clause, rule: 'paid' });
    t.sheet.trace.push({ stage: 'meaning', rule: 'paid', text: clauseText(t), gave: show(entry) });
  }
  if (left.includes(t)) { left.splice(left.indexOf(t), 1); covered.push(t.clause); }
}

/** A part that several of the shop's names fit: one short question, which its answer completes. */
function whichOnes(told: readonly Told[], questions: NearMiss[]): void {
  told.forEach((x, index) => {
    const field = 'item' in x.entry ? 'item' : 'part';
    const name = (x.entry as Record<string, unknown>)[field];
    const thing = [...x.clause.subj, ...x.clause.obj].find(s => s.name === name && s.choices && s.choices.length > 1);
    if (!thing || typeof name !== 'string' || questions.some(q => q.choices.join() === thing.choices!.join())) return;
    questions.push({ text: `Which ${name}?`, choices: [...thing.choices!].slice(0, 6), fills: { list: 'entries', index, field } });
  });
}

/** "the old bushing" is told from the new one that the note has just put on. */
function old(sheet: Sheet, x: Told, told: readonly Told[]): Told {
  if (!('part' in x.entry) || !x.entry.part || x.entry.part.startsWith('old ')) return x;
  const name = x.entry.part;
  const saidOld = sheet.tokens.slice(x.clause.from, x.clause.to).some((t, k) => { const after = sheet.tokens[x.clause.from + k + 1]?.low ?? ''; return t.low === 'old' && (/^ones?$/.test(after) || nameWords(after).some(w => nameWords(name).includes(w))); });
  const other = told.some(y => y !== x && y.clause !== x.clause && (y.entry.kind === 'fit' && y.entry.part === name && y.entry.state !== 'off' || y.entry.kind === 'arrival' && y.entry.item === name));
  return saidOld && other ? { ...x, entry: { ...x.entry, part: `old ${name}` } as Entry } : x;
}

function finish(sheet: Sheet, x: Told): Entry {
  const start = sheet.tokens[opening(sheet, x.clause)]!.start, end = sheet.tokens[Math.max(x.clause.to, x.to ?? 0) - 1]!.end;
  const implied = x.rule === 'likely' || x.clause.subj.concat(x.clause.obj).some(s => s.carried);
  return { ...inTheShopsName(sheet, x.entry), sure: implied ? 'implied' : 'certain', span: [start, end] } as Entry;
}

/** First token of a clause with the word that opens it: "before the crank goes in". */
export const opening = (sheet: Sheet, c: Clause): number =>
  (c.from > 0 && (sheet.tokens[c.from - 1]!.low === c.sub || sheet.tokens[c.from - 1]!.low === c.join && sheet.tags[c.from - 1] === 'cc') ? c.from - 1 : c.from);

/** Leaves in memory what the note's entries were about, else what it asked about, so that the next note's "it" is the last of them. */
export function remember(memory: Memory, told: readonly Told[], asks: readonly Ask[]): void {
  const last = told.map(x => x.entry).findLast(e => namedBy(e) !== undefined) ?? asks.findLast(a => namedBy(a) !== undefined);
  const name = last && namedBy(last);
  if (name === undefined) return;
  const same = memory.all().find(x => x.name === name);
  memory.note([same ?? { name, from: 0, to: 0, plural: /s$/.test(name) }]);
}
