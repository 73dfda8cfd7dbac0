import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { isClass } from '../../words/verbs.ts';
import { trim } from '../lib/fields.ts';
import { dayIn } from '../lib/day.ts';
import { productOf } from '../work/product.ts';
import type { Telling } from '../telling.ts';
import { about } from './about.ts';

/** Work done: its verb is the clause's own, or the one of the trade's that it leads to ("had the … cleaned"). */
export function worked(t: Telling): Entry[] {
  const c = t.clause, verb = [c.verb, ...c.items].find(i => i?.t === 'verb' && isClass(i.base ?? '', 'work'));
  if (!verb) return [];
  return about(t, true).map(p => trim({ kind: 'work', part: p.name, action: verb.base, product: c.verb ? productOf(t, c) : undefined }) as Entry);
}

/** Work still to do: the first verb that says a deed, after what only says that it must be. */
export function toDo(t: Telling): Entry[] {
  const c = t.clause, verb = c.items.find(i => i.t === 'verb' && !/^(need|want|have|get|go|be|try|start|must|remember|let|make|think|reckon|say)$/.test(i.base ?? '')) ?? c.verb;
  if (!verb?.base) return [];
  return about(t, true).map(p => ({ kind: 'job', do: verb.base!, part: p.name }) as Entry);
}

/** A part to be left alone until then. */
export function left(t: Telling): Entry[] {
  const until = dayIn(t, t.clause), span = dims(t.clause.items, 'span')[0]?.value;
  if (!until && !(span && /^(hours|days|weeks)$/.test(span.unit))) return [];
  return about(t, true).map(p => ({ kind: 'wait', part: p.name, ...(until ? { until } : { after: span!.amount, unit: span!.unit }) }) as Entry);
}

/** A part to be looked at again. */
export function again(t: Telling): Entry[] {
  const c = t.clause, due = dayIn(t, c), span = dims(c.items, 'span')[0]?.value, verb = c.items.find(i => i.t === 'verb' && (isClass(i.base ?? '', 'check') || isClass(i.base ?? '', 'tight')));
  if (!due && !span) return [];
  return about(t, true).map(p => ({ kind: 'recheck', part: p.name, do: verb?.base ?? 'check', ...(span ? { after: span.amount, unit: span.unit } : { due }) }) as Entry);
}

