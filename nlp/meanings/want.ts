import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Item } from '../clauses/items.ts';
import { nameKey } from '../../domain/model/names.ts';
import { isMachine, partLike } from '../clauses/things.ts';
import { CONDITION } from '../words/conditions.ts';
import { moneyClause } from './lib/money.ts';
import { textOf } from '../dimensions/part/phrase.ts';
import { goodsIn, type Goods } from './lib/goods.ts';
import { specAfter } from './lib/spec.ts';
import { trim } from './lib/fields.ts';
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
  const more = continued(t);
  if (more) return more;
  const k = phrased ?? (isCalledFor(t, c) ? 0 : needed(t, c));
  if (k === undefined) return undefined;
  const goods = (single(t, c, k) ?? (k < c.items.length && k >= 0 ? goodsIn(t, offList(c.items), k) : []).filter(g => phrased === undefined || partLike(t.sheet, g.item))).filter(g => !COMFORT.test(g.item));
  const list = goods.length ? goods : fronted(t, c);
  if (!goods.length && list.length) specAfter(t, c.items, Math.max(c.vi + 1, 0) + (c.items[c.vi + 1]?.low === 'some' ? 1 : 0), list.at(-1)!);
  const both = bothNew(t);
  if (both) return both;
  if (!list.length) return undefined;
  if (/\bnew\b/.test(lowText(t))) condemn(t, list.map(g => g.item));
  const reason = isCalledFor(t, c) ? undefined : why(t, c, k);
  const forAt = c.items.findIndex(i => i.low === 'for');
  const owner = forAt >= 0 ? [...list].reverse().find(g => g.to <= c.items[forAt]!.from + 1) ?? list.at(-1) : undefined;
  return list.filter(g => !isMachine(t.sheet, g.item)).map(g => trim({ kind: 'want', item: g.item, qty: g.qty !== undefined && g.qty > 1 ? g.qty : undefined, spec: g.spec, for: owner && g !== owner ? undefined : reason }) as Entry);
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
  const it = c.items[k], dozen = it?.np && /^(dozen|couple|pair|few)$/.test(it.np.said) && c.items[k + 1]?.low !== 'of';
  if (!it || !dozen && !(/^(one|another)$/.test(it.low) && !c.items[k + 1]?.np)) return undefined;
  const before = dozen ? fronted(t, c)[0] : undefined, topic = t.memory.topic();
  if (!before && !topic) return [];
  const g: Goods = before ?? { item: topic!.name, from: it.from, to: it.to, thing: topic! };
  if (dozen) g.qty = /dozen/.test(it.np!.said) ? 12 * (it.np!.count ?? 1) : 2;
  specAfter(t, c.items, c.items[k + 1]?.low === 'of' && c.items[k + 2]?.t === 'pron' ? k + 3 : k + 1, g);
  return [g];
}

/** "need new ones" after "pitted bad": the old ones are to be replaced. */
function condemn(t: Telling, items: readonly string[]): void {
  const last = t.told.at(-1);
  if (last?.entry.kind === 'finding' && items.includes(last.entry.part)) last.entry.verdict ??= 'replace';
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
  return goods.map(g => trim({ kind: 'want', item: g.item, qty: g.qty !== undefined && g.qty > 1 ? g.qty : undefined, spec: g.spec }) as Entry);
}

