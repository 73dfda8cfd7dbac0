import { mayMatch } from '../text/pattern-index.ts';
import type { Dim, Found, FoundValue, Sure } from '../types.ts';
import { type Line, tokensOf } from './line.ts';
import type { Num } from './number/num.ts';
import { numbersOf } from './number/scan.ts';

/**
 * What a dimension's rules look at. `mask` is the line with every number written as # and as many ~ as it takes to keep the length, so that a
 * rule is a picture of its phrase: "# foot #" for "ten foot six".
 */
export interface Slate { line: Line; mask: string; nums: Num[]; numAt: Map<number, Num>; /** The moment of the note, ISO with offset. */ at: string }

/** How a number stands in a rule's pattern. */
export const N = '(#~*(?!~))';

const cached = new WeakMap<Line, Slate>();

export function slateOf(line: Line, at: string): Slate {
  const before = cached.get(line);
  if (before?.at === at) return before;
  const made = write(line, at);
  cached.set(line, made);
  return made;
}

function write(line: Line, at: string): Slate {
  const nums = numbersOf(line);
  let mask = line.text.replace(/[#~]/g, '№');
  for (const n of nums) mask = mask.slice(0, n.start) + '#'.padEnd(n.end - n.start, '~') + mask.slice(n.end);
  return { line, mask, nums, numAt: new Map(nums.map(n => [n.start, n])), at };
}

/** One stretch that a rule understood, by the characters of the line. */
export interface Piece<D extends Dim> { dim: D; start: number; end: number; value: FoundValue[D]; sure: Sure; rule: string }

/** A rule: its name is a picture of the phrase; `make` gives the value from the numbers in it, or undefined for "not mine". */
export interface Rule<D extends Dim> {
  name: string;
  pattern: RegExp;
  sure?: Sure;
  make(m: RegExpExecArray, nums: Num[], slate: Slate): FoundValue[D] | undefined;
}

/** Runs one dimension's rules over the slate; where two overlap the longer wins, then the earlier in the list. */
export function runRules<D extends Dim>(dim: D, rules: readonly Rule<D>[], slate: Slate): Piece<D>[] {
  const all: Piece<D>[] = [];
  for (const rule of mayMatch(rules, r => r.pattern, slate.mask)) {
    rule.pattern.lastIndex = 0;
    for (let m = rule.pattern.exec(slate.mask); m; m = rule.pattern.exec(slate.mask)) {
      const nums = numsIn(slate, m.index, m.index + m[0].length);
      const value = rule.make(m, nums, slate);
      if (value !== undefined) all.push({ dim, start: m.index, end: m.index + m[0].length, value, sure: rule.sure ?? 'certain', rule: rule.name });
      else rule.pattern.lastIndex = m.index + 1;
      if (m[0] === '') rule.pattern.lastIndex++;
    }
  }
  return longestFirst(all);
}

/** The numbers whose writing lies within [start, end). */
function numsIn(slate: Slate, start: number, end: number): Num[] {
  const out: Num[] = [];
  for (let i = slate.mask.indexOf('#', start); i >= 0 && i < end; i = slate.mask.indexOf('#', i + 1)) {
    const n = slate.numAt.get(i);
    if (n && n.end <= end) out.push(n);
  }
  return out;
}

function longestFirst<D extends Dim>(all: Piece<D>[]): Piece<D>[] {
  const kept: Piece<D>[] = [], taken = new Uint8Array(Math.max(0, ...all.map(p => p.end)));
  for (const p of [...all].sort((a, b) => (b.end - b.start) - (a.end - a.start))) {
    if (taken.subarray(p.start, p.end).includes(1)) continue;
    taken.fill(1, p.start, p.end);
    kept.push(p);
  }
  return kept.sort((a, b) => a.start - b.start);
}

export function toFound<D extends Dim>(line: Line, p: Piece<D>): Found {
  const [from, to] = tokensOf(line, p.start, p.end);
  return { dim: p.dim, from, to, value: p.value, sure: p.sure, rule: p.rule } as Found;
}
