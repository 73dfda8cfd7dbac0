import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Item } from '../clauses/items.ts';
import { nameKey } from '../../domain/model/names.ts';
import { isClass } from '../words/verbs.ts';
import { isMachine, partLike } from '../clauses/name-kinds.ts';
import { EVERYDAY } from '../words/everyday.ts';
import { CONDITION } from '../words/conditions.ts';
import { moneyClause } from './lib/money.ts';
import { goodsIn, type Goods } from './lib/goods.ts';
import { specAfter } from './lib/spec.ts';
import { nounClasses } from '../words/nouns.ts';
import { isTool, trim } from './lib/fields.ts';
import { needed } from './lib/needing.ts';
import { isCalledFor, opensList, phrasedWant, underList } from './lib/wanting.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';
import { forAfter, whys } from './want/what-for.ts';
import { fronted, single } from './want/named-before.ts';

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

/** "one adapter", "1 seal": a single thing that was counted; "a seal" was not. */
const counted = (t: Telling, g: Goods): number | undefined => (g.qty !== undefined && (g.qty > 1 || /^(1|one)$/.test(t.sheet.tokens[g.thing.np?.from ?? g.from]?.low ?? '') && !g.thing.np?.stands) ? g.qty : undefined);
