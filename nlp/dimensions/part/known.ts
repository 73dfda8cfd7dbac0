import { isCompoundHalf, nameKey, nameWords } from '../../../domain/model/names.ts';
import { byList } from './by-list.ts';
import { spelledOut } from '../../words/short-names.ts';
import { oneSpelling } from '../../words/spelt.ts';

/** The shop's names, indexed by word so that looking one up does not grow with how many there are. */
export interface KnownNames {
  /** The name with this key, as the shop writes it. */
  exact(key: string): string | undefined;
  /** The name whose key is this one in another spelling of its words, or with a short word for a long one ("rad", "radiator"), whichever of them is the shop's. */
  spelt(key: string): string | undefined;
  /** Names that hold every one of the words; no more than `MOST` of them. */
  holding(words: readonly string[], head?: string): string[];
  /** Whether this is one of the names, word for word in lower case. */
  has(low: string): boolean;
  /** Whether a word may stand in one of the names; where it can't, no stretch with it in it need be looked up. */
  mayHold(low: string): boolean;
  /** Longest name in words. */
  longest: number;
  words: ReadonlyMap<string, readonly string[]>;
}

/** A key in the one spelling that all of its spellings have, nothing of it short. */
const plain = (key: string): string => oneSpelling(spelledOut(key));

/** More choices than this are no choice: the name stays as it was said. */
const MOST = 40;

/** The index of a list of names. */
export const knownNames = byList((names): KnownNames => {
  const lows = new Set(names.map(n => n.toLowerCase()));
  const wordsOf = new Map<string, readonly string[]>();
  const byKey = new Map<string, string>(), bySpelling = new Map<string, string>(), byWord = new Map<string, string[]>();
  let longest = 0;
  for (const name of names) {
    const key = nameKey(name);
    if (!key || byKey.has(key)) continue;
    byKey.set(key, name);
    if (!bySpelling.has(plain(key))) bySpelling.set(plain(key), name);
    const words = new Set(nameWords(name));
    wordsOf.set(name, [...words]);
    longest = Math.max(longest, key.split(' ').length, name.split(/[\s-]+/).length);
    for (const w of words) { const list = byWord.get(w); if (list) list.push(name); else byWord.set(w, [name]); }
  }
  return {
    exact: key => byKey.get(key),
    spelt: key => bySpelling.get(plain(key)),
    holding: (words, head) => {
      const lists = words.map(w => byWord.get(w) ?? []).sort((a, b) => a.length - b.length);
      const out: string[] = [];
      for (const n of lists[0] ?? []) {
        const have = wordsOf.get(n)!;
        if ((head === undefined || have.at(-1) === head) && words.every(w => have.includes(w))) out.push(n);
        if (out.length === MOST) break;
      }
      return out;
    },
    has: low => lows.has(low),
    mayHold: low => byKey.size > 0 && (nameWords(low).every(w => byWord.has(w)) || isCompoundHalf(low)),
    longest,
    words: byWord,
  };
});

const NO_NAMES: readonly string[] = [];
/** Whether the shop has a part of this name, word for word in lower case; does not grow with how many there are. */
export const isKnownPart = (parts: readonly string[] | undefined, low: string): boolean => knownNames(parts ?? NO_NAMES).has(low);

/** Whether a low-case word is of a name that the shop has. */
export const isOfName = (parts: readonly string[] | undefined, low: string): boolean => knownNames(parts ?? NO_NAMES).words.has(low);
