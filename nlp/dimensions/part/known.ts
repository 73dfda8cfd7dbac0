import { nameKey, nameWords } from '../../../domain/model/names.ts';

/** The shop's names, indexed by word so that looking one up does not grow with how many there are. */
export interface KnownNames {
  /** The name with this key, as the shop writes it. */
  exact(key: string): string | undefined;
  /** Names that hold every one of the words. */
  holding(words: readonly string[]): string[];
  /** Longest name in words. */
  longest: number;
  words: ReadonlyMap<string, readonly string[]>;
}

const cache = new WeakMap<readonly string[], KnownNames>();

/** The index of a list of names; kept for as long as the list itself, so hand in the same array. */
export function knownNames(names: readonly string[]): KnownNames {
  const have = cache.get(names);
  if (have) return have;
  const byKey = new Map<string, string>(), byWord = new Map<string, string[]>();
  let longest = 0;
  for (const name of names) {
    const key = nameKey(name);
    if (!key || byKey.has(key)) continue;
    byKey.set(key, name);
    const words = new Set(nameWords(name));
    longest = Math.max(longest, key.split(' ').length, name.split(/[\s-]+/).length);
    for (const w of words) { const list = byWord.get(w); if (list) list.push(name); else byWord.set(w, [name]); }
  }
  const index: KnownNames = {
    exact: key => byKey.get(key),
    holding: words => {
      const lists = words.map(w => byWord.get(w) ?? []).sort((a, b) => a.length - b.length);
      return (lists[0] ?? []).filter(n => { const have = nameWords(n); return words.every(w => have.includes(w)); });
    },
    longest,
    words: byWord,
  };
  cache.set(names, index);
  return index;
}
