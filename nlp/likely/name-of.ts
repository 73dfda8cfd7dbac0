import { nameKey, nameWords } from '../../domain/model/names.ts';
import { knownNames } from '../dimensions/part/known.ts';
import type { Sheet } from '../types.ts';
import { oneAndOther, SIDES } from '../words/sides.ts';
import type { Stretch } from './spot.ts';

/** A name that the net points to: how sure it is of its words, 0 to 1, and the token of the note where it ends (none where it stands in the note before). */
export interface Pointed { name: string; p: number; at?: number }

/** Words between those of a name that it does without: "the shoe on the near side". */
export const SMALL = /^(there|here|both|it|they|them|he|him|she|her|a|an|the|my|his|her|its|our|of|on|in|for|to|at|that|this|'s)$/;
/** What names the owner after the piece. */
export const OWNED = /^(of|on|in|for|to|at)$/;
/** Whether a word only tells which of several of a name. */
export const tellsWhich = (w: { word: string }): boolean => SIDES.has(w.word) || /^(off|first|second|third|fourth|side|hand)$/.test(w.word);
/** Whether a name says only which one, and not of what. */
export const onlyWhich = (name: string): boolean => name.split(' ').every(word => tellsWhich({ word }));

/** A word with how likely it is of a name, 0 to 1, and where it stands in the note. */
export interface Word { word: string; p: number; token?: number }

/** The name that a run of the note's tokens makes; none where it only tells which of several. */
export function nameIn(sheet: Sheet, run: Stretch): string | undefined {
  const words = sheet.tokens.slice(run.from, run.to).map((t, k): Word => ({ word: t.low, p: 1, token: run.from + k }));
  return words.every(tellsWhich) ? undefined : nameOf(sheet, words)?.name;
}

/** The name that words here and there in a note make: what comes later and is joined on by "of" owns what stands before it, else owners come first. */
export function nameOfRuns(sheet: Sheet, tokens: readonly number[]): string | undefined {
  const order: Word[][] = [];
  let last = -2;
  for (const token of tokens) {
    const w: Word = { word: sheet.tokens[token]!.low, p: 1, token };
    if (SMALL.test(w.word) || !/[\p{L}\p{N}]/u.test(w.word)) continue;
    const between = sheet.tokens.slice(last + 1, token).map(t => t.low);
    if (last >= 0 && between.length === 0) order.at(-1)!.push(w);
    else if (last >= 0 && between.every(x => SMALL.test(x)) && between.some(x => OWNED.test(x))) order.splice(order.length - 1, 0, [w]);
    else order.push([w]);
    last = token;
  }
  const words = order.flat();
  return words.length && !words.every(tellsWhich) ? nameOf(sheet, words)?.name : undefined;
}

/** "lamp right", of "left lamp cracked, right one fine": the side goes before what it is a side of. */
function sideFirst(words: readonly Word[]): readonly Word[] {
  const sides = words.findLastIndex(w => !SIDE.test(w.word)) + 1;
  return sides > 0 && sides < words.length && !SIDE.test(words[0]!.word) ? [...words.slice(sides), ...words.slice(0, sides)] : words;
}
const SIDE = /^(left|right|front|rear|upper|lower|inner|outer|nearside|offside|near-side|off-side|left-hand|right-hand)$/;

/** The name that words make: the shop's own where they are those of one that it has. */
export function nameOf(sheet: Sheet, words: readonly Word[]): Pointed | undefined {
  const seen = new Set<string>(), each = words.filter(w => { const key = nameKey(w.word) || w.word; return seen.has(key) ? false : (seen.add(key), true); });
  const all = sideFirst(each);
  const said = all.map(w => w.word.replace(/['’]s$/, '')).join(' '), key = nameKey(said), known = knownNames(sheet.ctx.parts ?? []);
  if (key.length < 2 || oneAndOther(nameWords(said))) return undefined; // the "s" of "6310s"
  const full = known.exact(key) ?? known.spelt(key) ?? (h => (h.length === 1 ? h[0] : undefined))(known.holding(nameWords(said)));
  const at = all.findLast(w => w.token !== undefined)?.token;
  return { name: full ?? said, p: all.reduce((n, w) => n + w.p, 0) / all.length, ...(at !== undefined ? { at } : {}) };
}
