import { bare } from '../clauses/as-said.ts';
import { textOf } from '../dimensions/part/text-of.ts';
import type { Found, Sheet } from '../types.ts';
import type { Weighed } from './net/weighed.ts';
import type { Stretch } from './spot.ts';
import { stretchOf } from './stretch-of.ts';

/** A stretch of tokens [from, to) in which a field is said, and how sure the net is of it, 0 to 1. */
export interface Said { from: number; to: number; p: number }

/** A word is of the field where it is likelier than not. */
const OF_FIELD = 0.5;
/** Words and marks within what a field says. */
const WITHIN = /^(a|an|the|my|his|her|its|our|of|on|in|for|to|at|and|by|x|-|\/|&|,|that|this|'s)$/;

/** Where in the note a clause says a field of what it tells ("fit with"): the surest run of words that the net takes for it, if any. */
export function saidIn(sheet: Sheet, net: Weighed, asking: Stretch, field: string): Said | undefined {
  const runs = allSaid(sheet, net, asking, field);
  return runs.length ? runs.reduce((a, b) => (b.p * (b.to - b.from) > a.p * (a.to - a.from) ? b : a)) : undefined;
}

/** Every run of words that the net takes for a field of what a clause tells, in the order of the note: several where it tells several of a kind. */
export function allSaid(sheet: Sheet, net: Weighed, asking: Stretch, field: string): Said[] {
  const pieces = net.says(...stretchOf(sheet, asking), field);
  const likely = sheet.tokens.map(t => Math.max(0, ...pieces.filter(b => b.start < t.end && b.end > t.start).map(b => b.p)));
  const runs: Said[] = [];
  let sum = 0, count = 0;
  for (const [k, p] of likely.entries()) {
    if (p <= OF_FIELD) continue;
    const run = runs.at(-1);
    if (run && sheet.tokens.slice(run.to, k).every(t => WITHIN.test(t.low)) && k - run.to <= 2) { sum += p; count++; run.to = k + 1; run.p = sum / count; } else { sum = p; count = 1; runs.push({ from: k, to: k + 1, p }); }
  }
  return runs;
}

/** The words of a field, without an article before them; with the preposition that opens a place. */
export function wordsIn(sheet: Sheet, said: Said, place = false): string {
  let { from } = said;
  while (place && from > 0 && WITHIN.test(sheet.tokens[from - 1]!.low) && /\p{L}/u.test(sheet.tokens[from - 1]!.low) && !/^(and|that|this)$/.test(sheet.tokens[from - 1]!.low)) from--;
  const text = textOf(sheet, from, said.to).replace(/^[\s,;:.]+|[\s,;:.]+$/g, '');
  return place ? text : bare(text);
}

/** The value of the figure or day that stands in a stretch: the one with most of its words there. */
export function valueIn<D extends Found['dim']>(sheet: Sheet, said: Said, dims: readonly D[]): Extract<Found, { dim: D }> | undefined {
  const over = (f: Found): number => Math.min(f.to, said.to) - Math.max(f.from, said.from);
  const there = sheet.found.filter((f): f is Extract<Found, { dim: D }> => (dims as readonly string[]).includes(f.dim) && over(f) > 0);
  return there.sort((a, b) => over(b) - over(a) || dims.indexOf(a.dim as D) - dims.indexOf(b.dim as D))[0];
}

