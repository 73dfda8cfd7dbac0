import type { Line } from '../line.ts';
import type { NumberValue } from '../../types.ts';
import { ABOUT, LONG_PARTS, ONES, PARTS, TEENS, TENS, wordValue } from './words.ts';

/**
 * A number of the line, characters [start, end). `pair`: said as two halves ("twelve fifty": money 12.50, else 1250; "one seventy five").
 * `frac`: as written or said, top and bottom, when it is or ends in a fraction; `whole` what stood before it.
 */
export interface Num {
  start: number; end: number; value: number; form: NumberValue['form']; about?: boolean;
  pair?: [number, number]; frac?: [number, number]; whole?: number; loose?: boolean;
}

interface Word { text: string; start: number; end: number }
const WORD = /(?:mm|cm|ft|in|m)[23](?![\da-z])|[a-z]+|\d+(?:st|nd|rd|ths?)\b|\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d/])|\d+\/\d+(?!\d)|\d+\.\d+|\.\d+|\d+|[^\sa-z\d]/g;

/** All numbers of the line, longest first at each place, none overlapping another. */
export function numbersOf(line: Line): Num[] {
  const words: Word[] = [...line.text.matchAll(WORD)].map(m => ({ text: m[0], start: m.index, end: m.index + m[0].length }));
  const out: Num[] = [];
  for (let i = 0; i < words.length;) {
    const got = mixedAt(words, i) ?? fractionAt(words, i) ?? plainAt(words, i);
    if (!got || (got.n === 1 && words[i]!.text === 'one' && POINTING.test(line.text.slice(0, words[i]!.start))) || got.num.pair?.[0] === 1 && words[i]!.text === 'one' && / (?:a new|new|another|spare) $/.test(line.text.slice(0, words[i]!.start))) { i++; continue; }
    const start = words[i]!.start, end = words[i + got.n - 1]!.end;
    const about = ABOUT.test(line.text.slice(Math.max(0, start - 16), start));
    out.push({ start, end, ...got.num, ...(about ? { about } : {}) });
    i += got.n;
  }
  return out;
}

/** "the left one", "a new one": not a count. */
const POINTING = /\b(?:the|this|that|each|every|which|any|left|right|old|new|other|another|good|bad|first|second|last|next|front|back|rear|top|bottom|same|big|small|little|cheap|cheapest|a [a-z]+) $/;

type Part = Omit<Num, 'start' | 'end'>;
interface Got { n: number; num: Part }
const at = (words: Word[], i: number): string => words[i]?.text ?? '';
const isDigits = (s: string): boolean => /^(?:\d|\.\d)/.test(s) && !/[a-z/]/.test(s);
const digits = (s: string): number => Number(s.replace(/,/g, ''));
const touches = (words: Word[], i: number): boolean => words[i]?.end === words[i + 1]?.start;

/** "twenty one", "nineteen", "seven": below a hundred, in words. */
function belowHundred(words: Word[], i: number): { n: number; value: number } | undefined {
  const first = at(words, i), tens = TENS.get(first);
  if (tens !== undefined) {
    const one = ONES.get(at(words, i + 1));
    return one !== undefined && !PARTS.has(at(words, i + 2)) ? { n: 2, value: tens + one } : { n: 1, value: tens };
  }
  const value = wordValue(first);
  return value === undefined ? undefined : { n: 1, value };
}

