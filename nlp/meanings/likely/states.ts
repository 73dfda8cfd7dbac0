import type { Entry } from '../../../domain/model/entry.ts';
import { isClass } from '../../words/verbs.ts';
import { condition } from '../finding/part.ts';
import { trim, withPhrase } from '../lib/fields.ts';
import type { FitState } from '../lib/fit-state.ts';
import { verdictIn } from '../lib/verdict.ts';
import type { Telling } from '../telling.ts';
import { about } from './about.ts';

/** How a part now sits, where the odds say which way. */
export const sits = (t: Telling, state: FitState): Entry[] => about(t, true).map(p => trim({ kind: 'fit', part: p.name, state, with: state === 'off' ? undefined : withPhrase(t.sheet, t.clause.items.slice(Math.max(t.clause.vi, 0))) }) as Entry);

/** How a part was found: all that the clause says of it after its name. */
export function found(t: Telling): Entry[] {
  const c = t.clause, parts = about(t, false), deed = c.verb?.base ?? '';
  if (c.pred === 'verb' && (c.passive || c.obj.length) && !isClass(deed, 'fail') && !isClass(deed, 'state')) return []; // something was done to it
  const named = c.items.findLastIndex(i => parts.some(p => !p.carried && i.from >= p.from && i.to <= p.to));
  const start = c.items.slice(named + 1).find(i => !/^(be|cc|mark)$/.test(i.t) && !(i.t === 'pron' && parts.some(p => p.carried)));
  if (!start || !parts.length) return [];
  const text = condition(t, c, start.from);
  return text.length > 2 ? parts.map(p => trim({ kind: 'finding', part: p.name, condition: text, verdict: verdictIn(text) }) as Entry) : [];
}
