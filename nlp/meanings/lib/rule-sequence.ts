import type { Clause, Thing } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import type { Item } from '../../clauses/items.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { lowText, type Telling } from '../telling.ts';
import type { Order } from './rule-pair.ts';

const thing = (i: Item): Thing => ({ name: i.np!.name, from: i.np!.from, to: i.np!.to, np: i.np!, plural: false });

/** A clause that only names a thing. */
const naming = (c: Clause, i: Item): Clause => { const out: Clause = { ...c, pred: 'none', passive: false, vi: -1, prt: [], rest: [], obj: [], neg: false, reality: 'deed', items: [i], subj: [thing(i)] }; delete out.verb; return out; };

/** "knives then shear bar then set the gap", "fit the shoes, then the drum": each step waits for the one before. Only things and "then", so that no report is taken for it. */
export function sequence(t: Telling): Order[] {
  const c = t.clause, all = t.clauses.filter(x => (x as Placed).sentence === (c as Placed).sentence), at = all.indexOf(c);
  if (at !== 0 || c.join || c.sub || c.asks || c.neg || /\bfirst\b|\bnow\b/.test(lowText(t))) return [];
  const fits = c.verb?.low === 'fit' && !c.who && c.items.find(i => i.t !== 'adv' && i.t !== 'mark') === c.verb;
  const pairs = c.verb || c.items.filter(i => /^(before|ahead)$/.test(i.low)).length < 2 ? [] : inPairs(c.items).map(items => before(t, { ...c, items }));
  if (pairs.length > 1 && pairs.every(p => p !== undefined)) return pairs as Order[]; // "paint before decals, decals before lacquer"
  if (c.verb && !fits) return [];
  const steps: Clause[] = [];
  let then = false;
  for (const i of c.items) {
    if (i.np) { if (i.np.stands || !partLike(t.sheet, i.np.name) || i.np.count !== undefined || steps.length && !then) return []; steps.push(naming(c, i)); then = false; } else if (i.low === 'then') then = true; else if (i !== c.verb && !/^(mark|cc|intj)$/.test(i.t) && !/^(finally|lastly|next|last|always)$/.test(i.low)) return [];
  }
  const n = all[1];
  if (n && (n.verb && n.verb.form !== 'base' && !/^(set|put|fit|cut)$/.test(n.verb.low) || n.who || n.asks || n.sub)) return [];
  if (n && steps.length > 1 && n.obj.length && n.verb) steps.push({ ...n, subj: [], carriedSubj: false });
  if (steps.length < 2 || then) return [];
  return steps.slice(1).map((s, k) => ({ first: steps[k]!, then: s }));
}

/** The items between the marks. */
const inPairs = (items: readonly Item[]): Item[][] => items.reduce<Item[][]>((out, i) => { if (i.t === 'mark' || i.t === 'cc') out.push([]); else out.at(-1)!.push(i); return out; }, [[]]).filter(x => x.length > 0);

/** "getting the hopper off means taking the agitator out first": what one deed asks to be done before it. */
export function entailed(t: Telling, c: Clause): Order | undefined {
  const m = c.items.findIndex(i => /^(mean|involve|require|need)$/.test(i.base ?? '') && i.form !== 'past'), lead = c.items.findIndex(i => i.t === 'verb' && i.form === 'ing'), then = c.items.findIndex((i, n) => n > m && i.t === 'verb' && i.form === 'ing');
  if (m < 0 || lead < 0 || lead > m || then < 0 || c.asks || c.neg) return undefined;
  const deed = (k: number, to: number): Clause | undefined => { const np = c.items.slice(k + 1, to).find(i => i.np && !i.np.stands); return np && partLike(t.sheet, np.np!.name) ? { ...c, items: c.items.slice(k, to), pred: 'verb', verb: { ...c.items[k]!, form: 'base' }, vi: 0, who: 'i', subj: [], obj: [thing(np)], prt: c.items.slice(k + 1, to).filter(i => i.t === 'prt').map(i => i.low), rest: [], passive: false } : undefined; };
  const a = deed(then, c.items.length), b = deed(lead, m);
  return a && b ? { first: a, then: b } : undefined;
}

/** "seals before bearings", "pump before the tank": two things and the word between them. */
export function before(t: Telling, c: Clause): Order | undefined {
  const k = c.items.findIndex(i => /^(before|ahead)$/.test(i.low)), own = c.items.filter(i => i.np);
  if (k < 1 || c.pred !== 'none' || c.verb || c.sub || c.asks || own.length !== 2 || own.some(i => i.np!.stands || i.np!.quant || i.np!.count !== undefined || !partLike(t.sheet, i.np!.name))) return undefined;
  const rest = c.items.filter(i => !i.np && i.t !== 'mark' && i.t !== 'cc').map(i => i.low);
  if (!rest.every(w => /^(before|ahead|of|this|next|time|always|mind|remember|every|again|please|note)$/.test(w)) || c.items.indexOf(own[0]!) > k || c.items.indexOf(own[1]!) < k) return undefined;
  return { first: naming(c, own[0]!), then: naming(c, own[1]!) };
}

/** "it's no good putting the mirror back until…": what is done stands as "-ing" after what is said of doing it. */
export function doing(c: Clause): Clause {
  const k = c.pred === 'verb' ? -1 : c.items.findIndex((i, n) => i.t === 'verb' && i.form === 'ing' && c.items[n + 1]?.np !== undefined && !c.items[n + 1]!.np!.stands);
  if (k < 1) return c;
  const np = c.items[k + 1]!, prt = c.items[k + 2]?.t === 'prt' ? [c.items[k + 2]!.low] : [];
  return { ...c, pred: 'verb', verb: { ...c.items[k]!, form: 'base' }, vi: k, who: 'i', subj: [], obj: [thing(np)], prt, rest: [] };
}

/** "nothing goes on that frame till…", "nothing gets bolted to it until…": what must wait is whatever goes on the thing. */
export function nothingOn(t: Telling, c: Clause): Clause {
  if (c.who !== 'nothing' && c.who !== 'nobody' || c.obj.some(o => partLike(t.sheet, o.name))) return c;
  const k = c.items.findIndex((i, n) => /^(on|onto|in|into|to|near|at)$/.test(i.low) && (c.items[n + 1]?.np || /^(it|them|that)$/.test(c.items[n + 1]?.low ?? '')));
  const at = c.items[k + 1], topic = t.memory.topic();
  if (k < 0 || !at) return c;
  return at.np && !at.np.stands ? naming(c, at) : topic ? { ...c, pred: 'none', passive: false, vi: -1, prt: [], rest: [], obj: [], neg: false, subj: [{ ...topic, carried: false }], who: undefined, verb: undefined } as unknown as Clause : c;
}
