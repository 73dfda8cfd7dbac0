import type { Clause } from '../../clauses/clause.ts';
import { bare } from '../../clauses/as-said.ts';
import { isSource } from '../../clauses/name-kinds.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { PERSONS } from '../../words/persons.ts';
import { TRADE_ENDING } from '../../words/sources.ts';
import type { Telling } from '../telling.ts';

/** A seller or shop that is the subject: "steel supplier wants 86", "the yard across the county said 30". With its "in town", "at the…". */
export const sourceSubject = (t: Telling, clauses: readonly Clause[], strict = false): string | undefined => subjectSpan(t, clauses, strict)?.source;

/** The same with the tokens it takes. */
export function subjectSpan(t: Telling, clauses: readonly Clause[], strict = false): { source: string; from: number; to: number } | undefined {
  for (const c of clauses) {
    const k = c.items.findIndex(i => i.t === 'np');
    const np = c.items[k]?.np;
    if (!np || c.vi >= 0 && k > c.vi && !strict && !(c.items[c.vi]?.t === 'be' && /^there/.test(c.items[c.vi - 1]?.low ?? ''))) continue; // "there's a fella wants fifteen"
    const source = isSource(np) || PERSONS.test(np.said) && !strict || !strict && c.verb && /^(say|want|quote|ask|charge|reckon|have|offer|do|sell)$/.test(c.verb.base ?? '') && TRADE_ENDING.test(np.said);
    if (!source) continue;
    let end = k + 1;
    for (;;) {
      const p = c.items[end], n = c.items[end + 1];
      if (p && (p.t === 'prep' || p.t === 'prt') && /^(at|in|down|up|across|on|over|near|of|by|from|out|with|along|round|behind)$/.test(p.low) && n?.np) { end += 2; continue; }
      if (p?.low === ',' && n?.np?.stands && c.items[end + 2] && /^(prep|prt)$/.test(c.items[end + 2]!.t)) { end += 2; continue; }
      break;
    }
    const words = textOf(t.sheet, c.items[k]!.from, c.items[end - 1]!.to);
    return { source: bare(words).replace(/, the one/i, '').replace(/,.*$/, ''), from: c.items[k]!.from, to: c.items[end - 1]!.to };
  }
  return undefined;
}
