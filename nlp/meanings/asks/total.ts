import type { Ask } from '../../../domain/model/ask.ts';
import { daysOf, foundIn } from './desk.ts';
import { spokenOf } from './spoken-of.ts';
import { thingAt } from './thing-at.ts';
import type { AskRule, Seen } from './rule.ts';

/** "what does that bring me to", "so where does that leave me": of hours after hours, of money after money. */
export const TOTAL: readonly AskRule[] = [
  { name: 'what does that bring me to', open: /\b(?:what|where|how much|how many|whats|wheres|hows)(?: (?:does|is|do|am|are|will|would|s))? (?:that|it|this|i|we|all that|the lot|the total)(?: (?:all|now|then))? ?(?:(?:bring|make|put|take|get|leave|come|add|amount|run|stand|total|up|at|standing|sitting|sit)(?: (?:me|us|it|(?:the|my|our) (?:total|tally|bill)))*(?: (?:to|up to|at|in|in for|up))*|to now|so far|now|altogether|in all|all told)\b/, weight: 2, make: s => total(s) },
];

function total(s: Seen): Ask[] | undefined {
  const tail = s.desk.text.slice(s.end, s.stop), found = foundIn(s.desk, 0, s.start), last = found.filter(f => f.dim === 'money' || f.dim === 'span' && /^(?:hours|minutes)$/.test(f.value.unit)).at(-1);
  if (!/^ ?(?:$|[?.,!]|so far|now|altogether|all told|all in|in all|in total|this|for|on|in|since|to date|total)/.test(tail)) return undefined;
  const on = /^(?:[a-z ]*?)\b(?:on|in|for) (?=(?:the|my|this)\b)/.exec(tail), part = on ? thingAt(s.desk, s.end + on[0].length, s.stop)?.name : undefined;
  if (last?.dim === 'span' || /\bhours?\b|\btime\b/.test(tail)) { const of = part ?? spokenOf(s.desk, s.start); return [{ kind: 'timeSpent', ...(of ? { part: of } : {}), ...daysOf(s.desk, s.start, s.stop, 'past') }]; }
  return last || /\b(?:money|dollars|spent)\b/.test(tail) ? [{ kind: 'spent', ...(part ? { part } : {}) }] : undefined;
}
