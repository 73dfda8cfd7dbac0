import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { isMachine, partLike } from '../../clauses/name-kinds.ts';
import { thingAt } from '../../clauses/things.ts';
import { CONDITION } from '../../words/conditions.ts';
import { namesPart } from '../lib/named.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Meaning, type Telling } from '../telling.ts';
import { make, partsOf } from './part.ts';

/** "cracked weld on the frame", "there's a broken spring in the seat", "she's got a bent pushrod": a part named with its state, and nothing else said of it. */
export const stateful: Meaning = t => {
  const c = t.clause, items = c.items.filter(i => i.t !== 'mark' || i.low === ',');
  if (c.asks || c.sub || c.neg || c.reality !== 'deed' || dims(items, 'measure').length || dims(items, 'money').length || dims(items, 'when').length) return undefined;
  const there = /^(and |but |so )*there('s| is| are| was| were|'re)\b/.test(lowText(t));
  const had = c.pred === 'have' && (c.subj.some(s => s.machine) || /^(she|it)$/.test(c.who ?? '') && c.subj.every(s => s.machine || s.carried) || /^(i|we)$/.test(c.who ?? '') && /\b(got|have) (a|an|one|two|three) (\w+ )?(leaking|weeping|blowing|cracked|broken|bent|seized|sheared|snapped|stripped|worn|burst|split|loose|sticking|dripping|dead|blocked)\b/.test(lowText(t))) && !c.verb?.form?.startsWith('ing');
  if (!there && !had && c.pred !== 'none' || c.who && !had) return undefined;
  const k = items.findIndex((i, n) => i.np !== undefined && !i.np.stands && (there ? n > 0 : had ? i.from > (c.items[c.vi]?.from ?? 0) : true));
  const lead = items.slice(0, Math.max(k, 0)), np = items[k]?.np;
  if (!np || !lead.every(i => /^(cc|adv|intj|be|have|det|num|prep|pron|adj)$/.test(i.t) || i.np || i.base === 'get') || lead.some((i, n) => i.t === 'prep' && (i.low !== 'of' || lead[n - 1]?.t === 'adj'))) return undefined;
  const before = lead.findLast(i => i.t === 'adj' && CONDITION.has(i.low))?.low, after = items[k + 1]?.t === 'adj' && CONDITION.has(items[k + 1]!.low) && had ? items[k + 1]!.low : undefined;
  const states = [...np.states, ...(before ? [before] : []), ...(after ? [after] : [])];
  if (!states.length || states.every(s => /^(good|clean|dry|new|light|heavy|full|square|round|flat|hard|soft|hot|cold|green|black|white|open|live|original|smooth|thin|thick|straight|high|low|cool|warm|sharp)$/.test(s)) || np.quant === 'no') return undefined;
  const whole = thingAt(t.sheet, items, k, t.memory)!;
  const rest = items.slice(whole.next + (after ? 1 : 0)).filter(i => i.low !== ',');
  if (!partLike(t.sheet, whole.thing.name) || !namesPart(t.sheet, whole.thing.name) || isMachine(t.sheet, whole.thing.name) || rest.some((i, n) => i.t === 'verb' || i.t === 'be' || i.t === 'have' || i.f || n === 0 && i.t === 'prt' && !rest[1]?.np || /^(for|to)$/.test(i.low))) return undefined;
  const many = /\b(a couple|couple|a few|few|several|some|one|two|three|four|five|six|seven|eight|nine|ten|\d+) (of )?(?=\w)/.exec(lowText(t).slice(0, 40));
  const count = np.count !== undefined || many ? `${many?.[1]?.replace(/^a /, '') ?? np.count} ` : '';
  return [make(whole.thing.name, count + states.join(' '), verdictIn(states.join(' ')))];
};

/** "the mower has two guards broken": a machine's pieces, so many of them in such a state. */
export function piecesHad(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.pred !== 'have' || c.neg || c.asks || c.sub || c.reality !== 'deed' || !c.subj.some(s => s.machine) || !c.obj.length) return undefined;
  const state = c.items.find(i => i.from >= c.obj.at(-1)!.to && (i.t === 'adj' && CONDITION.has(i.low)));
  const parts = partsOf(t, c.obj.filter(o => !o.carried));
  if (!state || !parts.length || !c.items.some(i => i.np?.count !== undefined)) return undefined;
  return parts.map(p => make(p.name, `${p.count ?? ''} ${state.low}`.trim(), verdictIn(state.low)));
}
