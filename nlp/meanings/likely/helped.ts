import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import { purpose } from '../hands.ts';
import { trim } from '../lib/fields.ts';
import { lowText, type Telling } from '../telling.ts';

/** Help that will be there: its day is the clause's own, else one that a clause beside it in the sentence gives; what it is for is said with it or right after. */
export function helped(t: Telling): Entry[] {
  if (fellThrough(t)) return [];
  const own = t.clauses.filter(c => (c as Placed).sentence === (t.clause as Placed).sentence && !c.asks), k = own.indexOf(t.clause);
  const when = dayOf(t, t.clause) ?? dayOf(t, own[k - 1]) ?? dayOf(t, own[k + 1]);
  if (!when || t.told.some(x => x.entry.kind === 'hands' && x.entry.when === when)) return [];
  const said = own.slice(k, k + 3).filter((c, n) => n === 0 || !/^(i)$/.test(c.who ?? '')).map(c => purpose(t, c)).find(Boolean);
  const topic = t.memory.topic()?.name;
  return [trim({ kind: 'hands', when, for: said?.replace(/ (with|for) (me|us)$/, '').replace(/\b(it|them|her|'em|em)\b/, m => (topic ? `the ${topic}` : m)) }) as Entry];
}

/** The last day to come that a clause names. */
function dayOf(t: Telling, c: Clause | undefined): string | undefined {
  const today = t.sheet.ctx.at.slice(0, 10);
  return c && t.sheet.found.flatMap(f => (f.dim === 'when' && !f.value.vague && f.from >= c.from && f.to <= c.to && f.value.from && f.value.from >= today ? [f.value.from] : [])).at(-1);
}

/** "was coming Saturday": and won't. */
export const fellThrough = (t: Telling): boolean => /\b(was|were) (coming|going to come|to come)\b/.test(lowText(t));
