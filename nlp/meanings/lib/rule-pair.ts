import { dims, type Clause, type Thing } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { isMachine, partLike } from '../../clauses/name-kinds.ts';
import { isClass } from '../../words/verbs.ts';
import { isTradeWord } from '../../words/nouns.ts';
import { lowText, type Telling } from '../telling.ts';
import { before as namedBefore, doing, entailed, nothingOn } from './rule-sequence.ts';

export interface Order { first: Clause; then: Clause }

/** "The pump doesn't have to go on before the fan": no order holds, either way. */
const NEEDNT = /\b(doesn't|don't|does not|do not|didn't) (actually |really )?(have to|need)\b|\bneedn't\b|\bneed not\b|\bno (need|call|reason)\b|\bno longer (has|have|needs?)\b/;

/** "no roller goes back in before…": that none does is that it doesn't. */
const denied = (c: Clause): Clause => (c.subj[0]?.np?.quant === 'no' && !c.neg ? { ...c, neg: true } : c);

/** The clause that must come first, and the one that waits for it. */
export function paired(t: Telling): Order | undefined {
  const c = denied(t.clause), n = t.clauses[t.at + 1];
  const text = lowText(t);
  if (/\b(before|ahead of)\b/.test(`${text} ${n?.sub ?? ''}`) && NEEDNT.test(text)) return undefined;
  const bare = elliptic(t, c) ?? without(t, c) ?? waitsOn(t, c) ?? toReach(t, c) ?? priorTo(t, c) ?? inOrder(t, c) ?? namedBefore(t, c) ?? entailed(t, c);
  if (bare) return bare;
  const bound = (x: Clause): boolean => isBound(t, x);
  if (n?.sub === 'before' && c.neg && c.verb?.base === 'forget' && c.obj.some(o => !o.carried) && presentish(n)) return { first: c, then: n }; // "don't forget the oil before she runs"
  if (c.sub === 'before' && n && !n.asks && n.sub === undefined && bound(n) && presentish(c)) return { first: n, then: c };
  if (n?.sub === 'before' && /\b(make (good and )?sure|be sure|see that|see to it|mind that|check that)\b/.test(text) && presentish(n)) { const k = c.items.findIndex((i, x) => x > 1 && i.np !== undefined); if (k > 0 && !c.items[k]!.np!.stands) return { first: noun(c, k), then: n }; }
  if (n?.sub === 'before' && !n.asks && presentish(n) && bound(c) && !c.neg) return { first: c, then: n };
  const later = n?.join === 'and' && n.subj.every(s => s.carried) && n.verb && !n.obj.some(o => !o.carried) && t.clauses[t.at + 2]?.sub === 'before' ? t.clauses[t.at + 2] : undefined;
  if (n && later && !later.asks && presentish(later) && c.reality === 'must' && !c.neg) { (n as Clause & { spoken?: boolean }).spoken = true; return { first: c, then: later }; } // "has to be lapped and measured before the piston goes in"
  if (n?.sub === 'before' && /\bno (use|point|good|sense)\b/.test(text) && (n.subj.length || n.obj.length)) return { first: n, then: doing(c) };
  if (n?.sub === 'before' && c.pred === 'none' && !c.verb && c.subj.some(s => !s.carried) && c.items.at(-1)?.t === 'prt' && n.verb?.form !== 'past' && (n.subj.length || n.obj.length)) return { first: c, then: n }; // "fuel tank off before the head comes off"
  if (/^to (get|have|reach) /.test(text) && c.obj.length && n && !n.sub && !n.asks && n.reality === 'must' && n.subj.some(s => !s.carried)) return { first: n, then: { ...c, who: 'i' } };
  if (n?.sub === 'before' && c.neg && presentish(n)) return { first: n, then: c };
  if (n && /^(till|until|'til)$/.test(n.sub ?? '') && (c.neg || /\b(can't|won't|don't|not|nothing|nobody|no)\b/.test(text) || /\b(stays?|staying|leave|leaving|leaves|keep|keeping|hold|holding)\b.*\b(off|out|apart)\b|\b(has|have|had|must|needs?|got) to wait\b|\bmust wait\b|\b(waits|is waiting|are waiting)\b/.test(text)) && !(c.verb?.form === 'past' && !c.passive)) return { first: n, then: nothingOn(t, doing(c)) };
  if (n?.sub === 'unless' && !n.asks && (c.neg || /\b(can't|won't|no)\b/.test(text)) && (n.subj.some(s => !s.carried) || n.obj.some(s => !s.carried)) && (c.subj.some(s => !s.carried) || c.obj.some(s => !s.carried)) && (n.pred === 'be' || n.passive || n.prt.length > 0 || n.items.some(i => i.t === 'prt'))) return { first: n, then: c }; // "can't get the starter out unless the exhaust is off"
  if (n?.sub === 'after' && presentish(n) && bound(c) && !c.neg && (c.reality !== 'deed' || c.verb?.form === 's')) return { first: n, then: c };
  if (/^(till|until|'til)$/.test(c.sub ?? '') && n && !n.sub && !n.asks && n.neg && presentish(c)) return { first: c, then: n };
  if (c.sub === 'after' && n && bound(n) && presentish(c) && n.reality !== 'deed') return { first: c, then: n };
  if (n && (n.sub === 'once' || n.sub === 'when') && /\b(only|can only|not till)\b/.test(text)) return { first: n, then: c };
  if (c.sub === 'once' && n && !n.sub && !n.asks && presentish(c) && (/\bcan\b/.test(lowText(t, n)) || n.verb?.form === 's' && n.subj.length > 0) && !n.neg) return { first: c, then: n };
  if (n && (n.join === 'then' || /^(and |but |only )*then\b/.test(lowText(t, n))) && /\bfirst\b/.test(text) && !/^(i|we)$/.test(c.who ?? '') && (c.verb?.form !== 'past' || c.passive || c.verb.low === c.verb.base) && (n.verb === undefined || n.verb.form !== 'past' || unmarked(n))) return { first: c, then: n };
  if (c.pred !== 'verb' && !c.verb && c.subj.length && !c.subj.some(s => s.carried) && n && /^(and )?then\b/.test(lowText(t, n)) && !n.verb && n.subj.some(s => !s.carried) && c.items.some(i => i.t === 'prt') && t.clauses.slice(t.at + 1).every(x => !x.verb)) return { first: c, then: n }; // "liner in, then the seals"
  return undefined;
}

/** "the gearbox can't go in without the clutch plate", "can't time it without the flywheel on": what must be there first stands after "without". */
function without(t: Telling, c: Clause): Order | undefined {
  const k = c.items.findIndex(i => i.low === 'without');
  const np = c.items[k + 1]?.np;
  if (k < 1 || !np || np.stands || !partLike(t.sheet, np.name) || !(c.neg || /\b(no (use|sense|point)|useless|hopeless)\b/.test(lowText(t))) || !/^(maybe|must|plan)$/.test(c.reality) && c.verb?.form !== 's' && c.verb?.form !== 'base') return undefined;
  return { first: noun(c, k + 1), then: before(c, k) };
}

/** "the hood waits on the radiator", "the frame has to wait for the floor", "the pump depends on the gasket". */
function waitsOn(t: Telling, c: Clause): Order | undefined {
  if (!/^(wait|depend|hang|hinge)$/.test(c.verb?.base ?? '') || c.verb!.form === 'past' || c.neg || !c.subj.length || c.who && /^(i|we|he|they|person)$/.test(c.who) || !c.subj.every(s => partLike(t.sheet, s.name) && !s.machine)) return undefined;
  if (c.verb!.base === 'wait' && c.verb!.form === 'ing' && !/\b(is|are|'s|'re)\b/.test(lowText(t))) return undefined;
  const k = c.items.findIndex((i, n) => n > c.vi && /^(on|for|upon)$/.test(i.low) && c.items[n + 1]?.np);
  const np = c.items[k + 1]?.np;
  if (k < 0 || !np || np.stands || !partLike(t.sheet, np.name) || c.verb!.base === 'hang' && c.verb!.form !== 's' || dims(c.items, 'when').length) return undefined;
  if (c.verb!.base === 'hang') return undefined;
  return { first: noun(c, k + 1), then: { ...before(c, c.vi), pred: 'none', verb: undefined } as unknown as Clause };
}

/** "the gearbox has to come off to get at the clutch", "to get the clutch out the gearbox has to come off". */
function toReach(t: Telling, c: Clause): Order | undefined {
  const k = c.items.findIndex((i, n) => i.t === 'to' && (/^(reach|access)$/.test(c.items[n + 1]?.base ?? '') || /^(get|have)$/.test(c.items[n + 1]?.base ?? '') && (/^(at|to|in)$/.test(c.items[n + 2]?.low ?? '') && c.items[n + 3]?.np || c.items[n + 2]?.np && /^(out|off|in|on|apart)$/.test(c.items[n + 3]?.low ?? ''))));
  if (k < 0 || c.reality !== 'must' && !/\b(has|have|needs?|got) \S* ?(to|the \S+( \S+)?) (come|be)?\b/.test(lowText(t))) return undefined;
  const goal = c.items.slice(k + 1), at = goal[1]?.np ? 1 : 2, np = goal[at]?.np ?? goal[1]?.np;
  if (!np || np.stands || !partLike(t.sheet, np.name)) return undefined;
  const prep = goal[1]?.np ? undefined : goal[1]?.low, prt = goal[1]?.np ? goal[2]?.low : undefined;
  const then: Clause = { ...c, items: goal, subj: [], obj: [thingOf(np)], vi: 0, verb: goal[0]!, pred: 'verb', passive: false, who: 'i', prt: prt ? [prt] : [], rest: prep ? goal.slice(1) : [] };
  if (k > c.vi && c.vi >= 0) { const first = before(c, k); return first.subj.length || first.obj.length ? { first, then } : undefined; }
  const after = goal.slice(prt ? 3 : at + 1), s = after.findIndex(i => i.np), part = after[s]?.np;
  const off = after.find(i => /^(off|out|up|down|apart)$/.test(i.low));
  return part && off && after.some(i => /^(has|have|need|needs|must)$/.test(i.low)) ? { first: { ...noun(c, c.items.indexOf(after[s]!)), pred: 'be', rest: [off] }, then } : undefined;
}

/** "prior to installing the blade": "before" in other words, inside the clause. */
function priorTo(t: Telling, c: Clause): Order | undefined {
  const k = c.items.findIndex((i, n) => n > 0 && (i.np?.said === 'prior' || i.low === 'prior') && c.items[n + 1]?.low === 'to');
  if (k < 0 || !isBound(t, c)) return undefined;
  const v = c.items[k + 2], np = v?.np ?? c.items.slice(k + 2).find(i => i.np)?.np;
  if (!np || np.stands) return undefined;
  const then: Clause = { ...c, items: c.items.slice(k + 2), subj: [], obj: [thingOf(np)], vi: 0, pred: v?.t === 'verb' ? 'verb' : 'none', passive: false, who: 'i', prt: [], rest: [], neg: false, ...(v?.t === 'verb' ? { verb: v } : { verb: undefined }) } as Clause;
  return { first: before(c, k), then };
}

const thingOf = (np: NonNullable<Item['np']>): Thing => ({ name: np.name, from: np.from, to: np.to, np, plural: false });
/** The part of a clause before item `k`. */
const before = (c: Clause, k: number): Clause => ({ ...c, neg: false, items: c.items.slice(0, k), obj: c.obj.filter(o => o.from < (c.items[k]?.from ?? o.from + 1)), rest: c.rest.filter(i => i.from < (c.items[k]?.from ?? i.from + 1)) });
/** A thing named inside a clause with the particle after it, as a clause of its own: "the flywheel on". */
function noun(c: Clause, k: number): Clause {
  const np = c.items[k]!.np!, prt = c.items[k + 1]?.t === 'prt' ? [c.items[k + 1]!] : [];
  const out: Clause = { ...c, pred: 'none', passive: false, vi: -1, prt: [], rest: prt, obj: [], neg: false, reality: 'deed', items: c.items.slice(k), subj: [thingOf(np)] };
  delete out.verb;
  return out;
}

/** Said as a duty, an order to oneself or a standing way of things, not as a deed. */
const isBound = (t: Telling, x: Clause): boolean => /^(must|plan|maybe)$/.test(x.reality) || x.verb?.form === 'base' || /\b(only|first|want|needs?|goes|go|come|comes|has|have)\b/.test(lowText(t, x)) && x.verb?.form !== 'past';

/** "the bearing has to go in before the seal", "fan goes on after the radiator", "never put the cover on before the gasket": the other thing stands as a noun in the same clause. */
function inOrder(t: Telling, c: Clause): Order | undefined {
  const k = c.items.findIndex((i, n) => n > 0 && /^(before|after|ahead|until|till)$/.test(i.low) && c.items[i.low === 'ahead' ? n + 2 : n + 1]?.np !== undefined);
  if (k < 0 || c.sub && c.sub !== 'that' || /^(cond|past plan|wish|hearsay)$/.test(c.reality)) return undefined;
  const at = c.items[k]!.low === 'ahead' ? k + 2 : k + 1, np = c.items[at]!.np!;
  if (c.items[k]!.low === 'after' && (isClass(c.verb?.base ?? '', 'check') || /^(first|next)\b/.test(np.said))) return undefined; // a look again, not an order
  const own = c.verb?.base === 'remember' && c.obj.length ? c.obj : c.obj.length && !c.passive ? c.obj : c.subj;
  if (np.stands || /ing$/.test(np.name) && !isTradeWord(np.name.split(' ').at(-1)!) || !partLike(t.sheet, np.name) || isMachine(t.sheet, np.name) || c.vi > k || !own.some(s => s.from < c.items[k]!.from)) return undefined;
  const standing = isBound(t, c) || c.neg && (c.verb?.form !== 'past' || unmarked(c)) || c.pred === 'none' && !c.verb && c.items.slice(0, k).some(i => i.t === 'prt' || i.low === 'first');
  if (!standing || c.verb?.form === 'past' && !c.passive && !unmarked(c)) return undefined;
  const other: Clause = { ...c, pred: 'none', passive: false, vi: -1, prt: [], rest: [], obj: [], neg: false, reality: 'deed', items: c.items.slice(at), subj: [{ name: np.name, from: np.from, to: np.to, plural: false }] };
  delete other.verb;
  const reminded = c.verb?.base === 'remember';
  const said: Clause = { ...c, ...(reminded ? { subj: c.obj, obj: [], verb: undefined, pred: 'none' as const } : {}), neg: false, items: c.items.slice(0, k), rest: c.rest.filter(i => i.to <= c.items[k]!.from) };
  const otherFirst = c.items[k]!.low === 'after' || (c.neg || /^(until|till)$/.test(c.items[k]!.low));
  if (/^(until|till)$/.test(c.items[k]!.low) && !c.neg) return undefined;
  return otherFirst ? { first: other, then: said } : { first: said, then: other };
}

/** "blade not before guide blocks": without a verb. */
function elliptic(t: Telling, c: Clause): Order | undefined {
  const k = c.items.findIndex((i, n) => i.t === 'neg' && /^(before|till|until)$/.test(c.items[n + 1]?.low ?? ''));
  const n = t.clauses[t.at + 1];
  const then = c.items.findIndex((i, x) => x > 0 && i.low === 'then' && c.items[x + 1]?.np);
  if (then > 0 && c.pred === 'none' && c.subj.length && c.items.slice(0, then).some(i => i.low === 'first')) { const np = c.items[then + 1]!.np!; return { first: { ...c, items: c.items.slice(0, then), rest: [] }, then: { ...c, rest: [], items: c.items.slice(then + 1), subj: [{ name: np.name, from: np.from, to: np.to, plural: false }] } }; }
  if (c.verb || !c.subj.length) return undefined;
  if (k > 0 && c.items[k + 2]?.np) { const np = c.items[k + 2]!.np!; return { first: { ...c, subj: [{ name: np.name, from: np.from, to: np.to, plural: false }], rest: [], items: c.items.slice(k + 2) }, then: { ...c, rest: [], items: c.items.slice(0, k) } }; }
  if (n && /^(before|till|until)$/.test(n.sub ?? '') && c.items.at(-1)?.t === 'neg' && (n.obj.length || n.subj.length)) return { first: n, then: { ...c, rest: [] } };
  return undefined;
}

/** A verb whose past looks like its base. */
const unmarked = (c: Clause): boolean => /^(put|set|cut|shut|fit)$/.test(c.verb?.low ?? '');
const presentish = (c: Clause): boolean => c.verb?.form !== 'past' || c.passive || unmarked(c);
