import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Item } from '../clauses/items.ts';
import { nameKey } from '../../domain/model/names.ts';
import { isClass } from '../words/verbs.ts';
import { isMachine, partLike } from '../clauses/things.ts';
import { EVERYDAY } from '../words/everyday.ts';
import { CONDITION } from '../words/conditions.ts';
import { moneyClause } from './lib/money.ts';
import { textOf } from '../dimensions/part/text-of.ts';
import { goodsIn, type Goods } from './lib/goods.ts';
import { specAfter } from './lib/spec.ts';
import { nounClasses, singular } from '../words/nouns.ts';
import { isTool, trim } from './lib/fields.ts';
import { needed } from './lib/needing.ts';
import { isCalledFor, opensList, phrasedWant, underList } from './lib/wanting.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** Something that must be got: "need two", "have to buy", "short of", "we're out of". */
export const want: Meaning = t => {
  const c = t.clause;
  if (opensList(t)) return [];
  const phrased = underList(t) && c.pred === 'none' ? 0 : phrasedWant(c);
  if (c.neg && phrased === undefined || c.asks || c.sub && /^(if|unless|until|till|before|when)$/.test(c.sub) || c.reality === 'past plan' || c.reality === 'cond' || c.reality === 'hearsay' || /^(wish|maybe)$/.test(c.reality) && phrased === undefined) return undefined;
  if (c.join === 'or' || t.clauses[t.at + 1]?.join === 'or' || /\b(or|whether)\b/.test(lowText(t)) && c.reality !== 'must' && c.items.findIndex(i => i.base === 'need') < 0) return undefined;
  if (c.join === 'or' || t.clauses[t.at + 1]?.join === 'or' && /\b(don't know|not sure)\b/.test(t.clauses.slice(t.at).map(x => lowText(t, x)).join(' '))) return undefined;
  if (c.verb && isClass(c.verb.base ?? '', 'work') && c.obj.some(o => o.from < c.verb!.from && o.from > c.from) && c.items.slice(0, c.vi).some(i => /^(get|have)$/.test(i.base ?? i.low))) return undefined; // "I'd better get the deck welded" is work
  const lost = TO_GET.test(lowText(t)) && c.pred === 'be' ? goodsIn(t, c.items, c.vi + 1).find(g => !/^thing$/.test(g.item))?.thing ?? t.memory.lastMention() : undefined;
  if (lost && partLike(t.sheet, lost.name)) return [trim({ kind: 'want', item: lost.name.replace(/^(?:last|only) (?=.)/, ''), spec: lost.np?.spec }) as Entry];
  const named = /\b(?:needs?|wants?) (?:a )?([a-z]+ing)$/.exec(lowText(t))?.[1];
  if (named && !nounClasses(named).size && c.subj.length > 0) return undefined; // "needs loctiting": work, by a word of its own
  const more = continued(t);
  if (more) return more;
  const k = phrased ?? (isCalledFor(t, c) ? 0 : needed(t, c));
  if (k === undefined) return undefined;
  const goods = (single(t, c, k) ?? (k < c.items.length && k >= 0 ? goodsIn(t, offList(c.items), k) : []).filter(g => phrased === undefined || partLike(t.sheet, g.item) || isTool(g.item))).filter(g => !COMFORT.test(g.item) && !EVERYDAY.has(g.item) && g.item.length > 1 && !/^(new|old|good|bigger|better|more|other|another|replacement|spare|spares)$/.test(g.item) && !theOwn(t, c, g));
  for (const g of goods) if (g.spec === 'short') delete g.spec; // "one bolt short"
  if (isCalledFor(t, c) && goods.length) specAfter(t, c.items, c.vi + 1, goods.at(-1)!);
  const list = goods.length ? goods : fronted(t, c);
  if (!goods.length && list.length) specAfter(t, c.items, Math.max(c.vi + 1, 0) + (c.items[c.vi + 1]?.low === 'some' ? 1 : 0), list.at(-1)!);
  const both = bothNew(t);
  if (both) return both;
  if (!list.length) return undefined;
  condemn(t, list.map(g => g.item));
  const reasons = whys(t, c, k, list);
  return list.map((g, i) => ({ g, why: reasons[i] })).filter(x => !isMachine(t.sheet, x.g.item) || x.g.spec !== undefined).map(({ g, why }) => trim({ kind: 'want', item: g.item, qty: counted(t, g), spec: g.spec, for: why }) as Entry);
};

/** "couldn't find my reamer so that's another one to buy": what was just missed. */
const TO_GET = /\b(?:that's|thats|that is|so it's) (?:another|one|two|three|\d+)(?: more| other)?(?: one| thing| \w+)? (?:to (?:get|buy|order|find|track down)|for the (?:shopping )?list)$/;
/** "I need the big puller tomorrow", "I need my reamer back": a tool of one's own is no purchase. */
const theOwn = (t: Telling, c: Clause, g: Goods): boolean => {
  if (g.thing.to <= c.from) return false; // "somebody swiped my last gauge so I must buy another"
  const first = t.sheet.tokens[g.thing.np?.from ?? g.from]?.low ?? '';
  return /^(my|his|her|our|their|your)$/.test(first) || /^(the|that|those)$/.test(first) && (isTool(g.item) || c.prt.includes('back') || c.rest.some(i => i.low === 'back'));
};

/** What a person needs that no shop sells him for the machine. */
const COMFORT = /\b(tea|coffee|beer|pint|drink|nap|kip|rest|break|sleep|sandwich|holiday|lie down|luck|patience|dinner|lunch|supper|time|hand|help|brain|head examined|wash|bath|shower|minute|moment|word|miracle)$|\btea\b/;
/** "…on the list": the list is no part of what goes on it. */
const offList = (items: readonly Item[]): readonly Item[] => {
  const k = items.findIndex((i, n) => /^(on|to|onto)$/.test(i.low) && /\blist$/.test(items[n + 1]?.np?.said ?? ''));
  return k > 0 ? items.slice(0, k) : items;
};

/** "need one", "I need another, inch and a half by two", "…need a dozen": so many of what was named before. */
function single(t: Telling, c: Clause, k: number): Goods[] | undefined {
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

/** "pitted bad… need new ones", "perished. Need a seal": what was found faulty and is to be got is to be replaced. */
function condemn(t: Telling, items: readonly string[]): void {
  for (const x of t.told) if (x.entry.kind === 'finding' && items.includes(x.entry.part) && !/\b(missing|gone|lost)\b/.test(x.entry.condition)) x.entry.verdict ??= 'replace';
}

/** "points pitted, condenser cracked. need both new": everything just found so is to be replaced. */
function bothNew(t: Telling): Entry[] | undefined {
  if (!/\bneed (both|all|them all|all of them|all three|all four|the lot|the pair)( of them)? new\b|\bboth need(ed)? new\b/.test(lowText(t))) return undefined;
  const found = t.told.filter(x => x.entry.kind === 'finding').slice(/\b(both|pair)\b/.test(lowText(t)) ? -2 : -4);
  for (const x of found) if (x.entry.kind === 'finding') x.entry.verdict ??= 'replace';
  return found.length ? found.map(x => ({ kind: 'want', item: (x.entry as { part: string }).part }) as Entry) : undefined;
}

/** "oh and a gland nut", "no wait, two master links": goods said on after a want; after "no" they put the last one right. */
function continued(t: Telling): Entry[] | undefined {
  const c = t.clause, last = t.told.at(-1);
  if (last?.entry.kind !== 'want' || t.clauses[t.at - 1] !== last.clause || c.pred !== 'none' || c.verb || moneyClause(t, c)) return undefined;
  const onto: Goods = { item: last.entry.item, qty: 2, from: c.from, to: c.from, thing: { name: last.entry.item, from: c.from, to: c.from, plural: false }, ...(last.entry.spec ? { spec: last.entry.spec } : {}) };
  if (specAfter(t, c.items, 0, onto) === c.items.length - Number(c.items.at(-1)?.t === 'mark') && onto.spec) { last.entry.spec = onto.spec; last.clause = c; return []; } // "…, class 10.9"
  const goods = goodsIn(t, c.items, 0).filter(g => partLike(t.sheet, g.item));
  if (!goods.length || c.items.some(i => i.t === 'adj' && CONDITION.has(i.low) && !i.np)) return undefined;
  const lead = t.sheet.tokens.slice(Math.max(0, c.from - 3), c.from + 1).map(x => x.low).join(' ');
  const again = goods[0]!;
  if (/\b(no|wait|make that|sorry)\b/.test(lead)) {
    const was = t.told.findLast(x => x.entry.kind === 'want' && nameKey(x.entry.item) === nameKey(again.item));
    if (was?.entry.kind === 'want') { was.entry.item = again.item; if (again.qty !== undefined) was.entry.qty = again.qty; if (again.spec) was.entry.spec = again.spec; return []; }
  }
  return goods.filter(g => !COMFORT.test(g.item)).map((g, i) => trim({ kind: 'want', item: g.item, qty: counted(t, g), spec: g.spec, for: forAfter(t, c, g.to, goods[i + 1]?.from ?? c.to, goods) }) as Entry);
}

/** "two pump leathers, two and a half inch. that's what I need": the things stand before. */
function fronted(t: Telling, c: Clause): ReturnType<typeof goodsIn> {
  const own = c.subj.filter(s => !s.carried);
  if (own.length && /^(i|we|need)/.test(c.who ?? 'need')) return goodsIn(t, c.items, 0);
  const before = t.clauses.slice(Math.max(0, t.at - 2), t.at).filter(p => p.pred === 'none' && !p.verb && !t.told.some(x => x.clause === p)).findLast(p => p.items.some(i => i.np));
  if (!before) return [];
  (before as Clause & { spoken?: boolean }).spoken = true;
  return goodsIn(t, before.items, 0);
}

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

/** "one adapter", "1 seal": a single thing that was counted; "a seal" was not. */
const counted = (t: Telling, g: Goods): number | undefined => (g.qty !== undefined && (g.qty > 1 || /^(1|one)$/.test(t.sheet.tokens[g.thing.np?.from ?? g.from]?.low ?? '') && !g.thing.np?.stands) ? g.qty : undefined);

/** The job or part that waits on each thing: said after it ("for the spindle"), after the last ("to go with it"), before all ("for the drain plug I need"), or the part that needs them. */
function whys(t: Telling, c: Clause, k: number, list: readonly Goods[]): (string | undefined)[] {
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

/** "for the main drive", "for it" between two tokens. */
function forAfter(t: Telling, c: Clause, from: number, to: number, list: readonly Goods[]): string | undefined {
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
