import { nameKey } from '../../domain/model/names.ts';
import { knownNames, type KnownNames } from '../dimensions/part/known.ts';
import { isNumberWord } from '../text/number-words.ts';
import { isClosed } from '../text/tag.ts';
import type { Sheet, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { isTradeWord, nounClasses, singular } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { expectedNames, type Expected } from './expected.ts';
import { apart, phonesOf, weightOf } from './phones.ts';
import { isWord } from './vocabulary.ts';

const NONE: readonly string[] = [];
/** More words than this for one name are no mishearing any more. */
const LONGEST = 5;

/**
 * The shop's own names, misheard: "cool tours" for coulters, "vac you pump veins" for vacuum pump vanes, "phony motor" for pony motor. One to five words
 * give way to the name that sounds like them, the nearer the plainer their own meaning is. A run of words that the shop or the trade has a name for,
 * or that hold a part's name and are otherwise another, stay as they are.
 */
export function heardNames(sheet: Sheet): void {
  const parts = knownNames(sheet.ctx.parts ?? NONE), machines = knownNames(sheet.ctx.machines ?? NONE);
  const expected = [expectedNames(sheet.ctx.parts ?? NONE), expectedNames(sheet.ctx.machines ?? NONE)];
  if (expected.every(e => e.size === 0)) return;
  const out = sheet.tokens;
  for (let i = 0; i < out.length; i++) {
    const joined = joinedName(out, i, expected);
    if (joined) { put(sheet, i, joined); i += joined.words.length - 1; continue; }
    const right = saidRight(out, i, parts, machines);
    if (right) { i += right - 1; continue; }
    let best: Hit | undefined;
    for (let n = Math.min(LONGEST, out.length - i); n >= 1; n--) {
      const run = out.slice(i, i + n);
      if (!mayBeHeard(run, sheet, /^(the|a|an|my|his|her|our)$/.test(out[i - 1]?.low ?? '')) || run.some((_, k) => k > 0 && saidRight(out, i + k, parts, machines) >= Math.min(2, n - k + 1) && k > 0 && saidRight(out, i + k, parts, machines) > n - k)) continue;
      for (const e of expected) {
        const hit = nameFor(run, e, out, i, n);
        if (hit && (!best || hit.slack > best.slack)) best = hit;
      }
    }
    if (!best) continue;
    put(sheet, i, best);
    i += best.words.length - 1;
  }
}

/** "cross head pin", "bell crank": the letters of a name of the shop's, cut into words in another way. */
function joinedName(tokens: readonly Token[], at: number, expected: readonly Expected[]): Hit | undefined {
  for (let n = Math.min(LONGEST, tokens.length - at); n >= 1; n--) {
    const words = tokens.slice(at, at + n).map(t => t.low);
    if (!words.every(w => /^\p{L}/u.test(w))) continue;
    const name = expected.map(e => e.joined(words.join('').replace(/-/g, ''))).find(x => x !== undefined);
    if (name && name.words.length !== n) return { words: inForm(name.words, words), n, slack: 1 };
  }
  return undefined;
}

interface Hit { words: string[]; n: number; slack: number }

/** How many tokens from here are a known name, or one of the trade's of several words, as it should be. */
function saidRight(tokens: readonly Token[], at: number, parts: KnownNames, machines: KnownNames): number {
  for (let n = Math.min(LONGEST, tokens.length - at); n >= 1; n--) {
    const said = tokens.slice(at, at + n).map(t => t.low).join(' '), key = nameKey(said);
    if (isClosed(tokens[at]!.low) && n > 1 && !parts.has(said)) continue;
    if (key && (parts.exact(key) || machines.exact(key)) || n > 1 && nounClasses(said).size > 0) return n;
  }
  return 0;
}

const mayBeHeard = (run: readonly Token[], sheet: Sheet, article: boolean): boolean =>
  run.every((t, k) => /^\p{L}[\p{L}'’-]*$/u.test(t.low) && (k === 0 || /^[\s-]*((um|uh|er|erm|ah)[\s,]+|(\w+)\s+)?$/i.test(sheet.text.slice(run[k - 1]!.end, t.start))))
  && (!CANT_OPEN.test(run[0]!.low) || article && run.length > 1 && !/^(the|a|an|my|to|and|or|is|are|was|were|i|it|of|one|new|old)$/.test(run[0]!.low)) && !CANT_END.test(run.at(-1)!.low) && (run.length > 1 || run[0]!.low.length > 3 && !run[0]!.low.includes('-'))
  && !run.some((t, k) => /^['’]/.test(t.low) || isNumberWord(t.low) || UNIT.test(t.low) && (k === 0 || UNIT.test(run[k - 1]!.low) || run.length === 1) || k > 0 && INSIDE.test(t.low));
/** Words that part one phrase from the next: no name was heard across them. */
const INSIDE = /^(the|a|an|my|and|of|to|is|are|was|were|has|have|'s|'re|'ve|'ll|'m|'d|but|so|then|if|when|while|because|until|till|i|we|they|one|ones|not|n't)$/;
const UNIT = /^(inch|inches|foot|feet|mils?|thou|volts?|amps?|hours?|minutes?|days?|weeks?|months?|years?|bucks?|dollars?|euros?|quid|pounds?|miles?|metres?|meters?|litres?|liters?|gallons?|quarts?|pints?|degrees?|half|quarters?|percent|each|apiece|am|pm|say)$/;
const CANT_OPEN = /^(aye|oh|well|yes|right|ok|okay|the|a|an|my|his|our|your|its|their|this|that|these|those|to|and|or|is|are|was|were|be|been|it|they|i|he|she|we|in|on|off|of|for|from|with|at|but|so|if|when|has|have|had|got|do|did|does|'s|'re|'ve|'ll|'m|'d|n't|no|one|two|three|four|five|six|seven|eight|nine|ten|some|any|all|both|each|new|old|as|by)$/;
const CANT_END = /^(the|a|an|of|and|or|to|'s|'re|'ve|'ll|'m|is|are|was|were|has|have|had|off|with|for|from|at|my)$/;

/** The expected name that a run was heard for, with how far inside its allowance it lies. */
function nameFor(run: readonly Token[], expected: Expected, tokens: readonly Token[], at: number, n: number): Hit | undefined {
  const words = run.map(t => t.low), row = phonesOf(words), heavy = weightOf(row);
  if (heavy < 2.2) return undefined;
  let best: Hit | undefined, rival = false;
  const near = new Set([...expected.near(row, heavy), ...(words.length > 1 ? words.flatMap(w => expected.holding(singular(w))) : [])]);
  for (const name of near) {
    if (Math.abs(name.heavy - heavy) > .4 * heavy) continue;
    const most = allowance(words, name.words, tokens, at, n);
    if (most <= 0) continue;
    const d = apart(row, name.row, most);
    if (d > most) continue;
    const slack = most - d;
    const hit = { words: inForm(name.words, words), n, slack };
    if (!best || slack > best.slack + .03) { rival = false; best = hit; } else if (singular(hit.words.join(' ')) !== singular(best.words.join(' '))) rival = rival || Math.abs(slack - best.slack) <= .03;
  }
  return rival ? undefined : best;
}

/**
 * How far apart the sounds may be for these words to have been that name. What stands for a plain meaning of their own takes from it (parts that the name
 * has not, small words, one everyday word alone); what speaks for the name gives (shared words, words that are none, a place where a part must stand).
 */
function allowance(words: readonly string[], name: readonly string[], tokens: readonly Token[], at: number, n: number): number {
  const bare = words.map(singular), want = name.map(singular);
  const own = bare.filter((w, k) => !want.includes(w) && want[k] !== w);
  if (!own.length) return 0;
  const shared = bare.length - own.length;
  if (own.some(w => SIDES.has(w) || ORDINAL.test(w))) return 0;
  const missing = want.filter(w => !bare.includes(w));
  if (!missing.length || missing.length === 1 && own.some(w => w !== missing[0] && verbForms(w).some(f => verbForms(missing[0]!).some(g => g.base === f.base)))) return 0; // the name itself with a word after it; another form of the same verb
  if (words.length > 1 && SMALL_END.test(words.at(-1)!) && !mayEnd(words, tokens, at, n)) return 0;
  const foreign = own.filter(w => nounClasses(w).size > 0 && !name.join('').startsWith(w) && !name.join('').endsWith(w));
  const plain = own.every(w => isWord(w));
  if (shared > 0 && want.length > shared && words.length === name.length) {
    // A name of as many words that shares some: what differs must itself sound alike.
    const rest = apart(phonesOf(own), phonesOf(missing), .5);
    const one = own.length === 1 ? own[0]! : '';
    // Another part's own word ("bearing cup" for "bearing cap") gives way only where it sounds the same.
    if (one && rest > (nounClasses(one).size > 0 ? .03 : CONDITION.has(one) ? .12 : isTradeWord(one) ? .22 : 1)) return 0;
    const opens = at === 0 || /^([.,;:!?]|the|and|um|a)$/.test(tokens[at - 1]!.low);
    if (own.some(w => isClosed(w) && !SPLINTER.test(w) && !(opens && bare[0] === w && shared === 1 && words.length === 2 && !/s$/.test(words[1]!)) || GENERAL.test(w))) return 0;
    if (rhymes(phonesOf(own), phonesOf(missing))) return .24;
    if (rest > (plain ? shared > 1 ? .34 : .3 : .45) || phonesOf(own)[0] !== phonesOf(missing)[0] && rest > .3) return 0;
    return plain ? .2 : .3;
  }
  if (own.every(w => isClosed(w)) && !own.some(w => SPLINTER.test(w))) return 0;
  const slot = partSlot(tokens, at, n);
  let most = .1 + (weightOf(phonesOf(name)) >= 5 ? .05 : 0) + (shared ? .04 : 0) + (plain ? 0 : .08) + (slot ? .06 : 0);
  if (words.length === 1) {
    const w = words[0]!;
    if (name.length > 1) return .06;
    if (!plain) return Math.min(.24, most, .08 * (weightOf(phonesOf(words)) - 1.5));
    const next = tokens[at + 1]?.low ?? '.';
    const alone = !/^\p{L}/u.test(next) || isClosed(next) || CONDITION.has(next);
    if (slot !== 'sure' || !alone || /^an?$/.test(tokens[at - 1]?.low ?? '') || isClosed(w) || SIDES.has(w) || CONDITION.has(w) || nounClasses(w).size || isTradeWord(w) || verbForms(w).some(f => isClass(f.base, 'fail'))) return 0;
    return .15;
  }
  const next = tokens[at + n]?.low ?? '', before = tokens[at - 1]?.low ?? '';
  if (plain && shared === 0) { // "a cool tour of the museum", "the phone rang"
    if (next === 'of') most -= .08;
    if (/^an?$/.test(before)) most -= .03;
    if (verbForms(words.at(-1)!).some(f => f.form === 'past') && !/^(is|are|was|were|'s|has|have|had|needs|wants|on|off|in|out|and)$/.test(next)) most -= .1;
    if (singular(words.at(-1)!) === words.at(-1) && singular(name.at(-1)!) !== name.at(-1) && !/[sz]$/.test(phonesOf([words.at(-1)!]))) most -= .04;
  }
  if (foreign.includes(bare.at(-1)!) && !name.join('').startsWith(words[0]!)) most -= .05;
  most -= .05 * foreign.length + .03 * own.filter(w => isClosed(w) && !SPLINTER.test(w)).length;
  if (shared === 0 && name[0]!.startsWith(words[0]!.slice(0, 4)) && words[0]!.length >= 3) most += .08; // "mag needle", "radio later"
  return Math.min(.26, most);
}
/** "sister" for "twister": two syllables or more that differ only ahead of the first vowel. */
const rhymes = (a: string, b: string): boolean => {
  const tail = (row: string): string => row.replace(/^[^aeiou]+/, '');
  return tail(a) === tail(b) && tail(a).replace(/[^aeiou]/g, '').length > 1 && weightOf(tail(a)) >= 2;
};
const ORDINAL = /^(first|second|third|fourth|fifth|last|next|other|spare)$/;
/** "got the not her off", not "help roll her in": a small word ends a name only inside a noun phrase of its own. */
function mayEnd(words: readonly string[], tokens: readonly Token[], at: number, n: number): boolean {
  const next = tokens[at + n]?.low ?? '', before = tokens[at - 1]?.low ?? '';
  if (/^(on|in|up|at|over|under|out|off)$/.test(words.at(-1)!)) return next === '' || /^[.,;:!?]$/.test(next) || /^(is|are|was|were|'s|has|needs|wants)$/.test(next);
  return !verbForms(words[0]!).length || /^(the|a|an|my|that|this|new|old|left|right|front|rear|both|two)$/.test(before) || /^(is|are|was|were|'s|has)$/.test(next);
}
const SMALL_END = /^(it|her|him|them|us|you|me|on|in|up|at|over|under|out|off|this|that|these)$/;
/** Small words that recognisers make of the ends of long ones: "beat her", "vac you", "magnet oh", "prime or". */
const SPLINTER = /^(her|or|you|oh|are|at|it|all|in|up|er|a|ate|this|less|us)$/;

/**
 * Whether a part plainly stands at tokens [at, at + n): 'sure' where a verb of the bench has it for its object, a condition is said of it, or it is counted
 * among things bought; 'may' where a noun phrase stands by itself at the head of a sentence or after an article.
 */
function partSlot(tokens: readonly Token[], at: number, n: number): 'sure' | 'may' | undefined {
  let b = at - 1;
  while (b >= 0 && /^(the|a|an|my|both|all|new|old|that|this|those|these|some|left|right|front|rear|top|bottom|of|set|pair|two|three|four|five|six|\d+)$/.test(tokens[b]!.low)) b--;
  const article = b < at - 1, before = tokens[b]?.low ?? '';
  let a = at + n;
  while (a < tokens.length && /^(is|are|was|were|'s|'re|all|both|badly|pretty|well|quite|very|a|bit|got|has|have|been|just|now)$/.test(tokens[a]!.low)) a++;
  const after = tokens[a]?.low ?? '';
  const bench = verbForms(before).some(f => !GENERAL.test(f.base) && (isClass(f.base, 'work') || isClass(f.base, 'tight') || isClass(f.base, 'on') || isClass(f.base, 'off')));
  const bought = article && tokens.slice(Math.max(0, at - 3), at).some(t => /^(pair|set)$/.test(t.low)) && tokens.slice(0, at).some(t => verbForms(t.low).some(f => /^(get|buy|need|order|want)$/.test(f.base)));
  const stated = STATED.test(after) || verbForms(after).some(f => f.form !== 'base' && isClass(f.base, 'fail'));
  if (bench && article || stated && !/^(cold|hot|wet|dry|full|good|fine|great|tired|free|open|late|short|long|low|high)$/.test(after) || bought) return 'sure';
  const opens = b < 0 || /^[,.;:!?—–-]+$/.test(before) || /^(and|but|so|then|now|okay|ok|right)$/.test(before);
  const closes = after === '' || /^[,.;:!?—–-]+$/.test(after) || a > at + n || isClosed(after) || verbForms(after).length > 0;
  return (article || opens) && closes ? 'may' : undefined;
}
const GENERAL = /^(get|put|take|have|do|make|leave|give|run|set|work|go|let|turn|cut|draw|read|talk|bring|pull|drive|drop|beat|swap|exchange|change|stand|feed|push|home|lift|tie|clear|dress|lay|sit|shape|time|touch|top|book)$/;
const STATED = { test: (w: string): boolean => CONDITION.has(w) };

/** The name in the number that was heard: "veins" wants "vanes". */
function inForm(name: readonly string[], heard: readonly string[]): string[] {
  const last = name.at(-1)!;
  return /[^s]s$/.test(heard.at(-1)!) && singular(last) === last && !/s$/.test(last) && phonesOf([heard.at(-1)!]).endsWith('z') ? [...name.slice(0, -1), `${last}s`] : [...name];
}

/** Puts the name's words for the run, each over its share of what was said; more words than were heard stay on one token. */
function put(sheet: Sheet, at: number, hit: Hit): void {
  const run = sheet.tokens.slice(at, at + hit.n);
  const said = (from: number, to: number): Pick<Token, 'text' | 'start' | 'end'> => ({ text: sheet.text.slice(run[from]!.start, run[to - 1]!.end), start: run[from]!.start, end: run[to - 1]!.end });
  sheet.trace.push({ stage: 'mend', rule: "the shop's own name", text: said(0, hit.n).text, gave: hit.words.join(' ') });
  const m = hit.words.length;
  const made: Token[] = m > hit.n ? [{ ...said(0, hit.n), low: hit.words.join(' '), mended: true }]
    : hit.words.map((low, k) => ({ ...said(Math.floor(k * hit.n / m), Math.floor((k + 1) * hit.n / m)), low, mended: true }));
  sheet.tokens.splice(at, hit.n, ...made);
}
