import { LONG_PARTS, ONES, PARTS, TENS, wordValue } from './words.ts';
import type { Got, Part } from './num.ts';
import { at, digits, isDigits, touches, type Word } from './word-at.ts';

/** The lower number of a fraction by its one word: "eighths" is 8. */
export const partName = (w: string): number | undefined => PARTS.get(w) ?? (w.endsWith('s') ? PARTS.get(w.slice(0, -1)) : undefined);
/** The same by two words, from word `i`: "sixty fourths" is 64. */
export const longPart = (words: Word[], i: number): number | undefined => LONG_PARTS.get(`${at(words, i)} ${at(words, i + 1).replace(/s$/, '')}`);
export const isPart = (words: Word[], i: number): boolean => partName(at(words, i)) !== undefined || longPart(words, i) !== undefined;

/** "five eighths", "three sixty fourths", "a quarter", "half", "3/4", "5-8ths", "3 16ths". */
export function fractionAt(words: Word[], i: number): Got | undefined {
  const first = at(words, i);
  const written = /^(\d+)\/(\d+)$/.exec(first);
  if (written && Number(written[2]) > 0) {
    const th = /^(?:th|ths|inchs)$/.test(at(words, i + 1)) && touches(words, i) ? 1 : 0;
    return { n: 1 + th, num: frac(Number(written[1]), Number(written[2])) };
  }
  if (first === 'half' && at(words, i + 1) === 'dozen') return { n: 2, num: { value: 6, form: 'words' } };
  if (first === 'half' && at(words, i + 1) === 'a' && at(words, i + 2) === 'dozen') return { n: 3, num: { value: 6, form: 'words' } };
  if (first === 'half' && /^ways?$/.test(at(words, i + 1))) return undefined; // "jammed half way" measures nothing
  if (first === 'half' || first === 'quarter' || first === 'quater') return { n: 1, num: { ...frac(1, first === 'half' ? 2 : 4), loose: true } };
  const two = TENS.get(first), unit = ONES.get(at(words, i + 1)), below = two !== undefined && unit !== undefined ? longPart(words, i + 2) : undefined;
  if (below !== undefined && two! + unit! < below) return { n: 4, num: frac(two! + unit!, below) };
  const article = first === 'a' || first === 'an';
  const top = article ? 1 : isDigits(first) && Number.isInteger(digits(first)) ? digits(first) : wordValue(first);
  if (top === undefined || top === 0) return undefined;
  const dash = /^\d+$/.test(first) && at(words, i + 1) === '-' ? 1 : 0;
  const long = longPart(words, i + 1 + dash);
  if (long !== undefined && (article || top < long)) return { n: 3 + dash, num: frac(top, long) };
  const bottom = partName(at(words, i + 1 + dash));
  if (bottom === undefined || top >= bottom * 4) return undefined;
  if (/^(?:grade|gr|class|sae)$/.test(at(words, i - 1))) return undefined; // "grade 5 quarter 28" is no five quarters
  if (article && !/^(?:half|quarter|quater|third|fourth|fifth|sixth|eighth|sixteenth|tenth|twelfth)$/.test(at(words, i + 1))) return undefined;
  return { n: 2 + dash, num: { ...frac(top, bottom), ...(article ? { loose: true } : {}) } };
}
const frac = (a: number, b: number): Part => ({ value: a / b, form: 'fraction', frac: [a, b] });
