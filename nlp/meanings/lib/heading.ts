import type { Clause, Thing } from '../../clauses/clause.ts';
import { lowText, next, previous, type Telling } from '../telling.ts';

/** A list under a heading ("Fitted today: points, condenser and rotor arm"): the heading's words and the things named under it; undefined where there is none. */
export function underHeading(t: Telling): { says: string; things: Thing[] } | undefined {
  const p = previous(t), says = p && isList(t.clause) ? words(t, p) : undefined;
  return says ? { says, things: t.clause.subj } : undefined;
}

/** What a heading says, for the clause that is one and has its list after it. */
export function headingOf(t: Telling): string | undefined {
  const n = next(t);
  return n && isList(n) ? words(t, t.clause) : undefined;
}

const isList = (c: Clause): boolean => c.join === ':' && !c.verb && c.pred === 'none' && c.subj.length > 0 && !c.subj.some(s => s.carried) && c.rest.every(i => i.t === 'mark' || i.t === 'adv');

function words(t: Telling, c: Clause): string | undefined {
  const says = lowText(t, c).replace(/ ?:$/, '').replace(/\b(today|tonight|this (morning|afternoon|evening|week)|yesterday|so far|now|on \w+day)\b/g, '').replace(/\s+/g, ' ').trim();
  return says && says.split(' ').length <= 9 ? says : undefined;
}
