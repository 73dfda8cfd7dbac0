import { IDIOMS } from '../words/idioms.ts';
import { tokenize } from './tokens.ts';
import { FILLER } from '../words/grammar.ts';
import type { Sheet, Token } from '../types.ts';
import { openClitics } from './clitics.ts';
import { leadIns } from './lead-ins.ts';
import { selfAsked } from './self-asked.ts';

/** Takes out what was never meant: fillers, a word said twice, a phrase that a recogniser repeats, its goodbyes over silence. All of it is traced. */
export function tidy(sheet: Sheet): void {
  breathe(sheet);
  dropWhere(sheet, 'filler', i => FILLER.has(sheet.tokens[i]!.low) && !(sheet.tokens[i]!.low === 'mm' && millimetres(sheet.tokens, i)));
  dropRanges(sheet, 'recogniser loop', loops(sheet.tokens));
  dropRanges(sheet, 'stutter', stutters(sheet.tokens));
  dropRanges(sheet, 'recogniser goodbye', goodbyes(sheet.tokens));
  sheet.tokens = openClitics(sheet.tokens);
  dropRanges(sheet, 'oath', oaths(sheet.tokens));
  dropRanges(sheet, 'set phrase', idioms(sheet.tokens));
  dropRanges(sheet, 'set phrase', whicheverWay(sheet.tokens));
  dropRanges(sheet, 'lead-in', leadIns(sheet.tokens));
  sheet.tokens = selfAsked(sheet.tokens);
}

/** "mm" is a hum only where it stands by itself, at the head of a sentence or between commas; after any word it is the unit ("how many mm"). */
const millimetres = (tokens: readonly Token[], i: number): boolean => i > 0 && !/^[,.;:!?…-]+$/.test(tokens[i - 1]!.low);

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

const OATHS = ['on earth', "on god 's green earth", "on god 's earth", 'in the world', 'in blazes', 'the blazes', 'in hell', 'the hell', 'in the hell', 'the heck', 'in heck', 'the devil', 'the dickens', 'in tarnation', "in god 's name", "in heaven 's name", 'in the name of god', 'the divil', 'the flip', 'the deuce'].map(s => s.split(' '));
/** "where on earth did I put it": an oath after the word that asks adds nothing to the question. */
function oaths(tokens: readonly Token[]): [number, number][] {
  return tokens.flatMap((t, i): [number, number][] => {
    if (!/^(what|where|when|how|who|why|which)$/.test(t.low)) return [];
    const from = tokens[i + 1]?.low === "'s" ? i + 2 : i + 1;
    if (tokens[from]?.low === ',' && tokens[from + 2]?.low === ',' && /^(furthermore|moreover|then|also|please|pray|incidentally|again|now)$/.test(tokens[from + 1]!.low)) return [[from, from + 3]];
    const hit = OATHS.find(o => o.every((w, k) => tokens[from + k]?.low === w));
    return hit && !/^(of|where|that|which)$/.test(tokens[from + hit.length]?.low ?? '') ? [[from, from + hit.length]] : [];
  });
}

/** Set phrases by their first word. */
const SET = new Map<string, string[][]>();
for (const words of IDIOMS.map(s => tokenize(s).map(t => t.low))) SET.set(words[0]!, [...SET.get(words[0]!) ?? [], words]);

/** Set phrases, where they stand alone: at a note's or sentence's edge, or between marks. "Of course" is dropped anywhere. */
function idioms(tokens: readonly Token[]): [number, number][] {
  const out: [number, number][] = [];
  for (let i = 0; i < tokens.length; i++) {
    const hit = SET.get(tokens[i]!.low)?.find(s => s.every((w, k) => tokens[i + k]?.low === w));
    if (!hit) continue;
    const edge = (k: number): boolean => k < 0 || k >= tokens.length || /^[.,;:!?…–—-]+$/.test(tokens[k]!.low);
    const loose = /^(of course|i guess|i suppose|you know|believe it or not|at last|at long last|on the nose|or so|give or take|bless it|inside and out|wouldn't you know it|wouldn't you know|would you believe|needless to say|lord willing|god willing|weather permitting|no bother|no bother at all|no trouble at all)$/.test(hit.join(' '));
    const whole = edge(i - 1) && edge(i + hit.length);
    if (!(whole || loose || hit.length >= 3 && (edge(i - 1) || edge(i + hit.length)))) continue;
    if (/^(hang on|hold on|hold up|as usual|let me see|let 's see)$/.test(hit.join(' ')) && !whole) continue;
    const end = whole && tokens[i + hit.length]?.low === ',' && i > 0 && tokens[i - 1]?.low === ',' ? i + hit.length + 1 : i + hit.length;
    const inside = whole && tokens[i - 1]?.low === ',' && tokens[i + hit.length]?.low === ',' && /^('s|is|are|was|were|has|have|had|'ll|will|would|'d|could|can|might|may|wants|want|said|says)$/.test(tokens[i + hit.length + 1]?.low ?? '');
    out.push([inside ? i - 1 : i, end]);
    i = end - 1;
  }
  return out;
}

/** ", company or no company": come what may. */
const whicheverWay = (tokens: readonly Token[]): [number, number][] => tokens.flatMap((t, i): [number, number][] => (t.low === 'or' && tokens[i + 1]?.low === 'no' && i > 0 && tokens[i - 1]!.low === tokens[i + 2]?.low ? [[tokens[i - 2]?.low === ',' ? i - 2 : i - 1, i + 3]] : []));

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
