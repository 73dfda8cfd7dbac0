import { slateOf } from '../../../dimensions/rule.ts';
import type { Candidate } from './candidates.ts';
import { follow, wholeOf } from './kind.ts';
import { type Given, Scope } from './scope.ts';

/** What leads to a second case told before the question: "and then again at", "then", "and same with". */
const TURN = /(?:,? (?:and )?then(?: again| the same)?(?: (?:at|with|for|on|in))? (?=#)|,? (?:and|or) (?:for|can) (?=#)|[.?!;,] also (?=#)|[,.]? (?:and |or )(?:then |again )?(?:the )?same(?: again)? (?:at|with|for|in|on) )/g;

/** "One flat then three flats, end play each?": both cases stand before the question. Empty where only one does. */
export function casesBefore(scope: Scope, c: Candidate): Given[] {
  const mask = slateOf(scope.desk.line, scope.desk.sheet.ctx.at).mask.slice(scope.start, c.start);
  for (const m of mask.matchAll(TURN)) {
    const at = scope.start + m.index, first = c.kind.given(new Scope(scope.desk, scope.start, at, at));
    const sets = [...(c.kind.telling ?? []), ...(c.kind.full ? [c.kind.full] : [])];
    if (!wholeOf(sets, first)) continue;
    const next = new Scope(scope.desk, at, c.start, c.start), other = c.kind.given(next, first), names = Object.keys(other).filter(f => !f.endsWith('Unit'));
    if (!names.length || !names.every(f => first[f] !== undefined)) continue;
    scope.take(...new Scope(scope.desk, scope.start, at).taken.map(([start, end]) => ({ start, end })));
    return [first, follow(c.kind, first, other)];
  }
  return [];
}
