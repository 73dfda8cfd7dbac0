import type { Token } from '../types.ts';
import { longhand } from './shorthand.ts';

/**
 * The note as one line of plain lower-case writing, for rules that are written as regular expressions, with the way back to the tokens.
 * Fillers are left out, apostrophes dropped ("what's" is "whats"), hyphens between words are spaces ("half-inch", "twenty-one"; "5/8-11" keeps
 * its own), ½ is 1/2, × is x, @ is at. However the tokens were cut, the line is the same: what stood together in the note stands together here.
 */
export interface Line {
  text: string;
  /** For each character of `text`, the token it came from. */
  tokenAt: number[];
  /** For each token (and one past the last), its first character of `text`, and the one after its last. */
  first: number[];
  past: number[];
  tokens: readonly Token[];
}

const FILLER = /^(?:u+h+m*|u+m+|e+r+m*|hmm+|mmm+|erm+)$/;
const GLYPHS: Record<string, string> = {
  '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅓': '1/3', '⅔': '2/3',
  '×': 'x', '·': '.', '&': 'and', '“': '"', '”': '"', '″': '"', '′': "'", '’': "'", '‘': "'", '−': '-', '∙': '.', 'º': '°', '½"': '1/2"',
};
const cached = new WeakMap<readonly Token[], Line>();

/** The line of a note's tokens; the same object for the same list. */
export function lineOf(tokens: readonly Token[]): Line {
  const before = cached.get(tokens);
  if (before) return before;
  const made = write(tokens);
  cached.set(tokens, made);
  return made;
}

function write(tokens: readonly Token[]): Line {
  let text = '';
  const tokenAt: number[] = [];
  const put = (s: string, i: number): void => { text += s; for (let k = 0; k < s.length; k++) tokenAt.push(i); };
  let end = 0;
  tokens.forEach((token, i) => {
    const gap = token.start > end;
    end = token.end;
    const low = longhand(tokens, i);
    if (low === '' || FILLER.test(low)) return;
    if ((gap || (text === '' ? false : startsApart(text, low))) && text !== '' && !text.endsWith(' ')) put(' ', i);
    if (PLAIN.test(low)) put(low, i); else for (const c of low) put(plain(c, text), i);
  });
  return mendHyphens({ text, tokenAt, ...ends(text, tokenAt, tokens.length), tokens });
}

/** A word that is written in the line as it is. */
const PLAIN = /^[a-z]+$/;

/** Tokens that touch in the note and are still two words: the halves of "gotta", a number and its unit in "40psi". */
const startsApart = (text: string, next: string): boolean => /[a-z]$/.test(text) ? /^\p{L}/u.test(next) : /\d$/.test(text) && /^(?!(?:ths?|st|nd|rd)$)[\p{L}½¼¾⅛⅜⅝⅞⅓⅔]/u.test(next);

function plain(c: string, before: string): string {
  const glyph = GLYPHS[c] ?? c;
  if (/^\d\/\d$/.test(glyph) && /\d$/.test(before)) return ` ${glyph}`;
  if (glyph === "'" || glyph === '"') return /\d$/.test(before) ? glyph : '';
  if (glyph === '–' || glyph === '—') return /\d$/.test(before) ? '-' : ',';
  if (glyph === '@') return before.endsWith(' ') || before === '' ? 'at' : ' at';
  return /\s/.test(glyph) ? ' ' : glyph;
}

function ends(text: string, tokenAt: readonly number[], count: number): { first: number[]; past: number[] } {
  const first = new Array<number>(count + 1).fill(-1), past = new Array<number>(count + 1).fill(-1);
  tokenAt.forEach((t, i) => { if (text[i] !== ' ') { if (first[t]! < 0) first[t] = i; past[t] = i + 1; } });
  first[count] = text.length;
  for (let t = count - 1; t >= 0; t--) if (first[t]! < 0) first[t] = first[t + 1]!;
  for (let t = 0; t <= count; t++) if (past[t]! < 0) past[t] = t > 0 ? past[t - 1]! : 0;
  return { first, past };
}

/** A hyphen is part of the writing only between figures; elsewhere it stands for a space (or a minus before a figure). */
function mendHyphens(line: Line): Line {
  const text = line.text.replace(/([a-z.])-(?=[a-z0-9])/g, '$1 ').replace(/(\d)-(?=[a-z])/g, '$1 ').replace(/([a-z0-9])-(?= |$)/g, '$1 ');
  return { ...line, text };
}

/** The tokens that the characters [start, end) of the line came from, as [from, to); spaces at the ends are not counted. */
export function tokensOf(line: Line, start: number, end: number): [number, number] {
  let a = start, b = end - 1;
  while (a < b && line.text[a] === ' ') a++;
  while (b > a && line.text[b] === ' ') b--;
  return [line.tokenAt[a] ?? 0, (line.tokenAt[b] ?? 0) + 1];
}

/** The first character of the line that came from token `index` or a later one. */
export const charOf = (line: Line, index: number): number => line.first[Math.max(0, index)] ?? line.text.length;

/** The character after the last one that came from a token before `index`. */
export const pastOf = (line: Line, index: number): number => (index > 0 ? line.past[index - 1] ?? line.text.length : 0);
