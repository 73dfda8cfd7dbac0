import type { Entry } from '../../../domain/model/entry.ts';
import { isMachine, isStuff } from '../../clauses/name-kinds.ts';
import { CONDITION } from '../../words/conditions.ts';
import { FAULT } from '../../words/faults.ts';
import { NAMED } from '../../words/quantities.ts';
import { verdictIn, type Verdict } from '../lib/verdict.ts';
import { lowText, type Telling } from '../telling.ts';
import { condition, counted, make, partsOf } from './part.ts';

/** "X is cracked", "X pitted", "X is junk": a state after "is" or straight after the name. */
export function stated(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj);
  const rest = c.rest.filter(i => i.t !== 'adv' && i.low !== ',' && !(i.np?.stands && /^(all|both|each)$/.test(i.np.said)) && !(i.t === 'det' && /^(all|both)$/.test(i.low)));
  const first = rest[0];
  if (/^(that|this)$/.test(c.who ?? '') && first?.np && !CONDITION.has(first.np.said)) return undefined; // "that's wear, not workmanship"
  if (/^(that|this|it)$/.test(c.who ?? '') && first?.low === 'no' && !/^(good|use|better|worse)$/.test(rest[1]?.low ?? '')) return undefined; // "that's no way to live"
  if (first && /^(ready|done|finished|due|next|here|nearly|careful|sure|afraid|glad|happy|sorry|possible|worth|able)$/.test(first.low) && !/past it|junk/.test(first.low)) return undefined;
  if (/^(it|that|this)$/.test(c.who ?? '') && !/\btoo \w+$/.test(lowText(t)) && (first?.f?.dim === 'number' || first?.np?.count !== undefined)) return undefined;
  if (!parts.length || !first) return undefined;
  if (parts.some(p => p.np?.quant === 'no' && !p.carried)) return undefined; // "no gasket paper left": what there is none of is in no state
  if (first.low === 'like' && parts.every(p => isStuff(p.name) && !/oil|coolant|water|petrol|fuel|grease|paraffin|diesel/.test(p.name))) return undefined;
  if (first.t === 'prt' && rest[1]?.f || /^(in|on|off)$/.test(first.low) && !rest.slice(1).some(i => i.t !== 'mark')) return undefined;
  const kept = first.low === 'in' && /\b(shape|order|nick|condition|state|bits|pieces|half|two|tatters|ribbons|fettle|trim)\b/.test(lowText(t)); // "in excellent order"
  if (first.t === 'prt' && !kept && !/^(out)$/.test(first.low) && !(/^(down|through|up)$/.test(first.low) && /^(to|on)$/.test(rest[1]?.low ?? '') && rest[2]?.np && !isMachine(t.sheet, rest[2].np.name) && first.low === 'down')) return undefined;
  if (first.t === 'dim' && first.low === 'half' && rest[1] && (rest[1].t === 'adj' || rest[1].t === 'verb')) return parts.map(p => make(p.name, condition(t, c, first.from), verdictIn(condition(t, c, first.from)))); // "half blocked with chaff"
  if (first.t === 'dim' && !/\b(too (long|short|big|small|wide|narrow|thick|thin|tight|loose|high|low)|(over|under)size)\b/.test(lowText(t)) && (first.f!.dim !== 'number' || !rest.some(i => i.t === 'adj' && CONDITION.has(i.low) || i.t === 'verb')) || first.t === 'sub' || first.t === 'wh') return undefined;
  if (/^\w+ to (get|reach|see|shift|find|fit|work|do|start|turn|come)\b/.test(rest.map(i => i.low).join(' ')) || first.t === 'adj' && /^(pitch|thread|threads|grit)$/.test(rest[1]?.np?.said ?? '')) return undefined;
  if (first.t === 'np') {
    const words = first.np!.said.split(' ');
    if (parts.some(p => p.name.split(' ').at(-1) === words.at(-1))) return undefined; // "the hole is a clearance hole"
    const statish = CONDITION.has(words.at(-1)!) || c.pred === 'be' && CONDITION.has(first.low.split(' ')[0]!) || first.np!.states.length > 0 || FAULT.test(words.at(-1)!) || verdictIn(first.low) !== undefined;
    const after = rest[1]?.t === 'adj' && CONDITION.has(rest[1].low) && c.pred === 'be'; // "paper thin", "dog rough"
    if (!statish && !after && (c.pred === 'none' || !/\b(like|more|mess|state|bit|lot|size|shape|piece|pieces|colour|color|wreck|lace|toast|history|case|write-off|throughout|all over|fit|lost cause|mass|lump|disaster|dog|pain|pig|mirror|colander|sieve|rag|rags|sponge|jelly|soup|porridge|joke|disgrace|ruin|shell|skeleton|goner|keeper|beauty|picture|dream|peach|belter|cracker|bugger|swine|banana|corkscrew|washboard|cheese grater|teabag|tea bag|museum piece|antique|ornament|death trap|liability)\b/.test(first.low))) return undefined;
  }
  if (first.t === 'prep' && !(/^(under|over)$/.test(first.low) && !rest[1]?.np) && !/^(like|past|beyond|without|in|out|of|at|full)$/.test(first.low) && !(first.low === 'for' && verdictIn(lowText(t)) === 'replace')) return undefined; // "for the bin"
  if ((first.low === 'in' || first.low === 'at') && !/\b(shape|order|nick|condition|state|bits|pieces|half|two|tatters|ribbons|fettle|trim|limits|tolerance|spec)\b/.test(lowText(t))) return undefined;
  if (c.pred === 'none' && !kept && first.t !== 'adj' && first.t !== 'np' && first.t !== 'prep' && !(first.low === 'down' && rest[1]?.t === 'to')) return undefined;
  if (first.t === 'num' || first.t === 'pron' || first.t === 'to' || first.t === 'cc' || first.t === 'mark' || first.t === 'verb' && first.form === 'ing') return undefined;
  if (parts.length === 1 && NAMED.test(parts[0]!.name) && !(/^(float|bore|taper|lift)$/.test(parts[0]!.name) && !c.rest.some(i => /^(on|in|at)$/.test(i.low)))) { // "compression's down on the front pot": said of the pot
    const on = c.rest.findIndex((i, k) => /^(on|in|at)$/.test(i.low) && c.rest[k + 1]?.np);
    const of = on > 0 ? c.rest[on + 1]!.np! : undefined;
    return of && !of.stands ? [make(of.name, `${parts[0]!.name} ${condition(t, { ...c, to: c.rest[on]!.from }, first.from)}`)] : undefined;
  }
  const text = counted(t, c) + (c.neg ? 'not ' : '') + condition(t, c, c.rest.find(i => i.low !== ',')!.from);
  return parts.map(p => make(p.name, text, c.neg ? negated(text) : verdictIn(text) ?? (first.np ? verdictIn(first.low) : undefined)));
}
const negated = (text: string): Verdict | undefined => (/not (bent|cracked|worn|warped|bad|damaged|rusted|leaking|seized|pitted|split|broken|scored|chipped|missing|loose|torn|perished|rotten|twisted|grooved|burnt|blocked|(a )?(mark|scratch) on (it|them))/.test(text) ? 'good' : undefined);
