import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { said } from '../../clauses/as-said.ts';
import { isMachine, partLike } from '../../clauses/name-kinds.ts';
import { CONDITION } from '../../words/conditions.ts';
import { FAULT } from '../../words/faults.ts';
import { isClass } from '../../words/verbs.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Telling } from '../telling.ts';
import { belongsThere } from './flaw-in.ts';
import { condition, make } from './part.ts';

/** "found the seal split", "found a crack in the block", "there's a crack in the head". */
export function found(t: Telling): Entry[] | undefined {
  const c = t.clause, base = c.verb?.base;
  if (base === 'call' && c.obj.some(o => o.carried) && c.rest[0] && CONDITION.has(c.rest[0].low)) return c.obj.map(o => make(o.name, condition(t, c, c.rest[0]!.from), verdictIn(c.rest[0]!.low)));
  if (!/^(find|notice|see|spot|discover|have|get)$/.test(base ?? '') || c.neg || c.passive) return undefined;
  const obj = c.obj[0];
  if (!obj) return undefined;
  const head = obj.np?.said.split(' ').at(-1) ?? '';
  if (FAULT.test(head) && base !== 'have' && base !== 'get') {
    const inPart = c.items.findIndex((i, k) => i.from >= obj.from && /^(in|on|at|inside|under|through|around|along|across)$/.test(i.low) && c.items[k + 1]?.np);
    const owner = inPart >= 0 ? c.items[inPart + 1]!.np! : undefined;
    const part = owner ? owner.stands ? t.memory.topic()?.name : owner.name : t.memory.topic()?.name;
    return part ? [make(part, said(t.sheet, obj.np!.from, owner ? c.items[inPart]!.from : c.to), undefined)] : undefined;
  }
  if (base === 'find' || base === 'see' || base === 'notice') {
    const first = c.rest.find(i => i.t !== 'adv');
    if (first && (first.t === 'adj' || first.t === 'verb' && first.form !== 'base' || first.t === 'prep' && /^(full|like|in)$/.test(first.low))) {
      const text = condition(t, c, first.from);
      return [make(obj.name, text, verdictIn(text))];
    }
    const gone = first?.low === 'with' ? c.rest.findIndex((i, k) => k > 0 && i.np !== undefined && (c.rest[k + 1]?.t === 'adj' || c.rest[k + 1]?.t === 'verb' && c.rest[k + 1]!.form !== 'base') || i.np !== undefined && FAULT.test(i.np.said.split(' ').at(-1)!)) : -1;
    if (gone > 0) return [make(obj.name, condition(t, c, c.rest[gone]!.from), undefined)]; // "found the pinion with two teeth missing"
    if (obj.np?.states.length) return [make(obj.name, obj.np.states.join(' '), verdictIn(obj.np.states.join(' ')))];
  }
  return undefined;
}

