import type { Clause } from '../../clauses/clause.ts';
import { isMachine } from '../../clauses/name-kinds.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import type { Goods } from '../lib/goods.ts';
import { singular } from '../../words/nouns.ts';
import { isCalledFor } from '../lib/wanting.ts';
import type { Telling } from '../telling.ts';

/** "staves for the tub… I need seven new ones": what the topic was for. */
function forTopic(t: Telling, c: Clause): string | undefined {
  if (!c.obj.some(o => o.carried) && !c.items.some(i => i.np?.stands)) return undefined;
  for (let i = t.at - 1; i >= 0 && i >= t.at - 3; i--) {
    const p = t.clauses[i]!;
    const k = p.items.findIndex((x, n) => n > 0 && x.low === 'for' && p.items[n - 1]?.np && p.items[n + 1]?.np);
    if (k >= 0) return p.items[k + 1]!.np!.name;
  }
  return undefined;
}

/** The job or part that waits on each thing: said after it ("for the spindle"), after the last ("to go with it"), before all ("for the drain plug I need"), or the part that needs them. */
export function whys(t: Telling, c: Clause, k: number, list: readonly Goods[]): (string | undefined)[] {
  const own = list.map((g, i) => forAfter(t, c, g.to, list[i + 1]?.from ?? c.to, list));
  if (own.some(Boolean)) return own;
  if (isCalledFor(t, c)) return list.map(() => undefined);
  const goesWith = c.items.findIndex((i, n) => n > k && i.t === 'to' && /^(go|match|suit|fit|mate)$/.test(c.items[n + 1]?.base ?? ''));
  if (goesWith > k && list.length) { // "…and two couplings to go with it"
    const it = c.items[c.items[goesWith + 1]!.base === 'go' ? goesWith + 3 : goesWith + 2];
    const what = it?.t === 'pron' ? (list.length > 1 ? list[0]!.item : t.memory.topic()?.name) : it?.np && !it.np.stands ? it.np.name : undefined;
    return list.map((g, i) => (i === list.length - 1 && what !== g.item ? what : undefined));
  }
  const reason = why(t, c, k);
  return list.map(() => reason);
}

/** "for the main drive", "for it" in the tokens [from, to); undefined where that names a machine or nothing. `list`: the things wanted, which are not for themselves. */
export function forAfter(t: Telling, c: Clause, from: number, to: number, list: readonly Goods[]): string | undefined {
  const f = c.items.findIndex((i, n) => i.from >= from && i.from < to && i.low === 'for' && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron' && /^(it|that|them|this)$/.test(c.items[n + 1]!.low)));
  if (f < 0) return undefined;
  const next = c.items[f + 1]!;
  if (!next.np) return t.memory.all().find(x => !list.some(g => singular(g.item) === singular(x.name)))?.name;
  if (isMachine(t.sheet, next.np.name)) return undefined;
  if (/^(pair|lot|both|set)$/.test(next.np.said)) return t.memory.topic()?.name;
  if (next.np.stands) return t.memory.sided(next.np.said, t.sheet) ?? undefined;
  let end = next.to;
  for (let n = f + 2; c.items[n] && /^(of|on|in)$/.test(c.items[n]!.low) && c.items[n + 1]?.np; n += 2) end = c.items[n + 1]!.to;
  return end === next.to ? next.np.name : textOf(t.sheet, next.np.nameFrom, end).toLowerCase();
}

/** What the whole clause says of why: "to seal the tank", a topic named for something, or the part that needs it. */
function why(t: Telling, c: Clause, k: number): string | undefined {
  const to = c.items.findIndex((i, n) => n > k && i.t === 'to' && c.items[n + 1]?.t === 'verb' && n > k);
  if (to > k && c.items.slice(k, to).some(i => i.np)) {
    const verb = c.items[to + 1]!, obj = c.items.slice(to + 2).find(i => i.np);
    if (obj?.np) return `${verb.base} the ${obj.np.name}`;
  }
  const lead = c.items.findIndex(i => i.t !== 'cc' && i.t !== 'adv' && i.t !== 'mark');
  if (c.items[lead]?.low === 'for' && c.items[lead + 1]?.np && !c.items[lead + 1]!.np!.stands && k > lead + 2 && !isMachine(t.sheet, c.items[lead + 1]!.np!.name)) return c.items[lead + 1]!.np!.name; // "for the drain plug I need"
  const named = forTopic(t, c);
  if (named) return named;
  const subj = c.subj.find(s => !s.machine && !s.carried && /^(need|want|require)$/.test(c.verb?.base ?? '') && !/^(i|we)$/.test(c.who ?? ''));
  return subj?.name;
}