/** "a hundred and thirty five", "thirty two hundred", "two thousand and ten", "one eighty nine" by its words. */
function wholeWords(words: Word[], i: number): { n: number; value: number; pair?: [number, number] } | undefined {
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

const partName = (w: string): number | undefined => PARTS.get(w) ?? (w.endsWith('s') ? PARTS.get(w.slice(0, -1)) : undefined);
const longPart = (words: Word[], i: number): number | undefined => LONG_PARTS.get(`${at(words, i)} ${at(words, i + 1).replace(/s$/, '')}`);
const isPart = (words: Word[], i: number): boolean => partName(at(words, i)) !== undefined || longPart(words, i) !== undefined;

/** "five eighths", "three sixty fourths", "a quarter", "half", "3/4", "5-8ths", "3 16ths". */
function fractionAt(words: Word[], i: number): Got | undefined {
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

/** "two and a half", "one and three quarters", "1-1/4", "1 1/4", "2 and 3/4", "six three quarters" is not one. */
function mixedAt(words: Word[], i: number): Got | undefined {
  const first = at(words, i);
  const inWords = isDigits(first) ? undefined : wholeWords(words, i);
  const whole = isDigits(first) && Number.isInteger(digits(first)) ? { n: 1, value: digits(first) } : inWords && !inWords.pair ? inWords : shorter(words, i);
  if (!whole) return undefined;
  const next = at(words, i + whole.n);
  const joint = next === 'and' || next === '&' || next === 'an' && at(words, i + whole.n + 1) === 'a' ? 1 : next === '-' && /^\d+\/\d+$/.test(at(words, i + whole.n + 1)) ? 1 : 0;
  if (!joint && !(isDigits(first) && /^\d+\/\d+$/.test(next))) return undefined;
  if (/^(?:grade|gr|class|number|no|sae)$/.test(at(words, i - 1))) return undefined;
  const part = fractionAt(words, i + whole.n + joint);
  if (!part?.num.frac || part.num.value >= 1) return undefined;
  return { n: whole.n + joint + part.n, num: { value: whole.value + part.num.value, form: 'mixed', frac: part.num.frac, whole: whole.value } };
}
/** "one and three quarters" when the pair rule would have read too far. */
const shorter = (words: Word[], i: number): { n: number; value: number } | undefined => belowHundred(words, i);

/** Digits, number words, decimals in words, dozens. */
function plainAt(words: Word[], i: number): Got | undefined {
  const first = at(words, i);
  if (isDigits(first)) return scaled(words, i, { n: 1, num: { value: digits(first), form: 'digits' } });
  if (first === 'dozen' || (first === 'half' && at(words, i + 1) === 'dozen')) return undefined;
  const whole = wholeWords(words, i);
  if (!whole) return first === 'point' ? decimals(words, i, 0, 0) : undefined;
  if (at(words, i + whole.n) === 'point') { const d = decimals(words, i + whole.n, whole.value, whole.n); if (d) return d; }
  return scaled(words, i, { n: whole.n, num: { value: whole.value, form: 'words', ...(whole.pair ? { pair: whole.pair } : {}) } });
}

/** "2 thousand", "5 hundred", "1.5 k": digits with a word of size; "two dozen". */
function scaled(words: Word[], i: number, got: Got): Got {
  const next = at(words, i + got.n);
  const by = got.num.form === 'digits' && next === 'hundred' ? 100 : got.num.form === 'digits' && next === 'thousand' ? 1000 : next === 'dozen' ? 12 : 0;
  return by ? { n: got.n + 1, num: { ...got.num, value: got.num.value * by } } : got;
}

/** "(six) point three", "point oh one five", "one point two five", "point seventy five". */
function decimals(words: Word[], i: number, whole: number, before: number): Got | undefined {
  let text = '', n = 1;
  for (;;) {
    const w = at(words, i + n);
    const one = ONES.get(w) ?? (/^(?:oh|o|zero|nought|naught)$/.test(w) ? 0 : undefined);
    const more = TEENS.get(w) ?? TENS.get(w);
    if (one !== undefined && partName(at(words, i + n + 1)) === undefined) { text += one; n++; continue; }
    if (more !== undefined && text.length < 2) {
      const two = belowHundred(words, i + n)!;
      text += two.value; n += two.n;
      continue;
    }
    break;
  }
  return text ? { n: before + n, num: { value: Number(`${whole}.${text}`), form: 'words' } } : undefined;
}
