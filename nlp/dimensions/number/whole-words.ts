import { ONES, PARTS, TENS, wordValue } from './words.ts';
import { at, type Word } from './word-at.ts';
import { isPart, longPart } from './fraction.ts';

/** "twenty one", "nineteen", "seven": below a hundred, in words. `n`: how many of them it takes. */
export function belowHundred(words: Word[], i: number): { n: number; value: number } | undefined {
  const first = at(words, i), tens = TENS.get(first);
  if (tens !== undefined) {
    const one = ONES.get(at(words, i + 1));
    return one !== undefined && !PARTS.has(at(words, i + 2)) ? { n: 2, value: tens + one } : { n: 1, value: tens };
  }
  const value = wordValue(first);
  return value === undefined ? undefined : { n: 1, value };
}

/** "a hundred and thirty five", "thirty two hundred", "two thousand and ten", "one eighty nine" by its words. `pair`: its halves, where it is said as two. */
export function wholeWords(words: Word[], i: number): { n: number; value: number; pair?: [number, number] } | undefined {
  const a = at(words, i) === 'a' && /^(?:hundred|thousand|dozen)$/.test(at(words, i + 1)) ? { n: 1, value: 1 } : bareHundred(words, i) ? { n: 0, value: 1 } : belowHundred(words, i);
  if (!a) return undefined;
  let { n, value } = a;
  if (at(words, i + n) === 'hundred') {
    value *= 100; n++;
    const and = at(words, i + n) === 'and' ? 1 : 0;
    const rest = belowHundred(words, i + n + and);
    if (rest && !isPart(words, i + n + and + rest.n) && !(and && /^(?:half)$/.test(at(words, i + n + and)))) { value += rest.value; n += and + rest.n; }
  } else if (at(words, i + n) !== 'thousand') {
    const second = belowHundred(words, i + n);
    const oh = /^(?:oh|o)$/.test(at(words, i + n)) ? ONES.get(at(words, i + n + 1)) : undefined;
    if (oh !== undefined && value >= 1 && value < 100) return { n: n + 2, value: value * 100 + oh, pair: [value, oh] };
    const parted = /^(?:percent|%|per)$/.test(at(words, i + n + (second?.n ?? 0)));
    const twoWord = second && longPart(words, i + n + second.n) !== undefined;
    if (second && !parted && !twoWord && second.value >= 10 && value >= 1 && !rangeLike(value, second.value) && !isPart(words, i + n + second.n) && !(second.value === 30 && /^second/.test(at(words, i + n + 1))) && !(second.value === 60 && /^fourth/.test(at(words, i + n + 1)))) {
      return { n: n + second.n, value: value * 100 + second.value, pair: [value, second.value] };
    }
  }
  if (at(words, i + n) === 'thousand' && !/^thousandth/.test(at(words, i + n))) {
    value *= 1000; n++;
    const comma = at(words, i + n) === ',' && at(words, i + n + 2) === 'hundred';
    const and = comma || at(words, i + n) === 'and' ? 1 : 0;
    const rest = wholeWords(words, i + n + and);
    if (rest && rest.value < 1000 && !isPart(words, i + n + and + rest.n)) { value += rest.value; n += and + rest.n; }
  }
  return { n, value };
}

/** "hundred and ten square feet": the one is left out, where more follows and no "few" or "several" goes before. */
const bareHundred = (words: Word[], i: number): boolean => at(words, i) === 'hundred' && !/^(?:few|several|odd|couple|of|per|the|many|half)$/.test(at(words, i - 1)) && belowHundred(words, i + (at(words, i + 1) === 'and' ? 2 : 1)) !== undefined;

/** "ten twelve" is from ten to twelve, not 1012. */
const rangeLike = (a: number, b: number): boolean => b - a > 0 && b - a <= 5;
