import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import { lowText, type Telling } from '../telling.ts';
import { changed } from './changed.ts';

/** What a figure or a day puts right; a place said anew is an entry of its own. */
const FIGURED = /^(value|qty|price|shipping|hours|after|spec|expected|until|due|when)$/;
const ANEW = /^(?:,|no|so|and|but| )*(?:(?:it|that|they|there)? ?(?:'s|is|was|were|'re|are|should be|should 've been|ought to be)|make (?:it|that)|call it|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve) is)\b/;

/** "scrub that, it was fifteen", "scratch that on the bearings, two is all it takes": struck and given anew in one breath, which is one field put right. */
export function restatedAnew(t: Telling): Entry[] | undefined {
  const c = t.clause, comma = c.items.findIndex(i => i.low === ',');
  const tail: Clause[] = comma > 0 && comma < c.items.length - 1 ? [{ ...c, from: c.items[comma]!.to, items: c.items.slice(comma + 1) }] : [];
  const after = t.clauses.slice(t.at + 1, t.at + 3).filter(n => !n.asks && !n.neg && (n as Placed).sentence - (c as Placed).sentence <= 1);
  for (const n of [...tail, ...after]) {
    const text = lowText(t, n);
    if (!ANEW.test(text) || n.verb && n.passive && (n as Placed).sentence !== (c as Placed).sentence) continue; // "Strike that. They are torqued to 55." tells it whole
    const got = changed(t, n, text);
    const field = (got?.[0] as { field?: string } | undefined)?.field;
    if (!got || !field || !FIGURED.test(field)) return undefined;
    for (const x of t.clauses) if (x.from >= c.from && x.from <= n.from) (x as Clause & { spoken?: boolean }).spoken = true;
    return got;
  }
  return undefined;
}
