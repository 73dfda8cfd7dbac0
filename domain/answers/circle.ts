import type { Ref } from '../model/stored.ts';
import { sameAct } from '../log/phrase.ts';

/** One thing before another, with the words it was said in. */
export interface Before { first: Ref; then: Ref; firstSaid: string; thenSaid: string }

/**
 * The circle that one more rule would close: from its first, over its then, along the rules there are, back to its first (in words,
 * first and last the same). Undefined: it closes none.
 */
export function circleOf(rule: Before, rules: readonly Before[]): string[] | undefined {
  if (sameAct(rule.first, rule.then)) return [rule.firstSaid, rule.thenSaid];
  const way = wayTo(rule.first, rule.then, rules, new Set());
  return way && [rule.firstSaid, rule.thenSaid, ...way];
}

/** The words of the acts that lead from one to another, without the start; undefined when no rules lead there. */
function wayTo(goal: Ref, from: Ref, rules: readonly Before[], seen: Set<Before>): string[] | undefined {
  for (const rule of rules) {
    if (seen.has(rule) || !sameAct(rule.first, from)) continue;
    seen.add(rule);
    if (sameAct(rule.then, goal)) return [rule.thenSaid];
    const onward = wayTo(goal, rule.then, rules, seen);
    if (onward) return [rule.thenSaid, ...onward];
  }
  return undefined;
}
