import { isKnownPart, knownNames } from '../dimensions/part/known.ts';
import { nameKey, nameWords } from '../../domain/model/names.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Sheet } from '../types.ts';
import { nameOf, OWNED, type Pointed, SMALL, tellsWhich, type Word } from './name-of.ts';
import type { Sort } from './sort.ts';
import type { Weighed } from './net/weighed.ts';
import type { Stretch } from './spot.ts';
import { stretchOf } from './stretch-of.ts';

/** A word is of the name where it is likelier than not. */
const OF_NAME = 0.5;
/** Words between things that are told of together. */
const TOGETHER = /^(and|or|plus|,|&)$/;
/** Counts before things told of together. */
const COUNTED = /^(both|all|two|three|four|then)$/;
/** Whether the net takes a word for one of a name. */
const ofName = (w: Word): boolean => w.p > OF_NAME && !SMALL.test(w.word) && /[\p{L}\p{N}]/u.test(w.word);

/** Two stretches of one clause with a word of sense between them are no one name ("the exhaust side of the piston"): the surer stays. */
function lone(runs: Word[][], gaps: string[][], clause: Clause): void {
  const mean = (run: Word[]): number => run.reduce((n, w) => n + w.p, 0) / run.length, inside = (run: Word[]): boolean => run.every(w => w.token !== undefined && w.token >= clause.from && w.token < clause.to);
  for (let k = runs.length - 1; k > 0; k--) {
    if (!inside(runs[k]!) || !inside(runs[k - 1]!) || gaps[k]!.every(w => SMALL.test(w))) continue;
    const weaker = mean(runs[k]!) < mean(runs[k - 1]!) ? k : k - 1;
    runs.splice(weaker, 1); gaps.splice(weaker, 1);
  }
}

