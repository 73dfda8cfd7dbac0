import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SUM_KINDS } from '../../../nlp/meanings/asks/sums/kinds.ts';
import { SUM_NAMES } from '../../../nlp/meanings/asks/sums/names.ts';
import { neededBy } from '../../../nlp/text/needed.ts';
import { mayMatch } from '../../../nlp/text/pattern-index.ts';

describe('what a text must hold for a pattern to match', () => {
  it.each([
    [/\b(?:what|which) (?:size|tap).*\bdrills?\b/, [['drills', 'drill'], ['what', 'which'], ['size', 'tap']]],
    [/how (?:the )?(?=far)/, [['how']]], // what lies ahead is no part of the match
    [/(?<!not )tight(?:en)?/, [['tighten', 'tight']]],
    [/#~* ?(?:mm|ft)/, [['mm', 'ft'], ['#']]],
    [/ba[rz]+s?/, [['ba']]], // how often the last letter stands is open
    [/wear|[a-z]+ing/, [['wear', 'ing']]],
    [/wear|worn?|/, []], // may be nothing at all
    [/\p{L}+ shims/u, []],
  ])('%s', (pattern, groups) => {
    expect(neededBy(pattern.source).map(g => [...g].sort())).toEqual(groups.map(g => [...g].sort()));
  });

  it('never leaves out a pattern that matches', () => {
    const patterns = [...SUM_KINDS.flatMap(k => k.ask), ...Object.values(SUM_NAMES).map(n => n.name)].map(pattern => ({ pattern }));
    const lines = readFileSync(new URL('../asks/questions.jsonl', import.meta.url), 'utf8').split('\n').filter(Boolean).map(l => (JSON.parse(l) as { text: string }).text);
    let matched = 0;
    for (const line of lines) for (const text of [line.toLowerCase(), line.toLowerCase().replace(/\d+/g, '#')]) {
      const tried = new Set(mayMatch(patterns, p => p.pattern, text));
      for (const p of patterns) if (new RegExp(p.pattern.source).test(text)) { matched++; expect(tried.has(p), `${p.pattern} in "${text}"`).toBe(true); }
    }
    expect(matched).toBeGreaterThan(100);
  });
});