/** "there's a crack in the head", "crack in the manifold", "no spark on number two". */
export function fault(t: Telling): Entry[] | undefined {
  const c = t.clause;
  const there = /^(and |but |so )?there('s| is| are| was| were|'re)\b/.test(lowText(t));
  const broken = there && !c.neg ? c.items.findIndex((i, n) => i.np && !i.np.quant && partLike(t.sheet, i.np.name) && (c.items[n + 1]?.t === 'verb' && isClass(c.items[n + 1]!.base!, 'fail') || c.items[n + 1]?.t === 'adj' && CONDITION.has(c.items[n + 1]!.low))) : -1;
  const mark = broken >= 0 && FAULT.test(c.items[broken]!.np!.name.split(' ').at(-1)!) ? c.items.findIndex((i, n) => n > broken && /^(in|on|into|through|along|across|round|around)$/.test(i.low) && c.items[n + 1]?.np) : -1;
  const bearer = mark >= 0 ? c.items[mark + 1]!.np! : undefined;
  if (bearer && !bearer.stands && partLike(t.sheet, bearer.name)) return [make(bearer.name, condition(t, { ...c, to: c.items[mark]!.from }, c.items[broken]!.from))]; // "there's a groove worn in the shaft"
  if (broken >= 0) return [make(c.items[broken]!.np!.name, (c.items[broken]!.np!.count ?? 1) > 1 ? `${c.items[broken]!.low.split(' ')[0]} ${condition(t, c, c.items[broken + 1]!.from)}` : condition(t, c, c.items[broken + 1]!.from), undefined)]; // "there's a bolt broke off in the housing"
  const lack = c.items.findIndex(i => i.np?.quant === 'no' && /^(compression|pressure|power|vacuum|current|voltage|charge|drive|continuity|fuel|juice|feed|return|brakes?|clutch|lights?|spark|oil|water|earth|contact|suction|lift)$/.test(i.np.said));
  const lacking = lack >= 0 && lack === c.items.findIndex(i => !/^(cc|mark|adv)$/.test(i.t)) && c.pred === 'none' && /^(on|in|at|to|from)$/.test(c.items[lack + 1]?.low ?? '') ? c.items[lack + 2]?.np : undefined;
  if (lacking && !lacking.stands && !isMachine(t.sheet, lacking.name) && partLike(t.sheet, lacking.name)) return [make(lacking.name, c.items[lack]!.low)]; // "no compression on number two"
  if (belongsThere(t)) return undefined;
  const k = c.items.findIndex(i => i.np && FAULT.test(i.np.said.split(' ').at(-1)!));
  if (k < 0 || !(there || c.pred === 'none' && c.items.slice(0, k).every(i => i.t !== 'np')) || dims(c.items, 'measure').length) return undefined;
  const prep = c.items.findIndex((i, n) => n > k && (i.t === 'prep' || i.t === 'prt') && c.items[n + 1]?.np && !c.items.slice(k + 1, n).some(x => x.f) && !(i.low === 'from' && !there && /^(split|crack|cracks|tear|torn|wear|score|scoring)$/i.test(c.items[k]!.np!.said.split(' ').at(-1)!)));
  const of = prep >= 0 ? c.items[prep + 1]!.np! : undefined;
  if (!of && !there) return undefined;
  const part = of ? of.stands ? t.memory.topic()?.name : of.name : t.memory.topic()?.name;
  if (!part || isMachine(t.sheet, part)) return undefined;
  const beyond = prep >= 0 && c.items[prep + 2]?.low === 'of' ? c.items[prep + 3]?.np : undefined;
  if (of && beyond && !beyond.stands && /\b(side|end|face|edge|top|bottom|inside|outside|middle|centre|center|front|back|underside|lip|rim|length)$/.test(of.said)) return [make(beyond.name, said(t.sheet, c.items[k]!.from, c.items[prep + 1]!.to), verdictIn(lowText(t)))]; // "down the exhaust side of the piston"
  const text = said(t.sheet, c.items[k]!.from, prep >= 0 ? c.items[prep]!.from : c.to);
  return [make(part, text, verdictIn(lowText(t)))];
}

/** "water, no metal", "good, no ridge": flaws named alone are of what was just spoken of; behind a finding they go on with it. */
export function flaws(t: Telling): Entry[] | undefined {
  const c = t.clause, nps = c.items.flatMap(i => (i.np ? [i.np] : [])), last = t.told.at(-1);
  const comma = c.items.findIndex(i => i.low === ','), leading = comma > 0 && c.items[0]!.np?.quant === 'no' && FAULT.test(c.items[0]!.np.said.split(' ').at(-1)!) && comma === 1;
  const flaw = (said: string): boolean => FAULT.test(said.split(' ').at(-1)!);
  if (c.pred !== 'none' || !nps.length || !leading && nps.some(n => !flaw(n.said)) || c.items.some(i => !i.np && !/^(cc|mark|adv|adj|intj)$/.test(i.t)) && !leading || !nps.some(n => n.quant === 'no' || /\b(some|bit|plenty)\b/.test(n.said))) return undefined;
  const text = said(t.sheet, nps[0]!.from, leading ? c.items[0]!.to : c.to);
  if (last?.entry.kind === 'finding' && last.clause === t.clauses[t.at - 1] && c.join !== undefined) {
    last.entry.condition += `${c.join === ',' ? ',' : ` ${c.join}`} ${text}`;
    return [];
  }
  const topic = t.memory.topic();
  return topic && !topic.machine && partLike(t.sheet, topic.name) && !flaw(topic.name) ? [make(topic.name, text)] : undefined;
}
