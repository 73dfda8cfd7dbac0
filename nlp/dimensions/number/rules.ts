import { N, type Piece, type Rule, type Slate, runRules } from '../rule.ts';

/** Counts that are said by a word of their own, and every number by itself. */
const RULES: Rule<'number'>[] = [
  { name: 'a dozen', pattern: /(?:a )?dozen\b/g, make: () => ({ value: 12, form: 'words' }) },
  { name: 'a couple', pattern: /\ba (?:couple|pair)\b(?: of\b)?/g, sure: 'implied', make: () => ({ value: 2, form: 'words', about: true }) },
  { name: 'minus #', pattern: new RegExp(`(?:\\bminus |\\bnegative |(?<![\\w~)-])-)${N}`, 'g'), make: (_m, [n]) => n && { value: -n.value, form: n.form } },
];

/** "no one to help": nobody, not a count (what points at a thing, "the left one", the scan has left out). */
const NOBODY = /\bno $/;

/** "two flats no one flat": a count put right, not "no one". */
const righted = (line: string, n: { start: number; end: number }): boolean => {
  const was = /\b([a-z]+?)s?,? no $/.exec(line.slice(0, n.start))?.[1], now = /^ ([a-z]+?)s?\b/.exec(line.slice(n.end))?.[1];
  return was !== undefined && was === now;
};

export function numberPieces(slate: Slate): Piece<'number'>[] {
  const bare = slate.nums.flatMap((n): Piece<'number'>[] => {
    const text = slate.line.text.slice(n.start, n.end);
    if (text === 'one' && (NOBODY.test(slate.line.text.slice(0, n.start)) && !righted(slate.line.text, n) || /^(?: (?:of|that|which|is|was|thats|for)\b|s\b)/.test(slate.line.text.slice(n.end)))) return [];
    if (/[a-z]$/.test(slate.line.text.slice(0, n.start)) || /^[a-z]/.test(slate.line.text.slice(n.end))) return [];
    const value = { value: n.value, form: n.form, ...(n.about ? { about: true } : {}) };
    return [{ dim: 'number', start: n.start, end: n.end, value, sure: n.loose || text === 'one' ? 'implied' : 'certain', rule: '#' }];
  });
  const own = runRules('number', RULES, slate);
  return [...own, ...bare.filter(b => !own.some(o => b.start < o.end && o.start < b.end))].sort((a, b) => a.start - b.start);
}
