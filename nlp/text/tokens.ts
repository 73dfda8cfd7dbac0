import type { Token } from '../types.ts';
import { CONTRACTED } from './contractions.ts';
import { isNumberWord } from './number-words.ts';

/**
 * Words, numbers and marks of a note, with offsets into it. No white space is kept.
 * Numbers keep their fraction ("3/8"), their mixed form ("1-1/2", "2½") and their thread ("5/8-11", "M12x1.75"); a unit written
 * against a number is a token of its own ("40psi" is "40" + "psi"). Clitics are tokens of their own ("plunger" + "'s"), "n't" stays
 * with its verb. A hyphen splits only after a number ("thirty-two", "5-foot"); other hyphenated words stay whole ("hit-and-miss").
 */
export function tokenize(text: string): Token[] {
  const out: Token[] = [];
  for (const m of text.matchAll(SHAPES)) {
    const start = m.index, word = m[0];
    if (word === '-' && /\d-\p{L}/u.test(text.slice(start - 1, start + 2))) continue; // the hyphen of "5-foot" says nothing
    if (/^['’]?\p{L}/u.test(word)) pushWord(out, word, start);
    else out.push(token(word, start));
  }
  return out;
}

const SHAPES = new RegExp([
  String.raw`(?<![\p{L}\d])R(?=\d{1,3} \d{3}(?!\d)|\d{3,}(?:[.,]\d\d)?(?![\p{L}\d/])|\d\d(?:\.\d\d)? (?:each|apiece|ea|a|an|the|for|per|plus|and)\b)`, // R640: rand
  String.raw`(?<=(?<![\p{L}\d])R)\d{1,3} \d{3}(?!\d)`, // R1 180
  String.raw`[Mm]\d{1,3}(?:\s?[x×X]\s?\d+(?:\.\d+)?)?(?![\p{L}\d])`, // M8, M12x1.75
  String.raw`\d+/\d+-\d+(?![\d/])`, // 5/8-11
  String.raw`\d+[-\s]\d+/\d+(?!\d)`, // 1-1/2, 1 1/2
  String.raw`\d*[¼½¾⅛⅜⅝⅞⅓⅔⅙⅚]`, // 2½
  String.raw`\d+/\d+(?!\d)`, // 3/8
  String.raw`\d+(?:st|nd|rd|th)(?![\p{L}\d])`, // 26th
  String.raw`\d{1,2}:\d\d(?!\d)`, // 7:30
  String.raw`(?<![\d.,/-])(?:0,\d+|\d+,\d\d?)(?=\s?(?:mm|cm|m|bar|kg|g|V|A|Ah|[Ll]|Nm|kW|°|%|€|kr|hours?|h|liters?|litres?|metres?|meters?)(?![\p{L}\d]))|(?<![\d.,/-])0,\d+(?![\d,])`, // 0,35 mm, as on the Continent
  String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?(?!\d)|\d+\.\d+|(?<![\d\p{L}])\.\d+|\d+`, // 1,400  6.3  .004  62
  String.raw`N[·•∙.]m(?![\p{L}\d])`, // N·m
  String.raw`['’](?:em|til|round|cause)(?![\p{L}\d])`,
  String.raw`(?<=\d)[x×](?=\d)`, // 2x4
  String.raw`\p{L}[\p{L}\p{M}\d]*(?:[-’'][\p{L}\p{M}\d]+)*[’']?(?![\p{L}\d])`, // words, with inner hyphens and apostrophes
  String.raw`\p{L}[\p{L}\p{M}\d]*`,
  String.raw`°\s?[CFcf](?![\p{L}])|\.{2,}|…|--+`,
  String.raw`[^\s]`,
].join('|'), 'gu');

const token = (text: string, start: number): Token =>
  ({ text, low: text === 'R' ? '$' : DECIMAL_COMMA.test(text) ? text.replace(',', '.') : text.toLowerCase().replace(/^(\d{1,3}) (\d{3})$/, '$1$2').replace(/[’‘]/g, "'").replace(/×/g, 'x').replace(/(?<=^n)[·•∙](?=m$)/, '.'), start, end: start + text.length });

/** Only a figure with a decimal comma is one token with fewer than three digits after its comma, or with a nought alone before it. */
const DECIMAL_COMMA = /^(?:0,\d+|\d+,\d\d?)$/;

/** A word may be several tokens: hyphens after a number, clitics, and contractions written without their apostrophe. */
function pushWord(out: Token[], word: string, start: number): void {
  const hyphen = word.indexOf('-');
  if (hyphen > 0 && isNumberWord(word.slice(0, hyphen).toLowerCase())) {
    pushWord(out, word.slice(0, hyphen), start);
    pushWord(out, word.slice(hyphen + 1), start + hyphen + 1);
    return;
  }
  const low = word.toLowerCase().replace(/[’‘]/g, "'");
  const fixed = CONTRACTED[low];
  if (typeof fixed === 'string') out.push({ ...token(word, start), low: fixed });
  else if (fixed) pushParts(out, word, start, fixed);
  else pushClitic(out, word, low, start);
}

function pushParts(out: Token[], word: string, start: number, parts: { head: number; lows: [string, string] }): void {
  out.push({ ...token(word.slice(0, parts.head), start), low: parts.lows[0] });
  out.push({ ...token(word.slice(parts.head), start + parts.head), low: parts.lows[1] });
}

function pushClitic(out: Token[], word: string, low: string, start: number): void {
  const at = low.search(/'(s|d|ll|ve|re|m)$/);
  if (at > 0 && low !== "o'clock") {
    out.push(token(word.slice(0, at), start), token(word.slice(at), start + at));
  } else if (/'$/.test(low)) {
    out.push(token(word.slice(0, -1), start));
    out.push(token(word.slice(-1), start + word.length - 1));
  } else out.push(token(word, start));
}
