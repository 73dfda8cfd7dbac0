import type { Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { isClosed } from '../text/nominal.ts';

/**
 * Whether a part plainly stands at tokens [at, at + n): 'sure' where a verb of the bench has it for its object, a condition is said of it, or it is counted
 * among things bought; 'may' where a noun phrase stands by itself at the head of a sentence or after an article.
 */
export function partSlot(tokens: readonly Token[], at: number, n: number): 'sure' | 'may' | undefined {
  let b = at - 1;
  while (b >= 0 && /^(the|a|an|my|both|all|new|old|that|this|those|these|some|left|right|front|rear|top|bottom|of|set|pair|two|three|four|five|six|\d+)$/.test(tokens[b]!.low)) b--;
  const article = b < at - 1, before = tokens[b]?.low ?? '';
  let a = pastPlace(tokens, at + n);
  while (a < tokens.length && /^(is|are|was|were|'s|'re|all|both|badly|pretty|well|quite|very|a|bit|got|has|have|been|just|now)$/.test(tokens[a]!.low)) a++;
  const after = tokens[a]?.low ?? '';
  const bench = verbForms(before).some(f => !GENERAL.test(f.base) && (isClass(f.base, 'work') || isClass(f.base, 'tight') || isClass(f.base, 'on') || isClass(f.base, 'off')));
  const bought = article && tokens.slice(Math.max(0, at - 3), at).some(t => /^(pair|set)$/.test(t.low)) && tokens.slice(0, at).some(t => verbForms(t.low).some(f => /^(get|buy|need|order|want)$/.test(f.base)));
  const stated = CONDITION.has(after) || verbForms(after).some(f => f.form !== 'base' && isClass(f.base, 'fail'));
  if (bench && article || stated && !/^(cold|hot|wet|dry|full|good|fine|great|tired|free|open|late|short|long|low|high)$/.test(after) || bought) return 'sure';
  const opens = b < 0 || /^[,.;:!?—–-]+$/.test(before) || /^(and|but|so|then|now|okay|ok|right)$/.test(before);
  const closes = after === '' || /^[,.;:!?—–-]+$/.test(after) || a > at + n || isClosed(after) || verbForms(after).length > 0;
  return (article || opens) && closes ? 'may' : undefined;
}
/** Past where the thing is: "pall [on the winch] was burred". */
function pastPlace(tokens: readonly Token[], at: number): number {
  if (!/^(on|in|of|at|from)$/.test(tokens[at]?.low ?? '') || !/^(the|my|that|this)$/.test(tokens[at + 1]?.low ?? '')) return at;
  for (let a = at + 3; a <= at + 5; a++) if (/^(is|are|was|were|'s|has|have)$/.test(tokens[a]?.low ?? '')) return a;
  return at;
}

/** Verbs of every trade: what they are done to need be no part. */
export const GENERAL = /^(get|put|take|have|do|make|leave|give|run|set|work|go|let|turn|cut|draw|read|talk|bring|pull|drive|drop|beat|swap|exchange|change|stand|feed|push|home|lift|tie|clear|dress|lay|sit|shape|time|touch|top|book)$/;
