import type { Ask } from '../../../domain/model/ask.ts';
import { type Desk, type Hit } from './desk.ts';
import { thingsAt } from './thing-at.ts';

/** What turns a question to another thing: "and the springs?", "what about the wee cap", "also the pins, I had them a minute ago". */
const TURN = /^ ?(?:(?:and|or|also|but|ok|okay) )*(?:(?:what|how) ?(?:a?bout)(?: for| on| in)? |same (?:again |question )?(?:for|with) |ditto (?:for )?|(?<=(?:and|or|also) )(?:for |on |in )?)(?=(?:the|my|that|those|these|[a-z]+)\b)/;

/**
 * A sentence that only names another thing after a question about one asks the same of it: "Where are the pins? And the springs?".
 * Sums have their own follow-ups.
 */
export function likewise(desk: Desk, hits: readonly Hit[]): Hit[] {
  const out: Hit[] = [];
  desk.sentences.forEach((s, i) => {
    const before = desk.sentences[i - 1];
    if (!before || hits.some(h => h.start < s.end && s.start < h.end)) return;
    const asked = [...hits, ...out].filter(h => h.start < before.end && before.start < h.end).sort((a, b) => a.start - b.start).at(-1)?.asks.at(-1);
    if (!asked || !('part' in asked && asked.part || asked.kind === 'cheapest')) return;
    const m = TURN.exec(desk.text.slice(s.start, s.end));
    const things = m && thingsAt(desk, s.start + m[0].length, s.end);
    if (!things || !/^ ?(?:$|[?.,!])/.test(desk.text.slice(things.end, s.end)) || !s.asked && /^ ?and\b/.test(m[0])) return;
    const asks = things.names.map((name): Ask => (asked.kind === 'cheapest' ? { ...asked, item: name } : { ...asked, part: name } as Ask));
    out.push({ start: s.start, end: s.end, asks, rule: 'likewise', weight: 3 });
  });
  return out;
}
