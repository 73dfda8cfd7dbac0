import { nameKey } from '../../domain/model/names.ts';
import { knownNames, type KnownNames } from '../dimensions/part/known.ts';
import { nameReach } from '../dimensions/part/reach.ts';
import { isClosed } from '../text/nominal.ts';
import type { Sheet, Token } from '../types.ts';
import { nounClasses, singular } from '../words/nouns.ts';
import { allowance, mostAllowed } from './allowance.ts';
import { expectedNames, type Expected } from './expected.ts';
import { breathAt, mayBeHeard, type Run, runAt } from './heard-run.ts';
import { apart, soundOf } from './phones.ts';

const NONE: readonly string[] = [];
/** More words than this for one name are no mishearing any more. */
const LONGEST = 5;
/** Less than this is too little to tell a name by. */
const LEAST_HEARD = 2.2;

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
  const asked = new Map<number, number>(); // what stands as it should be at a token, until a name is put and moves the rest
  const rightAt = (at: number): number => {
    const n = asked.get(at) ?? saidRight(out, at, parts, machines);
    asked.set(at, n);
    return n;
  };
  /** The name that the words from `at` were best heard for, `least` of them or more. */
  const widest = (at: number, least: number): Hit | undefined => {
    let best: Hit | undefined;
    const article = /^(the|a|an|my|his|her|our)$/.test(out[at - 1]?.low ?? '');
    for (let n = breathAt(sheet, at, LONGEST); n >= least; n--) {
      if (!mayBeHeard(out.slice(at, at + n), article) || reachesOver(rightAt, at, n)) continue;
      const run = runAt(out, at, n);
      if (run.sound.heavy < LEAST_HEARD) continue;
      for (const e of expected) {
        const hit = nameFor(run, e);
        if (hit && (!best || hit.slack > best.slack)) best = hit;
      }
    }
    return best;
  };
  for (let i = 0; i < out.length; i++) {
    const joined = joinedName(out, i, expected);
    if (joined) {
      const longer = joined.words.length === 1 ? widest(i, joined.n + 1) : undefined, hit = longer?.words.includes(joined.words[0]!) ? longer : joined; // "throw out baring": the whole name, not its first word alone
      put(sheet, i, hit);
      asked.clear();
      i += hit.words.length - 1;
      continue;
    }
    const right = rightAt(i);
    if (right) { i += right - 1; continue; }
    const best = widest(i, 1);
    if (!best) continue;
    put(sheet, i, best);
    asked.clear();
    i += best.words.length - 1;
  }
}

/** "cross head pin", "bell crank": the letters of a name of the shop's, cut into words in another way. */
function joinedName(tokens: readonly Token[], at: number, expected: readonly Expected[]): Hit | undefined {
  const words: string[] = [];
  let letters = '', longest: Hit | undefined;
  for (let n = 1; n <= LONGEST; n++) {
    const low = tokens[at + n - 1]?.low ?? '';
    if (!/^\p{L}/u.test(low)) break;
    words.push(low);
    letters += low.replace(/-/g, '');
    const name = expected.map(e => e.joined(letters)).find(x => x !== undefined);
    if (name && name.words.length !== n) longest = { words: inForm(name.words, words), n, slack: 1 };
  }
  return longest;
}

/** Whether a name that is said as it should be begins inside a run and ends outside it. */
const reachesOver = (rightAt: (at: number) => number, at: number, n: number): boolean => {
  for (let k = 1; k < n; k++) if (rightAt(at + k) > n - k) return true;
  return false;
};

interface Hit { words: string[]; n: number; slack: number }

/** How many tokens from here are a known name, or one of the trade's of several words, as it should be. */
function saidRight(tokens: readonly Token[], at: number, parts: KnownNames, machines: KnownNames): number {
  for (let n = nameReach(tokens, at, parts, machines); n >= 1; n--) {
    const said = tokens.slice(at, at + n).map(t => t.low).join(' '), key = nameKey(said);
    if (isClosed(tokens[at]!.low) && n > 1 && !parts.has(said)) continue;
    if (key && (parts.exact(key) || machines.exact(key)) || n > 1 && nounClasses(said).size > 0) return n;
  }
  return 0;
}

/** The expected name that a run was heard for, with how far inside its allowance it lies. Sounds are compared first: few names come near enough for more. */
function nameFor(run: Run, expected: Expected): Hit | undefined {
  const { words, sound } = run;
  let best: Hit | undefined, rival = false;
  for (const name of expected.near(sound, words.length > 1 ? run.bare : [])) {
    const cap = mostAllowed(run, name);
    if (cap <= 0) continue;
    const d = apart(sound, name.sound, cap);
    if (d > cap) continue;
    const most = allowance(run, name), slack = most - d;
    if (most <= 0 || slack < 0) continue;
    const hit = { words: inForm(name.words, words), n: run.n, slack };
    if (!best || slack > best.slack + .03) { rival = false; best = hit; } else if (singular(hit.words.join(' ')) !== singular(best.words.join(' '))) rival = rival || Math.abs(slack - best.slack) <= .03;
  }
  return rival ? undefined : best;
}

/** The name in the number that was heard: "veins" wants "vanes". */
function inForm(name: readonly string[], heard: readonly string[]): string[] {
  const last = name.at(-1)!;
  return /[^s]s$/.test(heard.at(-1)!) && singular(last) === last && !/s$/.test(last) && soundOf([heard.at(-1)!]).row.endsWith('z') ? [...name.slice(0, -1), `${last}s`] : [...name];
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
