import type { Seen } from './rule.ts';
import { thingAt } from './thing-at.ts';

/** What may stand between "it" and the name that explains it. */
const LEAD = /^(?: (?:so far|to date|up to now|till now|now|yet|altogether|all told|in all|all in|in total|done|finished))*,? (?=(?:the|this|that|these|those)\b)/;

/** "what has it cost me so far the Heron", "when will it be done, this loom": "it" is named at the end of its clause. */
export function explained(s: Seen): string | undefined {
  const { desk } = s, m = /\b(?:it|they|them|she)\b|\bthat\b/.test(desk.text.slice(s.start, s.end)) ? LEAD.exec(desk.text.slice(s.end, s.stop)) : null;
  const t = m && thingAt(desk, s.end + m[0].length, s.stop);
  return t && /^(?: of (?:misery|mine|yours|a thing))?(?: ?(?:$|[?.,!])| (?:and|or|plus) (?:what|how|when|where|who|which|is|can|have|do|show)[a-z]*\b)/.test(desk.text.slice(t.end, s.stop)) ? t.name : undefined;
}
