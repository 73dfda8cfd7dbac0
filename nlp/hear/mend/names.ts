import type { Change, Mended } from './change.ts';
import { likeness } from './likeness.ts';
import { isFrameWord, isPlainWord } from './plain-words.ts';
import { TRADE_WORDS } from './trade-words.ts';

/** A word in the text with its place; `core` is without punctuation and possessive. */
interface Token {
  core: string;
  from: number;
  to: number;
}

const tokensOf = (text: string): Token[] =>
  [...text.matchAll(/[\p{L}\p{N}][\p{L}\p{N}'’-]*/gu)].map((m) => ({ core: m[0].replace(/['’]s?$/, ''), from: m.index, to: m.index + m[0].replace(/['’]s?$/, '').length }));

const low = (word: string) => word.toLowerCase();
const bare = (word: string) => low(word).replace(/s$/, '');

/** A name that the shop has, and what may stand for it in a text. */
interface Wanted {
  words: string[];
  joined: string;
}

const wantedOf = (name: string): Wanted => ({ words: name.split(/[\s-]+/), joined: name.replace(/[\s-]+/g, '') });

/** "break shoes", "side or press", "waterhoppers": a run of words that plainly is a name of several words, or its parts run together. */
function standsFor(run: Token[], { words, joined }: Wanted, text: string): boolean {
  if (/[.?!;:]/.test(text.slice(run[0]!.from, run.at(-1)!.to))) return false;
  const said = run.map(({ core }) => core).join('');
  if (bare(said) === bare(joined)) return run.length !== words.length;
  if (isFrameWord(run[0]!.core) && run.length > words.length) return false;
  const alike = likeness(said, joined);
  if (run.length !== words.length) return joined.length >= 7 && alike.sound === 0 && alike.spelling <= 0.25;
  const wrong = run.filter(({ core }, i) => bare(core) !== bare(words[i]!));
  if (wrong.length !== 1 || words.length < 2) return false;
  const meant = words[run.indexOf(wrong[0]!)]!;
  const one = likeness(wrong[0]!.core, meant);
  return !isFrameWord(wrong[0]!.core) && !isFrameWord(meant) && one.spelling <= 0.5 && (one.sound === 0 || (one.sound === 1 && one.spelling <= 0.34));
}

/** Keeps the plural that was heard. */
function inForm(name: string, run: Token[]): string {
  const last = run.at(-1)!.core;
  return /s$/i.test(last) && !/s$/i.test(name) ? `${name}s` : name;
}

/** Shorter words sound like too many others. */
const SHORTEST = 4;

/** The one expected word that sounds like what was heard; `undefined` when none or several do. */
function soundsLike(word: string, expected: readonly string[], unsure: boolean): string | undefined {
  const close = expected.filter((meant) => {
    if (meant.length < SHORTEST) return false;
    const { sound, spelling, length } = likeness(word, meant);
    return length >= 2 && (sound === 0 ? spelling <= 0.4 : unsure && sound === 1 && length >= 3 && spelling <= 0.25);
  });
  const exact = close.some((meant) => bare(meant) === bare(word));
  return exact || new Set(close.map(bare)).size !== 1 ? undefined : close[0];
}

/** What is known about the words of a text beside their letters. */
export interface WordSense {
  /** Words that the recogniser scored low. */
  unsure: string[];
  /** Everyday words, which stand unless they are unsure and the shop has a name that sounds like them. */
  isCommon: (word: string) => boolean;
}

/** Measures that no list of parts holds and that sound like words of the trade. */
const MEASURES = /^(quarts?|pints?|gallons?|miles?|degrees?|litres?|liters?|yards?|feet|metres?|meters?|hours?|minutes?|dollars?|cents?)$/i;

/** What was meant by one word, from the shop's own words first, then from the trade's. */
function meantBy(core: string, nameWords: string[], unsure: boolean, isCommon: (word: string) => boolean): string | undefined {
  if (core.length < SHORTEST || isFrameWord(core) || MEASURES.test(core)) return undefined;
  const known = isPlainWord(core) || isCommon(core);
  if (known && !unsure) return undefined;
  return soundsLike(core, nameWords, unsure) ?? (known ? undefined : soundsLike(core, TRADE_WORDS, unsure));
}

/** Puts the shop's own names, then the trade's words, where they plainly were meant. */
export function mendWords({ text, changes }: Mended, names: string[], { unsure, isCommon }: WordSense): Mended {
  const wanted = names.map(wantedOf);
  const nameWords = [...new Set(wanted.flatMap(({ words }) => words))].filter((word) => word.length >= 4);
  const doubtful = new Set(unsure.map((word) => bare(word.replace(/['’]s?$/, ''))));
  const tokens = tokensOf(text);
  const made: Change[] = [...changes];
  let out = '';
  let done = 0;
  const put = (run: Token[], to: string, why: string) => {
    const from = text.slice(run[0]!.from, run.at(-1)!.to);
    out += text.slice(done, run[0]!.from) + to;
    done = run.at(-1)!.to;
    made.push({ from, to, why });
  };
  for (let i = 0; i < tokens.length; i++) {
    const right = saidRight(tokens, i, wanted);
    if (right > 0) {
      i += right - 1;
      continue;
    }
    const found = findName(tokens, i, wanted, text);
    if (found) {
      put(found.run, inForm(found.name, found.run), 'sounds like a name of this shop');
      i += found.run.length - 1;
      continue;
    }
    const token = tokens[i]!;
    const isDoubtful = doubtful.has(bare(token.core));
    const proper = /^\p{Lu}/u.test(token.core) && !/(^|[.?!]\s*)$/.test(text.slice(0, token.from));
    if (proper && !isDoubtful) continue;
    const word = meantBy(token.core, nameWords, isDoubtful, isCommon);
    if (word) put([token], inForm(word, [token]), 'sounds like a word of the trade');
    else if (i + 1 < tokens.length && joins(token, tokens[i + 1]!, text)) put([token, tokens[++i]!], joinOf(token, tokens[i]!), 'one word');
  }
  return { text: out + text.slice(done), changes: made };
}

/** How many words from here are a name as it should be; 0 for none. */
function saidRight(tokens: Token[], at: number, wanted: Wanted[]): number {
  return Math.max(0, ...wanted.map(({ words }) => (words.every((word, i) => bare(tokens[at + i]?.core ?? '') === bare(word)) ? words.length : 0)));
}

function findName(tokens: Token[], at: number, wanted: Wanted[], text: string): { run: Token[]; name: string } | undefined {
  for (const want of wanted) {
    for (let size = want.words.length + 1; size >= Math.max(1, want.words.length - 1); size--) {
      const run = tokens.slice(at, at + size);
      if (run.length === size && standsFor(run, want, text)) return { run, name: want.words.join(' ') };
    }
  }
  return undefined;
}

/** Compounds of the trade that recognisers split: "tail stock", "key way". */
const COMPOUNDS = new Set(TRADE_WORDS.filter((word) => word.length >= 7 && !word.includes('-')));
const joinOf = (a: Token, b: Token) => a.core + low(b.core);
const joins = (a: Token, b: Token, text: string) =>
  /^[ -]$/.test(text.slice(a.to, b.from)) && a.core.length >= 3 && b.core.length >= 3 && (COMPOUNDS.has(low(joinOf(a, b))) || COMPOUNDS.has(bare(joinOf(a, b))));
