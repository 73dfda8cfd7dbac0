import { slateOf } from '../../../dimensions/rule.ts';
import { type Desk, type Hit, sentenceAt } from '../desk.ts';
import type { Candidate } from './candidates.ts';
import { wholeOf } from './kind.ts';
import { SUM_KINDS } from './kinds.ts';
import { Scope } from './scope.ts';

/** Where another case is put: "And if I do 'em dry?", "then again at four", "and what if it's forty". */
const CASE = /(?:^|(?<=[.?!,;] )|(?<= ))(?:and |or |but |so )?(?:what if|what about|what of (?=#)|how about|if (?:i|we|it|its|that|theyre)\b(?=[^.?!]*\?)|(?:and|or) (?:at|with|for|on|in) (?=#[^.?!]*\?)|then (?:again|the same|same again|the same again) (?:at|with|for|in|on)|(?:the )?same (?:again )?(?:at|with|for|in|on)|(?:and |then |(?<=[,.;] ))again (?:at|with|for)|(?<=[.?!;,] )also (?=#))(?=\b| ?#)/g;

/**
 * A sum that no words ask for, known by the other case put after it: "Coolant's 38 litres, want fifty percent. And if it was forty?" What was
 * told before must be whole by itself, and the other case must change a figure of it. The question is then all that was told.
 */
export function byCase(desk: Desk, plain: readonly Hit[], have: readonly Candidate[]): Candidate[] {
  if (have.some(c => c.score > 0)) return [];
  const { mask } = slateOf(desk.line, desk.sheet.ctx.at);
  for (const m of mask.matchAll(CASE)) {
    const floor = Math.max(0, ...plain.filter(p => p.end <= m.index).map(p => p.end)), end = sentenceAt(desk, m.index).end;
    if (plain.some(p => p.start < end && m.index < p.end)) continue;
    for (const kind of SUM_KINDS) {
      const told = new Scope(desk, floor, m.index, m.index), given = kind.given(told);
      if (!wholeOf(kind.telling, given) || kind.word && !kind.word.test(desk.text.slice(floor, end)) || kind.unless?.test(desk.text.slice(floor, end))) continue;
      const other = kind.given(new Scope(desk, m.index, end), given);
      if (!Object.keys(other).some(f => other[f] !== undefined && given[f] !== undefined)) continue;
      const start = sentenceAt(desk, Math.min(...told.taken.map(([a]) => a))).start;
      return [{ kind, start: Math.max(floor, start), end: desk.text.slice(0, m.index).trimEnd().length, score: 3 }];
    }
  }
  return [];
}
