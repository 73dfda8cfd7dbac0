import { isNumberWord } from '../text/number-words.ts';
import type { Sheet, Token } from '../types.ts';
import { singular } from '../words/nouns.ts';
import { partSlot } from './part-slot.ts';
import { type Sound, soundOf } from './phones.ts';
import { isWord } from './vocabulary.ts';

/** Words that may be a name misheard, with what is asked of them for every name they are held against. */
export interface Run {
  tokens: readonly Token[];
  /** The tokens [at, at + n). */
  at: number;
  n: number;
  words: readonly string[];
  /** The words in the singular. */
  bare: readonly string[];
  sound: Sound;
  /** Those of `bare` that are words as they stand. */
  plain: ReadonlySet<string>;
  /** Whether a part plainly stands here. */
  readonly slot: 'sure' | 'may' | undefined;
}

export function runAt(tokens: readonly Token[], at: number, n: number): Run {
  const words = tokens.slice(at, at + n).map(t => t.low), bare = words.map(singular);
  let slot: Run['slot'], looked = false;
  return {
    tokens, at, n, words, bare, sound: soundOf(words), plain: new Set(bare.filter(isWord)),
    get slot() { if (!looked) { looked = true; slot = partSlot(tokens, at, n); } return slot; }, // few runs come near enough to a name for it to matter
  };
}

/** How many tokens from here, `most` at the furthest, are words said in one breath, none of which parts one phrase from the next: a name was heard in no more. */
export function breathAt({ text, tokens }: Sheet, at: number, most: number): number {
  let n = 0;
  for (let t = tokens[at]; t && n < most && /^\p{L}[\p{L}'’-]*$/u.test(t.low) && (!isNumberWord(t.low) || n === 0 && t.low === 'half') && (n === 0 || !INSIDE.test(t.low) && BREATH.test(text.slice(tokens[at + n - 1]!.end, t.start))); t = tokens[at + n]) n++;
  return n;
}
const BREATH = /^[\s-]*((um|uh|er|erm|ah)[\s,]+|(\w+)\s+)?$/i;

/** Whether a name can have been said where words of one breath stand. */
export const mayBeHeard = (run: readonly Token[], article: boolean): boolean =>
  (!CANT_OPEN.test(run[0]!.low) || article && run.length > 1 && !/^(the|a|an|my|to|and|or|is|are|was|were|i|it|of|one|new|old)$/.test(run[0]!.low)) && !CANT_END.test(run.at(-1)!.low) && (run.length > 1 || run[0]!.low.length > 3 && !run[0]!.low.includes('-'))
  && !run.some((t, k) => UNIT.test(t.low) && (k === 0 && !(t.low === 'half' && run.length > 1) || k > 0 && UNIT.test(run[k - 1]!.low))); // a half shaft is no measure
/** Words that part one phrase from the next: no name was heard across them. */
const INSIDE = /^(the|a|an|my|and|of|to|is|are|was|were|has|have|'s|'re|'ve|'ll|'m|'d|but|so|then|if|when|while|because|until|till|i|we|they|one|ones|not|n't)$/;
const UNIT = /^(h|hrs?|mins?|mm|cm|ft|lbs?|oz|kgs?|psi|rpm|inch|inches|foot|feet|mils?|thou|volts?|amps?|hours?|minutes?|days?|weeks?|months?|years?|bucks?|dollars?|euros?|quid|pounds?|miles?|metres?|meters?|litres?|liters?|gallons?|quarts?|pints?|degrees?|half|quarters?|percent|each|apiece|am|pm|say)$/;
const CANT_OPEN = /^(aye|oh|well|yes|right|ok|okay|the|a|an|my|his|our|your|its|their|this|that|these|those|to|and|or|is|are|was|were|be|been|it|they|i|he|she|we|in|on|off|of|for|from|with|at|but|so|if|when|has|have|had|got|do|did|does|'s|'re|'ve|'ll|'m|'d|n't|no|one|two|three|four|five|six|seven|eight|nine|ten|some|any|all|both|each|new|old|as|by)$/;
const CANT_END = /^(the|a|an|of|and|or|to|'s|'re|'ve|'ll|'m|is|are|was|were|has|have|had|off|with|for|from|at|my)$/;
