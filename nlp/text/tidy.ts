import type { Sheet, Token } from '../types.ts';
import { FILLER } from '../words/grammar.ts';
import { openClitics } from './clitics.ts';
import { leadIns } from './lead-ins.ts';
import { selfAsked } from './self-asked.ts';
import { idioms, oaths, whicheverWay } from './set-phrases.ts';

/** Takes out what was never meant or adds nothing: fillers, a word said twice, a phrase that a recogniser repeats, its goodbyes over silence, oaths, set phrases, lead-ins. All of it is traced. */
export function tidy(sheet: Sheet): void {
  breathe(sheet);
  dropWhere(sheet, 'filler', i => FILLER.has(sheet.tokens[i]!.low) && !(sheet.tokens[i]!.low === 'mm' && millimetres(sheet.tokens, i)));
  dropRanges(sheet, 'recogniser loop', loops(sheet.tokens));
  dropRanges(sheet, 'stutter', stutters(sheet.tokens));
  dropRanges(sheet, 'recogniser goodbye', goodbyes(sheet.tokens));
  sheet.tokens = openClitics(sheet.tokens);
  dropWhere(sheet, 'length of time', i => /^'s?$/.test(sheet.tokens[i]!.low) && /^(hours?|days?|weeks?|months?|fortnight)$/.test(sheet.tokens[i - 1]?.low ?? '') && /^(running|use|ploughing|mowing|driving|run|baling|sawing)$/.test(sheet.tokens[i + 1]?.low ?? '')); // "after an hour's running"
  dropRanges(sheet, 'oath', oaths(sheet.tokens));
  dropRanges(sheet, 'set phrase', idioms(sheet.tokens));
  dropRanges(sheet, 'set phrase', whicheverWay(sheet.tokens));
  dropRanges(sheet, 'lead-in', leadIns(sheet.tokens));
  sheet.tokens = selfAsked(sheet.tokens);
}

/** "mm" is a hum only where it stands by itself, at the head of a sentence or between commas; after any word it is the unit ("how many mm", "= ? mm"). */
const millimetres = (tokens: readonly Token[], i: number): boolean => i > 0 && (!/^[,.;:!?…-]+$/.test(tokens[i - 1]!.low) || tokens[i - 2]?.low === '=' || /^[.?]?$/.test(tokens[i + 1]?.low ?? '') && tokens.slice(0, i).filter(t => /^\d/.test(t.low)).length > 1); // "63 and 250 at 480 centres, mm."

/** Marks the word after a filler: where people say "um" they often begin anew. */
function breathe(sheet: Sheet): void {
  sheet.tokens = sheet.tokens.map((t, i) => (i > 0 && /^(um+|uh+|er+m?|hmm+)$/.test(sheet.tokens[i - 1]!.low) ? { ...t, pause: true } : t));
}

function dropWhere(sheet: Sheet, rule: string, gone: (i: number) => boolean): void {
  const out = new Set(sheet.tokens.map((_, i) => i).filter(gone));
  if (!out.size) return;
  sheet.trace.push({ stage: 'tidy', rule, text: [...out].map(i => sheet.tokens[i]!.text).join(' ') });
  sheet.tokens = sheet.tokens.filter((_, i) => !out.has(i));
}

function dropRanges(sheet: Sheet, rule: string, ranges: [number, number][]): void {
  const gone = new Set(ranges.flatMap(([a, b]) => Array.from({ length: b - a }, (_, k) => a + k)));
  dropWhere(sheet, rule, i => gone.has(i));
}

/** "the the", "and and": the first of two equal function words, and a longer run of two to four words said twice over. */
function stutters(tokens: readonly Token[]): [number, number][] {
  const out: [number, number][] = [];
  for (let i = 0; i + 1 < tokens.length; i++) {
    const low = tokens[i]!.low;
    if (low === tokens[i + 1]!.low && /^\p{L}/u.test(low) && !/^(had|that|very|long|really|no|so|knock|testing|tick|it)$/.test(low)) out.push([i, i + 1]);
    else for (let n = 4; n >= 2; n--) {
      if (same(tokens, i, i + n, n) && tokens.slice(i, i + n).every(t => /^\p{L}/u.test(t.low)) && !ratio(tokens, i)) { out.push([i, i + n]); i += n - 1; break; }
    }
  }
  return out;
}

/** "four to one to one" is a mix in three parts, not a word said twice. */
const ratio = (tokens: readonly Token[], i: number): boolean => tokens[i]!.low === 'to' && /^(one|two|three|four|half)$/.test(tokens[i + 1]?.low ?? '');

function same(tokens: readonly Token[], a: number, b: number, n: number): boolean {
  if (b + n > tokens.length) return false;
  for (let k = 0; k < n; k++) if (tokens[a + k]!.low !== tokens[b + k]!.low) return false;
  return true;
}

/** A phrase of up to twelve words that stands three times or more in a row: all but the first. */
function loops(tokens: readonly Token[]): [number, number][] {
  const out: [number, number][] = [];
  for (let i = 0; i < tokens.length; i++) {
    for (let n = 1; n <= 12; n++) {
      let times = 1;
      while (same(tokens, i, i + n * times, n)) times++;
      const least = n === 1 ? 4 : n <= 2 ? 3 : 2;
      if (times < least || n > 2 && n < 4 && times < 3 || !tokens.slice(i, i + n).some(t => /\p{L}/u.test(t.low))) continue;
      out.push([i + n, i + n * times]);
      i += n * times - 1;
      break;
    }
  }
  return out;
}

const GOODBYES = [
  'thank you for watching', 'thanks for watching', 'thank you very much for watching', "i'll see you in the next video", 'i will see you in the next video', 'see you next time', 'see you in the next one',
  'please subscribe', "don't forget to subscribe", 'like and subscribe', 'please like and subscribe', 'bye bye', 'bye', 'goodbye', 'thank you', 'thank you so much', 'thank you very much', 'subtitles by', 'have a great day', 'have a nice day', 'take care', 'thanks for listening', 'thank you for listening', 'see you later', 'talk to you soon',
].map(s => s.replace(/'ll/g, " 'll").split(' ')).sort((a, b) => b.length - a.length);

/** Polite endings that recognisers write over silence, at the end of a note, one after another. */
function goodbyes(tokens: readonly Token[]): [number, number][] {
  const out: [number, number][] = [];
  let end = tokens.length;
  for (;;) {
    let stop = end;
    while (stop > 0 && /^[.,!]$/.test(tokens[stop - 1]!.low)) stop--;
    const hit = GOODBYES.find(g => stop >= g.length && g.every((w, k) => tokens[stop - g.length + k]!.low === w) && (stop === g.length || opensThere(tokens, stop - g.length)));
    if (!hit) return out;
    out.push([stop - hit.length, end]);
    end = stop - hit.length;
  }
}
const opensThere = (tokens: readonly Token[], at: number): boolean => !/^(say|said|to|and|a|the|my)$/.test(tokens[at - 1]?.low ?? '');
