import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { isMachine, partLike } from '../clauses/things.ts';
import { awaited } from './out.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** One thing before another: "before the spindle goes in I've got to…", "don't pour till it's polished", "can't… until". */
export const rule: Meaning = t => {
  const c = t.clause;
  if (c.asks || /\b(till|until|'til)\b/.test(lowText(t)) && dims(c.items, 'when').length) return undefined;
  const pair = paired(t);
  if (!pair) return undefined;
  let first = phrase(t, pair.first, 'first');
  let then = phrase(t, pair.then, 'then');
  const other = t.memory.all().find(x => x.name !== pair.first.subj[0]?.name && x.name !== pair.first.obj[0]?.name)?.name;
  if (then && pair.then.subj.concat(pair.then.obj).every(s => s.carried) && pair.then.subj.concat(pair.then.obj).some(s => first?.endsWith(s.name)) && other) then = then.replace(pair.then.subj.concat(pair.then.obj)[0]!.name, other);
  if (first && !pair.then.subj.concat(pair.then.obj).every(s => s.carried) && pair.first.subj.concat(pair.first.obj).every(s => s.carried) && then === first && other) first = other;
  if (!first || !then || first === then) return undefined;
  for (const x of [pair.first, pair.then]) (x as Clause & { spoken?: boolean }).spoken = true;
  return [{ kind: 'rule', first, then } as Entry, ...awaited(t, pair.first)];
};

/** The clause that must come first, and the one that waits for it. */
function paired(t: Telling): { first: Clause; then: Clause } | undefined {
  const c = t.clause, n = t.clauses[t.at + 1];
  const text = lowText(t);
  const bare = elliptic(t, c) ?? inOrder(t, c);
  if (bare) return bare;
  const bound = (x: Clause): boolean => isBound(t, x);
  if (c.sub === 'before' && n && !n.asks && n.sub === undefined && bound(n) && presentish(c)) return { first: n, then: c };
  if (n?.sub === 'before' && !n.asks && presentish(n) && bound(c) && !c.neg) return { first: c, then: n };
  if (n?.sub === 'before' && c.neg && presentish(n)) return { first: n, then: c };
  if (n && /^(till|until|'til)$/.test(n.sub ?? '') && (c.neg || /\b(can't|won't|don't|not|nothing|no)\b/.test(text) || /\b(stays?|leave|hold|wait)\b.*\b(off|out)\b/.test(text))) return { first: n, then: c };
  if (n?.sub === 'after' && presentish(n) && bound(c) && !c.neg && (c.reality !== 'deed' || c.verb?.form === 's')) return { first: n, then: c };
  if (c.sub === 'after' && n && bound(n) && presentish(c) && n.reality !== 'deed') return { first: c, then: n };
  if (n && (n.sub === 'once' || n.sub === 'when') && /\b(only|can only|not till)\b/.test(text)) return { first: n, then: c };
  if (n && n.join === 'then' && /\bfirst\b/.test(text) && !/^(i|we)$/.test(c.who ?? '')) return { first: c, then: n };
  return undefined;
}

/** Said as a duty, an order to oneself or a standing way of things, not as a deed. */
const isBound = (t: Telling, x: Clause): boolean => /^(must|plan|maybe)$/.test(x.reality) || x.verb?.form === 'base' || /\b(only|first|want|needs?|goes|go|come|comes|has|have)\b/.test(lowText(t, x)) && x.verb?.form !== 'past';

/** "the bearing has to go in before the seal", "fan goes on after the radiator", "never put the cover on before the gasket": the other thing stands as a noun in the same clause. */
function inOrder(t: Telling, c: Clause): { first: Clause; then: Clause } | undefined {
  const k = c.items.findIndex((i, n) => n > 0 && /^(before|after|ahead|until|till)$/.test(i.low) && c.items[i.low === 'ahead' ? n + 2 : n + 1]?.np !== undefined);
  if (k < 0 || c.sub && c.sub !== 'that' || /^(cond|past plan|wish|hearsay)$/.test(c.reality)) return undefined;
  const at = c.items[k]!.low === 'ahead' ? k + 2 : k + 1, np = c.items[at]!.np!;
  const own = c.verb?.base === 'remember' && c.obj.length ? c.obj : c.obj.length && !c.passive ? c.obj : c.subj;
  if (np.stands || /ing$/.test(np.name) || !partLike(t.sheet, np.name) || isMachine(t.sheet, np.name) || c.vi > k || !own.some(s => s.from < c.items[k]!.from)) return undefined;
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
function elliptic(t: Telling, c: Clause): { first: Clause; then: Clause } | undefined {
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

/** A short phrase for one side: base verb and part; what only goes on or is waited for is the part alone; what comes off is "X off". */
function phrase(t: Telling, c: Clause, side: 'first' | 'then'): string | undefined {
  const base = c.verb?.base;
  const moves = /^(go|come|be|arrive|get|sit|turn|do)$/.test(base ?? 'be') && c.subj.length > 0 && !/^(i|we)$/.test(c.who ?? '');
  const part = ((moves || c.passive && c.subj.length > 0 ? undefined : c.obj[0]) ?? c.subj.find(s => !s.machine) ?? c.subj[0] ?? c.obj[0])?.name;
  if (!part && /^(i|we)$/.test(c.who ?? '')) return undefined;
  const text = lowText(t, c);
  if (!part) return base && c.verb!.form !== 's' ? base : undefined;
  const prt = c.prt.concat(c.rest.filter(i => i.t === 'prt').map(i => i.low));
  if (prt.includes('off') && (!base || /^(be|come|take|get|go|have|pull)$/.test(base) || c.pred === 'be')) return `${part} off`;
  if (prt.includes('out') && (!base || /^(be|come|take|get|go|have|pull)$/.test(base) || c.pred === 'be')) return `${part} out`;
  if (!base || c.pred === 'be' && !c.passive) return c.rest.some(i => i.t === 'adj') && !/\b(on|in|back|here)\b/.test(text) ? `${part} ${c.rest.find(i => i.t === 'adj')!.low}` : part;
  if (/^(go|come|be|arrive|get|have|turn|show|want|need|sit)$/.test(base)) return part;
  if (/^(fit|install|mount|put|refit|replace|reinstall)$/.test(base)) return side === 'then' || c.passive ? part : part;
  return `${c.passive || c.verb!.form !== 'base' ? base : base} the ${part}`;
}
