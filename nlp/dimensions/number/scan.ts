import type { Line } from '../line.ts';
import { ABOUT, ONES, TEENS, TENS } from './words.ts';
import type { Got, Num } from './num.ts';
import { at, digits, isDigits, WORD, type Word } from './word-at.ts';
import { fractionAt, partName } from './fraction.ts';
import { belowHundred, wholeWords } from './whole-words.ts';

/** All numbers of the line, longest first at each place, none overlapping another. */
export function numbersOf(line: Line): Num[] {
  const words: Word[] = [...line.text.matchAll(WORD)].map(m => ({ text: m[0], start: m.index, end: m.index + m[0].length }));
  const out: Num[] = [];
  for (let i = 0; i < words.length;) {
    const got = mixedAt(words, i) ?? fractionAt(words, i) ?? plainAt(words, i);
    if (!got || (got.n === 1 && words[i]!.text === 'one' && POINTING.test(line.text.slice(0, words[i]!.start))) || got.num.pair?.[0] === 1 && words[i]!.text === 'one' && ONE_OF.test(line.text.slice(0, words[i]!.start))) { i++; continue; }
    const start = words[i]!.start, end = words[i + got.n - 1]!.end;
    const about = ABOUT.test(line.text.slice(Math.max(0, start - 16), start));
    out.push({ start, end, ...got.num, ...(about ? { about } : {}) });
    i += got.n;
  }
  return out;
}

/** "the left one", "a new one": not a count. */
const POINTING = /\b(?:the|this|that|each|every|which|any|left|right|old|new|other|another|good|bad|first|second|last|next|front|back|rear|top|bottom|same|big|small|little|cheap|cheapest|upper|lower|inner|outer|middle|near ?-?side|off ?-?side|near|far|a [a-z]+) $/;
/** "the offside one twelve": the one of several, and its figure after it. */
const ONE_OF = / (?:a new|new|another|spare) $|\bthe (?:left|right|front|back|rear|top|bottom|upper|lower|inner|outer|middle|near ?-?side|off ?-?side|near|far|other|first|second) $/;

/** "two and a half", "one and three quarters", "1-1/4", "1 1/4", "2 and 3/4", "six three quarters" is not one. */
function mixedAt(words: Word[], i: number): Got | undefined {
  const first = at(words, i);
  const inWords = isDigits(first) ? undefined : wholeWords(words, i);
  const whole = isDigits(first) && Number.isInteger(digits(first)) ? { n: 1, value: digits(first) } : inWords && !inWords.pair ? inWords : shorter(words, i);
  if (!whole) return undefined;
  const next = at(words, i + whole.n);
  const joint = next === 'and' || next === '&' || next === 'an' && at(words, i + whole.n + 1) === 'a' ? 1 : next === '-' && /^\d+\/\d+$/.test(at(words, i + whole.n + 1)) ? 1 : 0;
  if (!joint && !(isDigits(first) && /^\d+\/\d+$/.test(next))) return undefined;
  if (/^(?:grade|gr|class|number|sae)$/.test(at(words, i - 1)) || at(words, i - 1) === 'no' && isDigits(first)) return undefined; // "no three and a quarter" is a second try
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
