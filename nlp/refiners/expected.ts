import { nameKey } from '../../domain/model/names.ts';
import { singular } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import { phonesOf, weightOf } from './phones.ts';

/** A name, or the part of one that people say ("axle" of "left stub axle"), with its sound. */
export interface ExpectedName { words: readonly string[]; row: string; heavy: number }

/** The names that may be heard, found by their sound so that looking does not grow with how many there are. */
export interface Expected {
  size: number;
  /** A name whose letters run together are these, in the singular or as said. */
  joined(letters: string): ExpectedName | undefined;
  /** Names of several words that hold this word, in the singular; none where so many do that it tells nothing. */
  holding(word: string): readonly ExpectedName[];
  /** Names that begin with a like sound and are about as long. */
  near(row: string, heavy: number): readonly ExpectedName[];
}

const cache = new WeakMap<readonly string[], Expected>();

/** The index of a list of names; kept for as long as the list itself, so hand in the same array. */
export function expectedNames(names: readonly string[]): Expected {
  const have = cache.get(names);
  if (have) return have;
  const entries = new Map<string, ExpectedName>();
  const add = (words: readonly string[]): void => {
    const key = words.join(' ');
    if (entries.has(key) || !words.every(w => /^[a-z'’-]+$/.test(w))) return;
    const row = phonesOf(words);
    entries.set(key, { words, row, heavy: weightOf(row) });
  };
  for (const name of names) {
    if (!nameKey(name)) continue;
    const words = name.toLowerCase().split(/[\s-]+/).filter(w => w !== '');
    add(words);
    const unsided = words.slice(words.findIndex(w => !SIDES.has(w)));
    if (unsided.length && unsided.length < words.length) add(unsided);
    if (words.length > 1) for (const w of words) if (w.length >= 5 && !SIDES.has(w)) add([w]);
  }
  const table = new Map<string, ExpectedName[]>();
  for (const e of entries.values()) {
    for (const key of opening(e.row)) for (let h = Math.floor(e.heavy * .7); h <= Math.ceil(e.heavy * 1.4); h++) {
      const list = table.get(key + h);
      if (list) list.push(e); else table.set(key + h, [e]);
    }
  }
  const whole = new Map<string, ExpectedName>();
  for (const e of [...entries.values()].reverse()) { const letters = e.words.join('').replace(/-/g, ''); if (letters.length >= 6) { whole.set(letters, e); whole.set(letters.replace(/s$/, ''), e); } }
  const byWord = new Map<string, ExpectedName[]>();
  for (const e of entries.values()) if (e.words.length > 1) for (const w of new Set(e.words.map(singular))) { const list = byWord.get(w); if (list) list.push(e); else byWord.set(w, [e]); }
  const index: Expected = { holding: word => { const list = byWord.get(word) ?? NONE; return list.length > 100 ? NONE : list; }, joined: letters => whole.get(letters) ?? whole.get(letters.replace(/s$/, '')), size: entries.size, near: (row, heavy) => table.get((opening(row)[0] ?? '') + Math.round(heavy)) ?? NONE };
  cache.set(names, index);
  return index;
}
const NONE: readonly ExpectedName[] = [];

/** The groups of first consonants that are heard for one another; a T may be an F, a D or an S. */
function opening(row: string): string[] {
  const first = /[^aeiouhyR]/.exec(row)?.[0] ?? '';
  return /[pbfv]/.test(first) ? ['p'] : first === 'T' ? ['T', 'p', 't', 's'] : /[td]/.test(first) ? ['t'] : /[kg]/.test(first) ? ['k'] : /[szSCJ]/.test(first) ? ['s'] : /[mn]/.test(first) ? ['m'] : ['w'];
}
