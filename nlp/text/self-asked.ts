import { CONDITION } from '../words/conditions.ts';
import { DET } from '../words/grammar.ts';
import { nounClasses } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import type { Token } from '../types.ts';

/** How an answer to oneself begins: a state, or a word that leads to one. */
const ANSWERS = /^(it|it's|they|she|that|those|these|both|all|like|as|not|no|none|never|had|past|gone|full|in|for|fit|still|just|only|more|absolutely|completely|totally|perfectly|pretty|very|quite|every|nothing|a|an|bit|off|out|shot)$/;

/** "Blades? Blunt as a hammer." asks nobody: a part put up with a question mark and answered in the same breath is a heading, and its mark a colon. */
export function selfAsked(tokens: readonly Token[]): Token[] {
  let from = 0;
  return tokens.map((t, i) => {
    const start = from;
    if (/^[.!?;]$/.test(t.low)) from = i + 1;
    if (t.low !== '?' || i - start > 5 || i === start) return t;
    const words = tokens.slice(start, i), next = tokens[i + 1]?.low ?? '';
    const named = words.every(w => DET.has(w.low) || SIDES.has(w.low) || nounClasses(w.low).size > 0 || w.low === "'s") && nounClasses(words.at(-1)!.low).has('part');
    const end = tokens.findIndex((x, k) => k > i && /^[.!?;]$/.test(x.low));
    return named && (CONDITION.has(next) || ANSWERS.test(next) || /[a-z]{3}ed$/.test(next)) && (end < 0 || tokens[end]!.low !== '?') ? { ...t, low: ':' } : t;
  });
}
