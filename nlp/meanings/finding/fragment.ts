import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { said } from '../../clauses/as-said.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { CONDITION } from '../../words/conditions.ts';
import { FAULT } from '../../words/faults.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Meaning, type Telling } from '../telling.ts';
import { condition, make } from './part.ts';

/** Fragments with a count, shown before figures are: "22 sections, 4 chipped" counts nothing on the machine. */
export const tally: Meaning = t => (t.clause.items.some(i => i.f?.dim === 'number') && !t.clause.asks && !t.clause.sub ? fragment(t) : undefined);

/** "needles: 3 bent, 1 ok", "22 sections, 4 chipped", "flat now": a state without a name is said of what was just named. */
export function fragment(t: Telling): Entry[] | undefined {
  const c = t.clause;
  const clean = c.subj.length === 1 && c.subj[0]!.np?.quant === 'no' && FAULT.test(c.subj[0]!.name) && t.told.at(-1)?.clause === t.clauses[t.at - 1]; // "soldered the float, no leaks"
  if (c.pred !== 'none' || c.subj.some(s => !s.carried) && !c.counted && !clean || c.who) return undefined;
  const items = c.items.filter(i => i.t !== 'cc' && i.t !== 'mark' && i.t !== 'adv');
  const k = items.findIndex(i => i.t === 'adj' && CONDITION.has(i.low) || i.t === 'verb' && isClass(i.base ?? '', 'fail'));
  const topic = t.memory.topic();
  const none = items.findIndex(i => i.np?.quant === 'no' && FAULT.test(i.np.said.split(' ').at(-1)!));
  const nor = items[0]?.t === 'neg' && items[1]?.np && FAULT.test(items[1].np.said.split(' ').at(-1)!) && items.length === 2; // "tested it at 1500 psi and not a drip"
  if (k < 0 && nor && topic && !topic.machine && t.told.at(-1)?.clause === t.clauses[t.at - 1]) return [make(topic.name, said(t.sheet, items[0]!.from, items[1]!.np!.to))];
  if (k < 0 && none === 0 && topic && !topic.machine) return [make(topic.name, said(t.sheet, items[0]!.from, items[0]!.to))];
  if (k < 0 || !topic || topic.machine) return undefined;
  const lead = items.slice(0, k);
  const counts = lead.some(i => i.f?.dim === 'number') || c.counted !== undefined;
  if (!counts && lead.length > 0 || lead.some(i => i.np && i.np.name !== topic.name && !i.np.stands)) return undefined;
  if (!counts && t.told.at(-1)?.clause !== t.clauses[t.at - 1]) return undefined;
  const from = lead[0]?.from ?? items[k]!.from;
  const text = condition(t, c, from);
  return text ? [make(topic.name, text, verdictIn(text.replace(/^(\w+ of (the|them|\w+) )?\w+ (?=\w)/, m => (counts ? '' : m))))] : undefined;
}

/** "cracked and let go of the shell": a second thing said of the same part in one breath goes on with the condition. */
export function goesOn(t: Telling): Entry[] | undefined {
  const c = t.clause, last = t.told.at(-1);
  if (!c.carriedSubj || !(c.join === 'and' || c.join === undefined || c.join === ',') || last?.entry.kind !== 'finding' || last.clause !== t.clauses[t.at - 1] || dims(c.items, 'measure').length) return undefined;
  const coined = c.pred === 'verb' && /ed$/.test(c.verb!.low) && verbForms(c.verb!.low).length === 0 && !c.obj.length; // "birdcaged in three places"
  if (c.pred === 'verb' && !coined && !isClass(c.verb!.base!, 'fail') && !isClass(c.verb!.base!, 'state') && c.verb!.base !== 'let') return undefined;
  if (c.pred === 'verb' && (isClass(c.verb!.base!, 'work') && !isClass(c.verb!.base!, 'fail') && !isClass(c.verb!.base!, 'state') || c.obj.some(o => !o.carried && partLike(t.sheet, o.name)) && c.verb!.base !== 'let') || c.items.length < 1) return undefined;
  if (!c.subj.some(s => s.name === (last.entry as { part: string }).part) || c.who && /^(i|we)$/.test(c.who)) return undefined;
  last.entry.condition = `${last.entry.condition}${c.join === ',' ? ',' : c.join ? ' and' : ''} ${condition(t, c, c.items.find(i => i.t !== 'cc' && i.t !== 'mark')!.from)}`;
  last.entry.verdict ??= verdictIn(lowText(t));
  return [];
}
