import { nameKey } from '../../domain/model/names.ts';
import { remembered } from '../../domain/model/remembered.ts';
import { byList } from '../dimensions/part/by-list.ts';
import { singular } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import { type Sound, soundOf } from './phones.ts';

/** A name, or the part of one that people say ("axle" of "left stub axle"), with its sound. */
export interface ExpectedName {
  words: readonly string[];
  /** The words in the singular. */
  bare: readonly string[];
  sound: Sound;
  /** Its consonants as they may be heard. */
  like: readonly string[];
}

/** The names that may be heard, found by their sound so that looking does not grow with how many there are. */
export interface Expected {
  size: number;
  /** A name whose letters run together are these, in the singular or as said. */
  joined(letters: string): ExpectedName | undefined;
  /**
   * Names about as long to hear as the sound whose consonants are its own but for one, and those of several words that hold one of these, in the
   * singular; not where so many hold it that it tells nothing.
   */
  near(sound: Sound, words: readonly string[]): Set<ExpectedName>;
}

/** A list that grew by a name is listened to for that name alone. */
const expectedName = remembered((key: string): ExpectedName => {
  const words = key.split(' '), sound = soundOf(words);
  return { words, bare: words.map(singular), sound, like: likeKeys(sound.row) };
});

/** The index of a list of names. */
export const expectedNames = byList((names): Expected => {
  const entries = new Map<string, ExpectedName>();
  const add = (words: readonly string[]): void => {
    const key = words.join(' ');
    if (entries.has(key) || !words.every(w => /^[a-z'’-]+$/.test(w))) return;
    entries.set(key, expectedName(key));
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
  for (const e of entries.values()) for (const key of e.like) { const list = table.get(key); if (list) list.push(e); else table.set(key, [e]); }
  const whole = new Map<string, ExpectedName>();
  for (const e of [...entries.values()].reverse()) { const letters = e.words.join('').replace(/-/g, ''); if (letters.length >= 6) { whole.set(letters, e); whole.set(letters.replace(/s$/, ''), e); } }
  const byWord = new Map<string, ExpectedName[]>();
  for (const e of entries.values()) if (e.words.length > 1) for (const w of new Set(e.bare)) { const list = byWord.get(w); if (list) list.push(e); else byWord.set(w, [e]); }
  const holding = (word: string): readonly ExpectedName[] => { const list = byWord.get(word) ?? NONE; return list.length > 100 ? NONE : list; };
  return { joined: letters => whole.get(letters) ?? whole.get(letters.replace(/s$/, '')), size: entries.size, near: (sound, words) => aboutAsLong(sound, [...likeKeys(sound.row).map(key => table.get(key) ?? NONE), ...words.map(holding)]) };
});
const NONE: readonly ExpectedName[] = [];

/** Names of which there is neither much more nor much less to hear. */
function aboutAsLong(sound: Sound, lists: readonly (readonly ExpectedName[])[]): Set<ExpectedName> {
  const out = new Set<ExpectedName>(), most = .4 * sound.heavy;
  for (const list of lists) for (const name of list) if (Math.abs(name.sound.heavy - sound.heavy) <= most) out.add(name);
  return out;
}

/** The sounds that are heard for one another go by the first of them; those that come and go by none. */
const GROUP: ReadonlyMap<string, string> = new Map(['pbfv', 'tdT', 'kg', 'szSCJ', 'mn', 'lr'].flatMap(g => [...g].map((c): [string, string] => [c, g[0]!])).concat([...'aeiouhywR'].map(c => [c, ''])));

/**
 * The consonants of a row by the groups that are heard for one another, and that row with each one left out: two rows that differ in one consonant have
 * one of these in common. Sounds that come and go (R, H, W, Y) are not counted.
 */
function likeKeys(row: string): string[] {
  let groups = '';
  for (const phone of row) groups += GROUP.get(phone) ?? phone;
  return [...new Set([groups, ...Array.from(groups, (_, at) => groups.slice(0, at) + groups.slice(at + 1))])];
}
