import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { isStuff } from '../../clauses/things.ts';
import { isClass } from '../../words/verbs.ts';
import { verdictIn } from '../lib/verdict.ts';
import { clauseText, lowText, type Telling } from '../telling.ts';
import { condition, counted, make, partsOf } from './part.ts';

/** "X leaks", "X snapped", "X holds now", "X reads empty": what a part does or what happened to it. */
export function acted(t: Telling): Entry[] | undefined {
  const c = t.clause, verb = c.verb!;
  const base = verb.base!;
  if (c.neg && c.items.find(i => i.t !== 'cc' && i.t !== 'mark')?.t === 'do' || base === 'read' && c.rest[0]?.f) return undefined;
  const parts = partsOf(t, c.subj.length ? c.subj : []);
  if (!parts.length || c.who && /^(i|we|he|she|person|you)$/.test(c.who)) return undefined;
  if (dims(c.items, 'measure').length && !/^(break|crack|snap|leak)$/.test(base)) return undefined;
  if (dims(c.items, 'money').length) return undefined;
  if (/^(break|come|work)$/.test(base) && /\b(loose|free)\b/.test(c.prt.join(' ') + lowText(t)) || /^(stay|sit)$/.test(base) && /\b(where|put|right)\b/.test(lowText(t)) || c.reality === 'maybe' && c.neg && !wont(t)) return undefined;
  const text = condition(t, c, c.neg ? c.items.find(i => /n't$|^not$|^never$|^no$/.test(i.low))?.from ?? verb.from : verb.from);
  if (/^(look|feel|seem|sound)$/.test(base)) return c.rest.length ? parts.map(p => make(p.name, text, verdictIn(text))) : undefined;
  if (parts.every(p => isStuff(p.name))) return undefined;
  const fails = isClass(base, 'fail'), acts = isClass(base, 'state') || /^(need|want)$/.test(base) && verdictIn(text) !== undefined;
  if (c.passive && isClass(base, 'fail') && !isClass(base, 'work')) return parts.map(p => make(p.name, (counted(t, c) + text), verdictIn(text)));
  if (c.passive && (!/ed$/.test(verb.low) || ['work', 'on', 'off', 'tight', 'hang', 'stow', 'send', 'order', 'buy', 'move', 'check', 'arrive', 'find', 'measure', 'say', 'think', 'help', 'begin', 'stop', 'own', 'wait', 'spend'].some(k => isClass(base, k as 'work')))) return undefined;
  if (c.passive) return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
  if (!(fails || acts)) return /^(get|go|come|let|test|check)$/.test(base) && c.rest.some(i => i.t === 'adj') || base === 'let' ? parts.map(p => make(p.name, text, verdictIn(text))) : undefined;
  if (c.ing && c.pred === 'verb' && c.items.some(i => i.t === 'to')) return undefined;
  if (/^(go|fit|start|come|sit|stay|move|want|lift|draw|read|float|track|turn)$/.test(base) && !c.rest.length && !c.neg && !/^(start|turn|fit)$/.test(base)) return undefined;
  return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
}

/** "battery won't hold a charge": what a part refuses to do now is how it is. */
export const wont = (t: Telling): boolean => /\b(won't|will not|refuses to|can't) (hold|turn|start|fire|run|idle|charge|engage|disengage|seal|seat|light|open|close|shut|lift|lower|pump|spin|latch|lock|release|return|stay|work|draw|prime|rev|crank|catch)\b/.test(lowText(t)) && t.clause.subj.some(s => !s.carried);

/** "Drained it. The oil came out like chocolate milk": how what was in it looked is how it was found. */
export function drained(t: Telling): Entry[] | undefined {
  const c = t.clause, last = t.told.at(-1)?.entry;
  if (c.neg || last?.kind !== 'work' || !/^(drain|flush|bleed|fill|change)$/.test(last.action) || !c.subj.length || !c.subj.every(s => /^(oil|water|coolant|fuel|fluid|grease|antifreeze|petrol|diesel|gas|old oil|gear oil)$/.test(s.name)) || !/^(come|run|look|be|smell|pour)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : ''))) return undefined;
  return [make(last.part, clauseText(t).replace(/^(the|and|but|so)\s+/i, '').toLowerCase())];
}