/** The words of the note before and of the note, each with how likely it belongs to the name of what a stretch (a clause, or the word or figure that tells it) tells as some sort. */
export function wordsOf(sheet: Sheet, net: Weighed, asking: Stretch, sort: Sort): Word[] {
  const { before, own } = net.named(...stretchOf(sheet, asking), sort);
  const prior = sheet.ctx.prior?.at(-1) ?? '';
  return [
    ...[...prior.matchAll(/[\p{L}\p{N}](?:[\p{L}\p{N}./'’-]*[\p{L}\p{N}])?/gu)].map(m => ({ word: m[0].toLowerCase(), p: Math.max(0, ...before.filter(b => b.start < m.index + m[0].length && b.end > m.index).map(b => b.p)) })),
    ...sheet.tokens.map((t, token) => ({ word: t.low, token, p: t.low === 'one' && t.mended && sheet.tokens[token - 1]?.start === t.start ? 0 : Math.max(0, ...own.filter(b => b.start < t.end && b.end > t.start).map(b => b.p)) })),
  ];
}

/**
 * The name of what a clause tells as some sort, in the words that the net points to: owners in front ("the nose of the auger" is "auger nose"), what this
 * note spoke of before in front of what the clause names. None where it points to nothing, or to several things.
 */
export function pointed(sheet: Sheet, net: Weighed, clause: Clause, sort: Sort, asking: Stretch = clause): Pointed | undefined {
  const all = allPointed(sheet, net, clause, sort, asking);
  return all.length === 1 ? all[0] : undefined;
}

/** The names of what a clause tells as some sort: several where the net points to things that are told of together ("the hood and both fenders"). */
export function allPointed(sheet: Sheet, net: Weighed, clause: Clause, sort: Sort, asking: Stretch = clause): Pointed[] {
  const words = wordsOf(sheet, net, asking, sort);
  const runs: Word[][] = [], gaps: string[][] = [];
  let gap: string[] = [];
  for (const w of words) {
    if (!ofName(w)) { gap.push(w.word); continue; }
    if (runs.length && gap.length === 0) runs.at(-1)!.push(w);
    else { runs.push([w]); gaps.push(gap); }
    gap = [];
  }
  if (!runs.length) return [];
  // What this note names is not pieced together with what the one before named.
  while (runs[0]!.every(w => w.token === undefined) && runs.at(-1)!.some(w => w.token !== undefined)) { runs.shift(); gaps.shift(); }
  // Nor with one of its own kind ("the saw-end journal… its pulley-end journal").
  if (runs.length === 2 && runs[0]!.every(w => (w.token ?? -1) < clause.from) && runs[1]!.length > 1 && nameKey(runs[0]!.at(-1)!.word) === nameKey(runs[1]!.at(-1)!.word)) { runs.shift(); gaps.shift(); }
  // Nor is what the clause names with what comes after it.
  if (runs.some(r => r.some(w => w.token !== undefined && w.token < clause.to))) while (runs.at(-1)!.every(w => (w.token ?? -1) >= clause.to)) { runs.pop(); gaps.pop(); }
  const together = gaps.map((gap, k) => k > 0 && gap.length <= 3 && gap.some(w => TOGETHER.test(w)) && gap.every(w => SMALL.test(w) || TOGETHER.test(w) || COUNTED.test(w)));
  if (together.some(Boolean)) return together.slice(1).every(Boolean) ? sharingHeads(runs).flatMap(run => nameOf(sheet, run) ?? []) : [];
  if (severalBefore(sheet, runs, clause)) return runs.flatMap(run => nameOf(sheet, run) ?? []);
  lone(runs, gaps, clause);
  // What comes later and is joined on by "of" owns what stands before it; else owners come first.
  const order: Word[][] = [];
  for (const [k, run] of runs.entries()) {
    const between = gaps[k]!, joined = k > 0 && between.length > 0 && between.every(w => SMALL.test(w)) && between.some(w => OWNED.test(w));
    if (joined) order.splice(Math.max(0, order.length - 1), 0, run); else order.push(run);
  }
  const whole = nameOf(sheet, order.flat()), last = order.length > 1 && whole && !isKnownPart(sheet.ctx.parts, whole.name) ? order.at(-1)! : undefined;
  return [last && theOnly(sheet, last) || whole].filter(x => x !== undefined);
}

/** Words for several things spoken of before. */
const THEM = /^(both|they|them|'em|em|all|everything|pair|two|three|lot|those)$/;
/** Whether a clause that speaks of several things ("both of them are on the tailgate") names none of them, so that the names before are of as many things. */
const severalBefore = (sheet: Sheet, runs: readonly Word[][], clause: Clause): boolean =>
  runs.length > 1 && runs.every(run => run.every(w => w.token !== undefined && w.token < clause.from)) && sheet.tokens.slice(clause.from, clause.to).some(t => THEM.test(t.low));

/** The shop's only name that ends in these words: "the lid", after "layshaft's home", is the gearbox lid where the shop has no other. */
function theOnly(sheet: Sheet, words: readonly Word[]): Pointed | undefined {
  const said = nameWords(words.map(w => w.word).join(' ')), have = knownNames(sheet.ctx.parts ?? []).holding(said, said.at(-1));
  const named = nameOf(sheet, words);
  return have.length === 1 && named ? { ...named, name: have[0]! } : undefined;
}

/** The names within a clause that the net points to for one sort, each with the tokens where it stands: of several that are told of apart ("inlet twelve thou, exhaust sixteen"). */
export function pointedApart(sheet: Sheet, net: Weighed, clause: Clause, sort: Sort): (Pointed & { from: number; to: number })[] {
  const runs: Word[][] = [];
  let last = -2;
  for (const w of wordsOf(sheet, net, clause, sort)) {
    if (w.token === undefined || w.token < clause.from || w.token >= clause.to || !ofName(w)) continue;
    if (w.token === last + 1) runs.at(-1)!.push(w); else runs.push([w]);
    last = w.token;
  }
  let head: Word[] = [];
  return runs.flatMap(run => {
    const whole = run.every(tellsWhich) ? [...run, ...head] : run, named = nameOf(sheet, whole);
    if (whole === run) head = run.filter(w => !tellsWhich(w));
    return named ? [{ ...named, from: run[0]!.token!, to: run.at(-1)!.token! + 1 }] : [];
  });
}

/** "the left and right links": what only tells which one is told of what the last is. */
function sharingHeads(runs: readonly Word[][]): Word[][] {
  const last = runs.at(-1)!, head = last.filter(w => !tellsWhich(w));
  return runs.map(run => (run.every(tellsWhich) ? [...run, ...head] : run));
}
