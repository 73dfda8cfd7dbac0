import type { Entry } from '../../domain/model/entry.ts';
import { namedBy } from '../../domain/model/named-by.ts';
import { nameKey, nameWords } from '../../domain/model/names.ts';
import type { Placed } from '../clauses/clauses.ts';
import { isKnownPart } from '../dimensions/part/known.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import { isMachine, isStuff } from '../clauses/name-kinds.ts';
import { candidates, RENAMED } from './naming.ts';
import type { Weighed } from './net/weighed.ts';
import { pointed, wordsOf } from './pointed.ts';
import { sortOf } from './sort.ts';
import { oneAndOther, SIDES } from '../words/sides.ts';
import { nameRun } from './name-run.ts';
import { noOwner } from './no-owner.ts';
import { stretchOf } from './stretch-of.ts';
import { spotOf, type Stretch } from './spot.ts';

/** By so much another name must speak louder than the one that the rules chose. */
const LOUDER = 2.86;
/** What the net's log odds of a word count at most. */
const MOST = 3;

/**
 * Gives an entry the name that the net speaks most for, where that is plainly not the one the rules chose: a name of words that this note says, or one that the
 * net points to in the note before. One of several of its kind in a clause is asked from the word or figure that tells it, else from the words of its name, which then are of its name whatever it is.
 */
export function renamed(sheet: Sheet, x: Told, others: readonly Told[], net: Weighed): Told {
  const name = namedBy(x.entry);
  if (name === undefined || !RENAMED.has(x.entry.kind)) return x;
  const several = others.some(y => y.clause === x.clause && y.entry.kind === x.entry.kind);
  const run = several ? nameRun(sheet, x) : undefined;
  const at = spotOf(sheet, x) ?? run;
  if (others.some(y => y.clause === x.clause && y.entry.kind === x.entry.kind && (!at || (spotOf(sheet, y) ?? (run ? nameRun(sheet, y) : undefined))?.from === at.from))) return x;
  if ([...x.clause.subj, ...x.clause.obj].some(s => s.name === name && s.choices) || !net.alone(...stretchOf(sheet, at ?? x.clause)).size) return x; // or it stands past what the net reads of a note
  const said = new Set([...sheet.tokens.flatMap(t => nameWords(t.low)), ...nameWords(name)]);
  const all = candidates(sheet, x.clause as Placed, name).filter(c => nameWords(c).every(n => said.has(n)) && !strung(x, name, c, others)).map(c => ({ name: c, loud: 0 }));
  hear(sheet, x, net, at ?? x.clause, all, others.filter(y => y.clause === x.clause && y.entry.kind === x.entry.kind).flatMap(y => nameWords(namedBy(y.entry) ?? '')));
  const best = all.reduce((a, b) => (b.loud > a.loud ? b : a));
  if (best === all[0] || best.loud < all[0]!.loud + LOUDER || run !== undefined && at === run && elsewhere(sheet, x, name, best.name) || several && x.entry.kind === 'order' && [name, best.name].every(n => x.clause.obj.some(o => !o.carried && nameKey(o.name) === nameKey(n))) || noOwner(sheet, x, name, best.name, others) || refused(sheet, x, name, best, best.loud - all[0]!.loud)) return x;
  sheet.trace.push({ stage: 'odds', rule: 'name', text: name, gave: best.name });
  return { ...x, entry: { ...x.entry, ['item' in x.entry ? 'item' : 'part']: best.name } as Entry };
}

/**
 * How loudly each name is spoken for: what the net says of its words, less what it says of those it lacks. The name that the net points to is among them, unless it takes in what another
 * entry of the clause is about (`others`: the words of their names), or stands in the note before while this one says the rules' choice and that is no short form of it.
 */
function hear(sheet: Sheet, x: Told, net: Weighed, asking: Stretch, all: { name: string; loud: number }[], others: readonly string[]): void {
  const sort = sortOf(x.entry), own = pointed(sheet, net, x.clause, sort, asking), odds = new Map<string, number>();
  const heard = (said: string, p: number): void => { for (const n of nameWords(said)) odds.set(n, Math.max(odds.get(n) ?? -MOST, Math.min(MOST, Math.log(p / (1 - p))))); };
  wordsOf(sheet, net, asking, sort).forEach(({ word, p }, k, words) => {
    heard(word, p);
    const before = words[k - 1];
    if (before && nameWords(`${before.word} ${word}`).length === 1) heard(`${before.word} ${word}`, Math.min(p, before.p)); // names are compared with "head bolt" as one word
  });
  const mine = nameWords(all[0]!.name), here = new Set(sheet.tokens.flatMap(t => nameWords(t.low)));
  const apart = own && nameWords(own.name).some(word => others.includes(word) && !mine.includes(word)) || own !== undefined && own.at === undefined && mine.every(word => here.has(word)) && (!extendsName(all[0]!.name, own.name) || (x.clause as Placed).memory.all().some(t => nameKey(t.name) === nameKey(all[0]!.name)));
  if (own && !apart && !all.some(c => nameKey(c.name) === nameKey(own.name))) all.push({ name: own.name, loud: 0 });
  for (const c of all) {
    const of = nameWords(c.name), lacks = [...odds].filter(([word, z]) => z > 0 && !of.includes(word));
    c.loud = of.reduce((n, word) => n + (odds.get(word) ?? -MOST), 0) - lacks.reduce((n, [, z]) => n + z, 0);
  }
}

