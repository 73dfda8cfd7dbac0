import type { Clause } from '../../clauses/clause.ts';
import { goodsIn, type Goods } from '../lib/goods.ts';
import { specAfter } from '../lib/spec.ts';
import type { Telling } from '../telling.ts';

/** "need one", "I need another, inch and a half by two", "…need a dozen": so many of what was named before, told at item `k`. Undefined where no such number stands there; empty where nothing was named. */
export function single(t: Telling, c: Clause, k: number): Goods[] | undefined {
  const it = c.items[k], dozen = it?.np && /^(dozen|couple|pair|few|set|full set|whole set|complete set)$/.test(it.np.said) && c.items[k + 1]?.low !== 'of';
  const them = it?.t === 'pron' && /^(them|those|it|some)$/.test(it.low) && (c.items[k + 1]?.low === 'in' || /^(measure|thread)$/.test(c.items[k + 1]?.f?.dim ?? '')); // "need them in M8"
  if (!it || !dozen && !them && !(/^(one|another|more)$/.test(it.low) && !c.items[k + 1]?.np)) return undefined;
  const before = dozen ? fronted(t, c)[0] : undefined, wanted = it.low === 'more' ? t.told.findLast(x => x.entry.kind === 'want')?.entry : undefined, topic = (wanted?.kind === 'want' ? t.memory.all().find(x => x.name === wanted.item) : undefined) ?? t.memory.all().find(x => !/^(chunk|bite|lump|hole|crack|chip|split|gouge|nick|dent|flat spot|tear)s?$/.test(x.name)) ?? t.memory.topic();
  if (!before && !topic) return [];
  const g: Goods = before ?? { item: topic!.name.replace(/^(?:last|only) (?=.)/, ''), from: it.from, to: it.to, thing: topic! };
  if (dozen && !/set|few/.test(it.np!.said)) g.qty = /dozen/.test(it.np!.said) ? 12 * (it.np!.count ?? 1) : 2;
  specAfter(t, c.items, c.items[k + 1]?.low === 'of' && c.items[k + 2]?.t === 'pron' ? k + 3 : k + 1, g);
  return [g];
}

/** "three track pins, inch and an eighth. those are what I want": the things stand before, in the clause itself or in one that is then marked as read. */
export function fronted(t: Telling, c: Clause): ReturnType<typeof goodsIn> {
  const own = c.subj.filter(s => !s.carried);
  if (own.length && /^(i|we|need)/.test(c.who ?? 'need')) return goodsIn(t, c.items, 0);
  const before = t.clauses.slice(Math.max(0, t.at - 2), t.at).filter(p => p.pred === 'none' && !p.verb && !t.told.some(x => x.clause === p)).findLast(p => p.items.some(i => i.np));
  if (!before) return [];
  (before as Clause & { spoken?: boolean }).spoken = true;
  return goodsIn(t, before.items, 0);
}
