import { foundIn, sentenceAt } from './desk.ts';
import type { Seen } from './rule.ts';

const ASKS = /\b(?:what|whats|how|hows|which|where|show|tell|give|remind|work out|know|list|total up|tot up|add up)\b/;

/** "hours on the baler to date, eleven and a half": a total that the sentence itself gives is told, not asked. */
export function stated(s: Seen): boolean {
  const { desk } = s, at = sentenceAt(desk, s.start);
  if (at.asked || ASKS.test(desk.text.slice(at.start, s.end))) return false;
  const after = desk.text.slice(s.end, s.stop).split(/\b(?:what|how|where|when)\b/)[0]!;
  return foundIn(desk, s.end, s.end + after.length).some(f => f.dim === 'money' || f.dim === 'span' && /^(?:hours|minutes)$/.test(f.value.unit) || f.dim === 'number' && (/:|\b(?:is|are|was|comes? to|to date|all told|so far|altogether)\b/.test(after)));
}

/** Whether a question goes before in the same sentence, which "and the hours" adds to. */
export function beside(s: Seen): boolean {
  const at = sentenceAt(s.desk, s.start), text = s.desk.text.slice(at.start, s.start);
  return at.asked ? text.length > 4 : /^(?:(?:so|hey|right|and|ok) )*(?:what|how|show|tell|give|total|all told)/.test(text) || /\b(?:what|how much|how many|show me|tell me)\b/.test(text);
}
