import type { Entry } from '../../../domain/model/entry.ts';
import { BODGER } from '../../clauses/reality.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { isClass } from '../../words/verbs.ts';
import { namesPart } from '../lib/named.ts';
import { lowText, type Telling } from '../telling.ts';
import { condition, make, partsOf } from './part.ts';

/** "somebody's welded the spider to the shaft", "some clown drilled the boss": what one before did to a part is how it was found, and no work of the shop's. */
export function bodged(t: Telling): Entry[] | undefined {
  const c = t.clause, verb = c.verb, by = /\bby (.*)$/.exec(lowText(t))?.[1];
  if (c.passive && by && !/^(some(body|one)|whoever)\b/.test(by) && BODGER.test(by) && !c.neg && !c.asks && !c.sub && partsOf(t, c.subj).length) return partsOf(t, c.subj).map(p => make(p.name, condition(t, c, verb!.from))); // "peened over by some animal"
  if (c.neg || c.asks || c.passive || c.pred !== 'verb' || !verb || !/^(past|part)$/.test(verb.form ?? '') || !['work', 'on', 'off', 'fail', 'tight'].some(k => isClass(verb.base!, k as 'work')) || !BODGER.test(lowText(t).slice(0, lowText(t).indexOf(verb.low)))) return undefined;
  if (/\b(said|says|told|reckons?|claims?|if|might|may|must|could)\b/.test(lowText(t)) || /^(take|get|have|make|give|put|leave|sell|buy|come|call|want|steal|pinch|bring)$/.test(verb.base!) || c.sub && /^(if|unless|whether|that|who|which|before|when)$/.test(c.sub)) return undefined;
  const parts = c.obj.filter(o => !o.carried && !o.machine && partLike(t.sheet, o.name) && namesPart(t.sheet, o.name));
  if (!parts.length) return undefined;
  const rest = parts.at(-1)!.to < c.to ? condition(t, c, parts.at(-1)!.to) : '';
  return parts.map(p => make(p.name, `${verb.low} ${rest}`.trim()));
}