/** Whether another name, however loudly spoken for (`louder`: by how much), says less than the rules' own, or something else than a name. A name that the shop has gives way only to one that has all its words and is far louder. */
function refused(sheet: Sheet, x: Told, name: string, best: { name: string }, louder: number): boolean {
  if (oneAndOther(nameWords(best.name)) || adds(name, best.name) || saidOf(x.entry, best.name) || shortened(sheet, x, name, best.name) || turned(sheet, x, name, best.name)) return true;
  if (oneOfTwo(sheet, x, name, best.name)) return true;
  return known(sheet, name) && !known(sheet, best.name) && !(louder > 2 * LOUDER && extendsName(name, best.name));
}

/** Whether a name strings together two things that the clause tells of side by side, each in an entry of its own ("bonnet, radiator and front lamps removed"). */
function strung(x: Told, name: string, other: string, others: readonly Told[]): boolean {
  const side = (n: string): boolean => [x.clause.subj, x.clause.obj].some(list => list.length > 1 && list.some(s => !s.carried && nameKey(s.name) === nameKey(n)));
  return side(name) && others.some(y => y.clause === x.clause && y.entry.kind === x.entry.kind && side(namedBy(y.entry) ?? '') && (x.clause.items.some(i => i.t === 'cc') || nameKey(namedBy(y.entry)!) !== nameKey(other)) && nameWords(namedBy(y.entry)!).some(w => nameWords(other).includes(w) && !nameWords(name).includes(w)));
}

/** Whether a name is what the entry already says of the thing: what was measured, or a size. */
const saidOf = (e: Entry, name: string): boolean => 'what' in e && nameWords(e.what).every(w => nameWords(name).includes(w)) || 'spec' in e && e.spec !== undefined && nameWords(name).every(w => nameWords(e.spec!).includes(w));

/** Whether a name only adds to the rules' what names no part of it (what it holds, where on it), or says no more than which of several. */
function adds(name: string, other: string): boolean {
  const mine = nameWords(name), own = nameWords(other);
  return own.every(w => NUMBER.test(w)) || mine.every(w => own.includes(w)) && (own.every(w => mine.includes(w) || WHERE.test(w)) || own.some(w => !mine.includes(w) && isStuff(w)) || isStuff(mine.at(-1) ?? '') && own.every(w => mine.includes(w) || HELD_IN.test(w)));
}
/** Whether another name has no word of the rules' and stands outside the clause that says theirs. */
const elsewhere = (sheet: Sheet, x: Told, name: string, other: string): boolean => {
  const own = nameWords(other), here = sheet.tokens.slice(x.clause.from, x.clause.to).flatMap(t => nameWords(t.low));
  return !own.some(w => nameWords(name).includes(w)) && !own.some(w => here.includes(w));
};

/** What a stuff comes in: "a roll of tape". */
export const HELD_IN = /^(roll|tube|tin|can|bag|box|bottle|jar|drum|length|sheet)$/;
const NUMBER = /^(one|two|three|four|five|six|\d+)$/, WHERE = /^(end|side|part|bit|place|old)$/;

/** Whether a name leaves out the side that the clause itself says: "four under the right" is not of the left one. */
const turned = (sheet: Sheet, x: Told, name: string, other: string): boolean =>
  sheet.tokens.slice(x.clause.from, x.clause.to).some(t => SIDES.has(t.low) && nameWords(name).includes(t.low) && !nameWords(other).includes(t.low));

/** Whether a name has all the words of another, and more: "drum shaft end" of the drum shaft. */
const extendsName = (name: string, other: string): boolean => nameWords(name).every(w => nameWords(other).includes(w));

/** Whether something else was spoken of before whose name ends in the rules' short one, so that it may be either ("two boot bearings and two head bearings… The bearings came"). */
const oneOfTwo = (sheet: Sheet, x: Told, name: string, other: string): boolean => {
  const short = nameWords(name), here = sheet.tokens.flatMap(t => nameWords(t.low)), ends = (full: string): boolean => nameWords(full).length > short.length && nameWords(full).slice(-short.length).join() === short.join();
  return ends(other) && !nameWords(other).every(w => here.includes(w)) && (x.clause as Placed).memory.all().some(t => ends(t.name) && !extendsName(t.name, other) && !extendsName(other, t.name));
};

/** Whether the shop itself has this name. */
const known = (sheet: Sheet, name: string): boolean => isKnownPart(sheet.ctx.parts, name) || isMachine(sheet, name);

/** Whether a name is only some of the words of one that the note says in full: "bolts" of "four of the eight head bolts", "hose" under the heading "radiator". */
function shortened(sheet: Sheet, x: Told, name: string, other: string): boolean {
  const whole = nameWords(name), some = nameWords(other), said = nameWords(sheet.tokens.map(t => t.low).join(' ')), headed = sheet.tokens.slice(0, x.clause.from).some(t => t.low === ':');
  return some.length < whole.length && some.every(w => whole.includes(w)) && (headed ? whole.every(w => said.includes(w)) : ` ${said.join(' ')} `.includes(` ${whole.join(' ')} `));
}
