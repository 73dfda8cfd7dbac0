import type { Entry } from '../../../domain/model/entry.ts';
import { isClass } from '../../words/verbs.ts';
import { condition } from '../finding/part.ts';
import { trim, withPhrase } from '../lib/fields.ts';
import type { FitState } from '../lib/fit-state.ts';
import { verdictIn } from '../lib/verdict.ts';
import type { Telling } from '../telling.ts';
import { about } from './about.ts';
import { bearer, mayBear } from './bearer.ts';

/** How a part now sits, where the odds say which way. */
export const sits = (t: Telling, state: FitState): Entry[] => about(t, true).map(p => trim({ kind: 'fit', part: p.name, state, with: state === 'off' ? undefined : withPhrase(t.sheet, t.clause.items.slice(Math.max(t.clause.vi, 0))) }) as Entry);

/** How a part was found: all that the clause says of it after its name. */
export function found(t: Telling): Entry[] {
  const c = t.clause, opens = c.items.find(i => !/^(cc|mark|intj|adv)$/.test(i.t));
  const did = c.pred === 'verb' && c.obj.length > 0 && (/^(i|we|he|they|person|you)$/.test(c.who ?? '') || opens === c.verb && opens?.form === 'past') || c.passive && done(c.verb?.base ?? ''); // somebody did it to the part
  const borne = did ? undefined : bearer(t);
  const start = borne && c.items.slice(borne.from).find(i => !/^(be|cc|mark)$/.test(i.t));
  if (!borne || !start) return [];
  const text = condition(t, c, start.from);
  return text.length > 2 ? borne.parts.filter(p => p.carried || mayBear(t, p)).map(p => trim({ kind: 'finding', part: p.name, condition: text, verdict: verdictIn(text) }) as Entry) : [];
}

const done = (deed: string): boolean => (['work', 'check', 'on', 'off', 'tight'] as const).some(k => isClass(deed, k)) && !isClass(deed, 'fail') && !isClass(deed, 'state');
