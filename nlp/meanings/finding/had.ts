import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { CONDITION } from '../../words/conditions.ts';
import { FAULT } from '../../words/faults.ts';
import { nounClasses } from '../../words/nouns.ts';
import { verdictIn } from '../lib/verdict.ts';
import { clauseText, lowText, type Telling } from '../telling.ts';
import { condition, make, partsOf } from './part.ts';

/** "has a crack in it", "'s got no spark": a fault had. */
export function possessed(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj);
  if (!parts.length || c.who && /^(i|we|they|he|she|person)$/.test(c.who)) return undefined;
  const after = c.items.slice(c.vi + 1);
  const first = after.find(i => i.t !== 'adv' && i.t !== 'neg');
  if (first?.t === 'to') return undefined; // "hasn't to start it"
  if (!first || c.verb && c.pred === 'verb') return undefined;
  if (dims(c.items, 'measure').length || dims(c.items, 'money').length) return undefined;
  const np = c.items.slice(c.vi + 1).find(i => i.np);
  const adj = after.find(i => i.t === 'adj' && CONDITION.has(i.low));
  if (!np && !adj) return undefined;
  if (np && np.np!.count !== undefined && !adj && !FAULT.test(np.np!.said.split(' ').at(-1)!)) return undefined;
  if (np && !FAULT.test(np.np!.said.split(' ').at(-1)!) && !np.np!.states.length && !adj && !/\b(no|worst|bad|nice|too|plenty|more|good)\b/.test(lowText(t))) { if (nounClasses(np.np!.said).size) return undefined; }
  const text = condition(t, c, first.from) + throughIt(t);
  return parts.map(p => make(p.name, text, verdictIn(text)));
}

/** "a hole I could put my thumb in": the clause that says how big goes with it. */
function throughIt(t: Telling): string {
  const n = t.clauses[t.at + 1];
  if (!n || n.join || n.sub || !/^(i|you|we)$/.test(n.who ?? '') || n.reality !== 'maybe' || t.clause.items.at(-1)?.t === 'mark') return '';
  (n as Clause & { spoken?: boolean }).spoken = true;
  return ` ${clauseText(t, n)}`;
}
