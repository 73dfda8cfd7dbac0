import { remembered } from './remembered.ts';

/**
 * Names of parts, items and machines, and when two of them are the same thing.
 * A name is the noun phrase as said; its key drops articles, possessives, case, plural and the space in compounds that the trade writes either way.
 */
const DROPPED = new Set(['a', 'an', 'the', 'my', 'his', 'her', 'its', 'our', 'that', 'this', 'those', 'these', 'some', 'of']);

const COMPOUND_HEADS = 'gear|floor|cross|draw|hair|side|tool|grease|key|spring|water|tail|head|ring|king|fire|wind|saw|sheet|band|crank|cam|fly|mud|hand|foot|wheel';
const COMPOUND_TAILS = 'box|board|head|bar|gear|pin|rod|screw|shaft|wheel|way|bolt|mill|light|lamp|guard|brake|plate';
const COMPOUND = new RegExp(`\\b(${COMPOUND_HEADS}) (${COMPOUND_TAILS})(s?)\\b`, 'g');
const COMPOUND_HALF = new RegExp(`\\b(?:${COMPOUND_HEADS})$|^(?:${COMPOUND_TAILS})s?\\b`);

/** Whether a word may be written as one with the word beside it, so that its own key tells nothing. */
export const isCompoundHalf = (word: string): boolean => COMPOUND_HALF.test(word);

const singular = (word: string): string => {
  if (word.length > 4 && /(sh|ch|x|ss)es$/.test(word)) return word.slice(0, -2);
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') && !word.endsWith('us') ? word.slice(0, -1) : word;
};

/** The words of a name that count, in order. */
export const nameWords = remembered((name: string): readonly string[] => name.toLowerCase().replace(/['’]s\b/g, '').replace(COMPOUND, '$1$2$3').replace(/[^\p{L}\p{N}./]+/gu, ' ').trim()
    .split(/\s+/).filter(w => w && !DROPPED.has(w)).map(singular));

/** The key under which the log files a name; empty when the name has no word that counts. */
export const nameKey = remembered((name: string): string => nameWords(name).join(' '));

/**
 * The known names that a said name can mean: the same key first, else those that hold every word said ("rings" means "piston rings").
 * More than one is an ambiguity to ask about; none is a new name.
 */
export function namesMeant(said: string, known: readonly string[]): string[] {
  const key = nameKey(said);
  if (!key) return [];
  const exact = known.filter(k => nameKey(k) === key);
  if (exact.length) return exact.slice(0, 1);
  const wanted = key.split(' ');
  return known.filter(k => { const have = nameWords(k); return wanted.every(w => have.includes(w)); });
}