/** Item index where the wanted things begin; undefined when the clause wants nothing. */
function needed(t: Telling, c: Clause): number | undefined {
  const text = lowText(t);
  const items = c.items;
  const lead = t.clauses[t.at - 1];
  if (c.join === ':' && lead && /^(still |also |just )*((to|must) (get|buy|order|find)|needs?|needed|wants?|wanted|shopping( list)?|buy|list|parts( needed| wanted| to get)?|to buy list)[ :,.]*$/.test(lowText(t, lead))) { (lead as Clause & { spoken?: boolean }).spoken = true; return 0; }
  if (c.subj.some(s => !s.carried || !/^(i|we)$/.test(c.who ?? 'i')) && !/^(i|we)$/.test(c.who ?? '') && items.findIndex(i => i.base === 'need' || i.base === 'want') < 0) return undefined;
  if (/^(it|that|this|they)$/.test(c.who ?? '') && !(/^that$/.test(c.who ?? '') && /what (i|we) need/.test(text)) && !items.some(i => i.base === 'need' || i.base === 'want')) return undefined;
  const at = (re: RegExp): number => items.findIndex(i => re.test(i.base ?? i.low));
  const buy = items.findIndex((i, n) => i.t === 'verb' && /^(buy|get|order|find|source|pick|purchase|grab|fetch)$/.test(i.base ?? '') && (items[n - 1]?.t === 'to' || items[n - 1]?.t === 'modal' || n === c.vi && c.reality !== 'deed' || n === 0 && i.form === 'base'));
  if (buy >= 0 && (c.reality === 'must' || c.reality === 'plan' && /\b(need|have|got|must|going) to\b|'ll\b|will\b/.test(text) || items[buy]!.form === 'base' && buy <= 1)) {
    if (items[buy]!.base === 'get' && items[buy + 1]?.t !== 'np' && !items[buy + 1]?.f && items[buy + 1]?.t !== 'det') return undefined;
    if (items.slice(buy + 1).some(i => i.t === 'verb' && (i.form === 'part' || i.form === 'past')) && items[buy]!.base === 'get') return undefined;
    if (items[buy]!.base === 'get' && t.sheet.tokens[items[buy + 1]!.from]?.low === 'the' && items[buy + 2]?.t === 'adj') return undefined; // "get the manifold welded"
    if (items[buy]!.base === 'get' && items.slice(buy + 1).some(i => i.t === 'prt' && /^(off|out|on|in|back|up|down|apart|loose)$/.test(i.low) && !items[items.indexOf(i) + 1]?.np)) return undefined;
    if (items[buy]!.base === 'find' && c.reality !== 'must') return undefined;
    return items[buy]!.base === 'pick' ? buy + 2 : buy + 1;
  }
  const have = items.findIndex((i, n) => i.low === 'have' && items[n - 1]?.t === 'to' && /^(got|need|have|'ve)$/.test(items[n - 2]?.low ?? ''));
  if (have > 0) return have + 1;
  if (/^(he|they|she|person|you)$/.test(c.who ?? '')) return undefined;
  const need = items.findIndex(i => i.t === 'verb' && i.base === 'need' || i.t === 'verb' && i.base === 'want' && i.low !== 'wanted');
  if (need >= 0 && items[need + 1]?.t !== 'to') {
    if (/^(it|that|this|they|them|both)$/.test(c.who ?? '') || items[need]!.base === 'want' && c.subj.length && !c.who) return partNeeds(items, need);
    if (items[need]!.form === 'past' && /^(i|we)$/.test(c.who ?? '') || priced(items, need)) return undefined;
    if (items[need]!.base === 'want' && !c.who && need > 0) return undefined;
    if (c.subj.length && !/^(i|we)$/.test(c.who ?? '') && !c.carriedSubj) return partNeeds(items, need);
    const after = items[need + 1];
    if (after?.low === 'another' && !items[need + 2]?.np) return need + 1;
    if (!after || after.t === 'mark' || after.low === 'some' || after.t === 'det' && items.slice(need + 2).every(i => !i.np)) return items.length;
    if (after.t === 'verb' && after.form === 'ing') return undefined;
    if (/^(a hand|help|someone|somebody|a helper)/.test(items.slice(need + 1).map(i => i.low).join(' '))) return undefined;
    return need + 1;
  }
  const short = /\b(short (of|on)|run out of|ran out of|out of|low on|down to my last|missing|lacking)\b/.exec(text);
  if (short && /^(i|we|im|i'm|we're|still|short|out|all|nearly|almost|running|am|run)\b/.test(text.replace(/^(and|but|so|also|okay) /, '')) && !/\b(out of (round|true|line|square|the|it|here|time|patience|puff|breath|hours|daylight|light|steam))\b/.test(text)) {
    const n = items.findIndex((i, x) => (i.low === 'of' || i.low === 'on') && x > 0);
    return n >= 0 ? n + 1 : undefined;
  }
  const lacking = items.findIndex((i, n) => i.low === 'short' && items[n + 1]?.np !== undefined && items[n + 1]!.np!.count !== undefined);
  if (lacking >= 0 && /^(i|we)$/.test(c.who ?? 'i')) return lacking + 1;
  if (/^(still |also |just )?(to (get|buy|order)|shopping list|on the (shopping )?list|list)\b/.test(text)) return Math.max(at(/^(get|buy|order|list)$/), 0) + 1;
  return undefined;
}

/** "wants 48 dollars for a rod", "need two hours": a price or a length of time is no thing to be got. */
const priced = (items: readonly Item[], need: number): boolean => {
  const f = items[need + 1]?.f, after = items[need + 2];
  return f?.dim === 'span' || f?.dim === 'money' && (f.sure === 'certain' || f.value.per !== undefined || !after || /^(for|on|plus|and|each|apiece|a|to)$/.test(after.low)) || f?.dim === 'number' && /^(for|each|apiece|plus)$/.test(after?.low ?? '') && items[need]!.form === 's';
};

/** "the left wheel needs a castle nut": wanted only where what follows is a thing with a price, not a treatment. */
function partNeeds(items: readonly Item[], need: number): number | undefined {
  const np = items.slice(need + 1).find(i => i.np)?.np;
  if (!np || /^(a |some |another )?(good |proper |thorough |bloody good |right |full |quick |serious )*(clean|scrub|wash|polish|sand|paint|coat|lick|rub|grease|oil|weld|skim|look|bath|soak|drink|service|rebuild|tidy|seeing to|going over|blast)\b/.test(items.slice(need + 1).map(i => i.low).join(' ')) || /\b(clean|cleaning|coat|coats|wash|look|service|rebuild|repair|work|attention|paint|sand|sanding|polish|going over|weld|welding|skim|regrind|adjustment|adjusting|tweak|drink|time|more|lot|bit|help|hand|rest|day|bath|grease|oil|oiling|greasing|top up|soak|scrub|straightening|patch|good \w+)$/.test(np.said)) return undefined;
  return need + 1;
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

/** "for the main drive", "for it": the job or part that waits; a part that "needs" it says so itself. */
function why(t: Telling, c: Clause, k: number): string | undefined {
  const f = c.items.findIndex((i, n) => n > k && i.low === 'for' && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron' && /^(it|that|them|this)$/.test(c.items[n + 1]!.low)));
  if (f >= 0) {
    const next = c.items[f + 1]!;
    if (!next.np) return t.memory.topic()?.name ?? t.told.at(-1)?.entry.kind;
    if (isMachine(t.sheet, next.np.name)) return undefined;
    if (/^(pair|lot|both|set)$/.test(next.np.said)) return t.memory.topic()?.name;
    if (next.np.stands) return t.memory.sided(next.np.said, t.sheet) ?? undefined;
    let to = next.to;
    for (let n = f + 2; c.items[n] && /^(of|on|in)$/.test(c.items[n]!.low) && c.items[n + 1]?.np; n += 2) to = c.items[n + 1]!.to;
    return to === next.to ? next.np.name : textOf(t.sheet, next.np.nameFrom, to).toLowerCase();
  }
  const to = c.items.findIndex((i, n) => n > k && i.t === 'to' && c.items[n + 1]?.t === 'verb' && n > k);
  if (to > k && c.items.slice(k, to).some(i => i.np)) {
    const verb = c.items[to + 1]!, obj = c.items.slice(to + 2).find(i => i.np);
    if (obj?.np) return `${verb.base} the ${obj.np.name}`;
  }
  const named = forTopic(t, c);
  if (named) return named;
  const subj = c.subj.find(s => !s.machine && !s.carried && /^(need|want)$/.test(c.verb?.base ?? '') && !/^(i|we)$/.test(c.who ?? ''));
  return subj?.name;
}
