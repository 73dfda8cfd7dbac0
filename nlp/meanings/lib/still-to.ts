import { dims, type Clause } from '../../clauses/clause.ts';
import type { Thing } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { isClass } from '../../words/verbs.ts';
import { lowText, type Telling } from '../telling.ts';

/** What is still to do and to what, where it is said of the part: "brakes still to bleed", "head has to come off", "still got the seal to knock in". */
export function stillToDo(t: Telling): { act: string; parts: Thing[] } | undefined {
  const c = t.clause, left = leftTo(c) ?? comingOff(t);
  if (left) return { act: left, parts: c.subj.filter(p => partLike(t.sheet, p.name)) };
  const act = hadTo(c);
  return act ? { act, parts: c.obj.filter(p => partLike(t.sheet, p.name)) } : undefined;
}

/** "brakes still to bleed", "wheel bearings to pack yet": the verb stands after the part. */
function leftTo(c: Clause): string | undefined {
  const k = c.items.findIndex(i => i.t === 'to'), v = c.items[k + 1];
  if (k < 1 || v?.t !== 'verb' || v.form !== 'base' || !isClass(v.base!, 'work') || c.pred === 'be' || c.subj.some(s => s.carried)) return undefined;
  const rest = [...c.items.slice(0, k), ...c.items.slice(k + 2)].filter(i => !i.np && i.t !== 'mark');
  return rest.every(i => /^(still|yet|just|only|now|and|left|also|all|'s|is|are|up|out|down|in|on|off|back)$/.test(i.low)) ? v.base : undefined;
}

/** "the head has to come off", "mainshaft's to come out yet", "the hood goes back on Friday", "pump has yet to go in": going on and coming off, not done. */
function comingOff(t: Telling): string | undefined {
  const c = t.clause, base = c.verb?.base ?? '', prt = c.prt.filter(p => /^(back|off|out|on|in|apart|up|down)$/.test(p))
    .concat(c.prt.includes('on') || c.prt.some(p => /^(off|out|apart|in)$/.test(p)) ? [] : dims(c.items, 'when').some(f => t.sheet.tokens[f.from]?.low === 'on') ? ['on'] : []).join(' '); // "goes on Friday" goes on on Friday
  const end = c.rest.findIndex(i => i.t === 'mark' || i.t === 'cc'), own = end < 0 ? c.rest : c.rest.slice(0, end); // "…, and the two lay shafts after it" is beside it
  if (!/^(come|go)$/.test(base) || !/^(back )?(off|out|on|in|apart|up|down)$/.test(prt) || /^(i|we|he|she|you|person)$/.test(c.who ?? '') && !c.subj.length || own.some((i, k) => i.np && !/^(by|with|for|before|after)$/.test(own[k - 1]?.low ?? ''))) return undefined;
  const last = t.told.at(-1)?.entry;
  if (last?.kind === 'fit' && last.state !== 'off' && c.subj.every(s => s.carried)) return undefined; // "…but it comes off again for paint" says how it sits now
  const bound = /^(must|plan)$/.test(c.reality) || /\b(yet|still|left) to (come|go)\b|\b(is|are|'s|'re) (still |all |yet )?to (come|go)\b/.test(lowText(t));
  if (t.told.some(x => x.entry.kind === 'fit' && c.subj.some(s => s.name === (x.entry as { part: string }).part))) return undefined;
  const coming = (/^(s|base)$/.test(c.verb!.form ?? '') || c.ing) && c.subj.some(s => !s.carried) && (dims(c.items, 'when').some(f => (f.value.from ?? '') > t.sheet.ctx.at.slice(0, 10)) || /\b(next|after (dinner|lunch|tea|supper|that|work)|first thing)$/.test(lowText(t)));
  if (!bound && !coming) return undefined;
  const way = prt.replace(/^back /, '');
  return base === 'come' ? `take ${way}` : `put ${prt}`;
}

/** "still got the rear seal to knock in", "I've the valves to grind yet": the verb stands after what one has. */
function hadTo(c: Clause): string | undefined {
  const having = c.pred === 'have' || c.verb?.base === 'get' && c.verb.low === 'got', k = c.items.findIndex((i, n) => i.t === 'to' && n > c.vi && c.obj.length > 0 && i.from >= c.obj.at(-1)!.to), v = c.items[k + 1];
  if (!having || !/^(i|we)$/.test(c.who ?? 'i') || k < 0 || v?.t !== 'verb' || !(['work', 'on', 'off', 'tight'] as const).some(cls => isClass(v.base!, cls)) || /^(get|do|find|take)$/.test(v.base!) && !c.items[k + 2]) return undefined;
  const after = c.items.slice(k + 2).filter(i => i.t !== 'adv' && i.t !== 'mark' && !i.f), prt = after.filter(i => i.t === 'prt' || i.low === 'back');
  if (after.some(i => !prt.includes(i) && i.t !== 'cc')) return undefined; // "got a man to look at it", "had the lad to help me"
  return [v.base!, ...prt.map(i => i.low)].join(' ');
}
