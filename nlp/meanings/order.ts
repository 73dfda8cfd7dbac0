import { DateTime } from 'luxon';
import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { bare } from '../clauses/as-said.ts';
import { textOf } from '../dimensions/part/text-of.ts';
import { goodsIn, isSeller, type Goods } from './lib/goods.ts';
import { goodsAfterMoney } from './bought/goods-had.ts';
import { dayIn } from './lib/day.ts';
import { sourceIn, trim } from './lib/fields.ts';
import { spanForward, tailText } from './lib/reach.ts';
import { moneyClause, sumsIn, total } from './lib/money.ts';
import { sourceSubject } from './lib/source.ts';
import { bareSeller, sellerBefore } from './lib/sellers.ts';
import { howMany, pricedSingly } from './lib/how-many.ts';
import { byPrice, chose, chosen, quoteBy, quoteOf } from './lib/quoted.ts';
import { comingFrom, deposited, onTheWay, sendsMe, theyHave } from './order/on-the-way.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** Ordered and not here yet: "ordered two from the brake supply, 27 each", "new ones are on order". */
export const order: Meaning = t => {
  if (/\bin order\b/.test(lowText(t)) && !/\border(ed|ing)\b/.test(lowText(t))) return undefined;
  const c = t.clause;
  const way = c.neg || c.asks || /^(if|unless|until|till|before|when|that)$/.test(c.sub ?? '') || !/^(deed|must|plan)$/.test(c.reality) ? undefined : onTheWay(t);
  if (c.neg || c.asks || c.reality !== 'deed' && !way || c.sub && /^(if|unless|until|till|before|when|that)$/.test(c.sub)) return undefined;
  const text = lowText(t);
  const verb = c.verb?.base;
  const fragment = c.pred === 'none' ? c.items.findIndex((i, k) => k > 0 && /^(order|reorder|backorder)$/.test(i.base ?? '') && /^(past|part)$/.test(i.form ?? '')) : -1; // "six plugs at 3.50 ordered from the factor"
  const placed = /^(order|reorder|backorder)$/.test(verb ?? '') && c.verb!.form !== 'base' && c.verb!.form !== 'ing' || fragment > 0;
  const standing = /\b(on|on back) ?-?(order|back ?order)\b/.test(text) || /\bput (in )?(an|the|my) order\b|\bplaced (an|the) order\b|\border( is|'s| has gone|'s gone)? (in|placed)\b|\b(?:sent|wrote|written|rang|phoned|mailed) (?:off|away) (?:to .+ )?for\b|\bbackordered\b|\bput in for\b/.test(text);
  const taken = !placed && !standing && chose(t, c) ? accepted(t) : undefined;
  if (taken) return taken;
  const deposit = deposited(c), sends = sendsMe(t, c) ?? theyHave(c) ?? deposit, awaited = !placed && !standing && !sends && comingFrom(t, c);
  if (!placed && !standing && !sends && !awaited && !way || /\b(had|'d) (already )?ordered\b|\bordered (the |a )?wrong\b/.test(text) || /\b(almost|nearly|never|forgot)\b/.test(text)) return undefined;
  const below = t.clauses[t.at + 1]?.join === ':' ? t.clauses[t.at + 1] : undefined; // "ordered: belt, hose, two clamps"
  const end = spanForward(t, n => n === below && !way || continues(t, n));
  const k = sends ?? (!placed && (c.obj.length === 0 || /^(order|back ?order)$/.test(c.obj[0]!.np?.said ?? '')) ? Math.max(0, c.items.findIndex(i => i.low === 'for') + 1 || (c.pred === 'none' ? c.items.findIndex(i => /^(order|back ?order)$/.test(i.np?.said ?? '')) + 1 : 0)) : c.vi + 1);
  const subjects = awaited || !sends && c.obj.length > 0 && c.obj.every(o => o.carried && !c.items.some(i => i.np !== undefined && i.np === o.np)) || !c.obj.length && c.subj.length > 0 && c.subj[0]!.name !== 'order' && !/^(i|we)$/.test(c.who ?? '');
  const goods = subjects ? [] : goodsIn(t, c.items, k).filter(g => !isSeller(g.item) && !/^(due|eta|order|day|week|day week|delivery|shipping)$/.test(g.item) && (!c.obj.length || c.obj.some(o => o.from === g.from) || g.from > c.obj[0]!.from));
  const list = way && !sends ? way : goods.length ? goods : (c.obj.length ? c.obj : c.subj).map(s => ({ item: s.name, qty: s.count, from: s.from, to: s.to, thing: s }));
  if (!list.length && below) for (const g of goodsIn(t, below.items, 0)) list.push({ ...g, qty: g.qty });
  const topic = t.memory.topic();
  if (!list.length && topic) list.push({ item: topic.name, from: c.from, to: c.to, thing: topic, qty: undefined });
  if (!list.length) return undefined;
  const reach = t.clauses.slice(t.at, end + 1);
  const sums = deposit ? {} : sumsIn(t, c.from, reach.at(-1)!.to, true);
  const went = t.clauses.slice(Math.max(0, t.at - 3), t.at).findLast(x => x.verb?.base === 'go');
  const source = (went ? withSeller(t, went) : undefined) ?? reach.map(r => sourceIn(t.sheet, r.items)?.source).find(Boolean) ?? sourceSubject(t, reach) ?? reach.slice(1).map(r => sourceSubject(t, [r], true)).find(Boolean) ?? named(t, reach) ?? bareSeller(t, reach) ?? (sends ? c.obj.find(o => isSeller(o.name))?.name : undefined) ?? sellerBefore(t);
  const placedOn = placed ? c.items.slice(c.vi + 1, c.vi + 3).find((i, n) => i.f?.dim === 'when' && (n === 0 || c.items[c.vi + 1]?.low === 'on')) : undefined; // "ordered Tuesday" looks back
  const gone = /\b(was|were) (due|expected|promised|supposed)\b/.test(text) ? pastDay(t, c) : undefined;
  const expected = gone ?? reach.map(r => dayIn(t, placedOn && r === c ? { ...c, from: placedOn.to, items: c.items.filter(i => i.from >= placedOn.to) } : r, true)).find(Boolean);
  const each = placed && !way && !deposit ? singlyPriced(t, c, list, reach.at(-1)!.to) : undefined;
  if (each) return each.map(({ g, price }, i) => trim({ kind: 'order', item: fullName(t, g.item), source, price, shipping: sums.shipping === 0 || i === 0 ? sums.shipping : undefined, expected, qty: g.qty && g.qty > 1 ? g.qty : undefined }) as Entry);
  const carried = list.every(g => g.thing.carried || g.thing === topic);
  const heard = /\b(cheap(er|est)|dear(er|est)) (one|of|offer|quote)\b/.test(text) ? byPrice(t, /cheap/.test(text)) : source !== undefined && !/^(him|her|them)$/.test(source) ? quoteBy(t, source) : quoteOf(t, carried ? undefined : list[0]!.item);
  const q = heard && sums.price === undefined && (carried || sameThing(heard.item, list[0]!.item)) ? heard : undefined;
  if (list.length === 1 && sums.price !== undefined && list[0]!.qty === sums.price && list[0]!.thing.count === undefined) list[0]!.qty = undefined; // "ordered the seat, ninety": one figure is one thing
  if (list.length === 1 && (list[0]!.qty === undefined || list[0]!.qty < 2) && (sums.per === 'each' || sums.price === undefined)) { const n = howMany(t, carried && t.at > 0 ? [t.clauses[t.at - 1]!, ...reach] : reach, q?.item ?? list[0]!.item); if (n !== undefined) list[0]!.qty = n; }
  return list.map((g, i) => trim({
    kind: 'order', item: q && carried ? q.item : fullName(t, g.item), source: q?.source ?? source, price: total(sums, g.qty) === undefined ? forAll(t, q, g.qty) : i === 0 || list.length === 1 ? total(sums, g.qty) : undefined,
    shipping: i === 0 || sums.shipping === 0 ? sums.shipping ?? q?.shipping : undefined, expected, qty: g.qty && g.qty > 1 ? g.qty : undefined, core: sums.core, tax: sums.tax,
  }) as Entry);
};

/** From here on a bare number beside a thing is what it is known by and no price: "a bearing, 6308". */
const NO_PRICE = 1000;
/** "a belt at 12 and two seals, 4 each": several things, each with its own sum up to the next one; undefined unless all have one. */
function singlyPriced(t: Telling, c: Clause, list: readonly Goods[], end: number): { g: Goods; price: number }[] | undefined {
  const all = [...list, ...goodsAfterMoney(t, c, list)].filter(g => !g.thing.carried && !isSeller(g.item)).sort((a, b) => a.from - b.from);
  if (all.length < 2) return undefined;
  const priced = all.flatMap((g, i) => {
    const own = sumsIn(t, g.to, all[i + 1]?.from ?? end, true), named = own.price !== undefined && own.price >= NO_PRICE && !t.sheet.found.some(f => f.dim === 'money' && f.value.certainCurrency && f.from === own.at);
    const qty = g.qty === own.price && g.thing.count === undefined ? undefined : g.qty, price = named ? undefined : total(own, qty); // "a belt, 12, and…": one figure is one thing
    return price === undefined ? [] : [{ g: { ...g, qty }, price }];
  });
  return priced.length === all.length ? priced : undefined;
}

/** "went with the catalogue house, they say a week": a price heard before was taken. */
function accepted(t: Telling): Entry[] | undefined {
  const c = t.clause, q = chosen(t, c);
  if (!q) return undefined;
  if (t.clauses.slice(t.at + 1, t.at + 4).some(n => /^(order|buy|pay)$/.test(n.verb?.base ?? '') && !n.neg)) return []; // "…and ordered it"
  const end = spanForward(t, n => continues(t, n));
  const reach = t.clauses.slice(t.at, end + 1), sums = sumsIn(t, c.from, reach.at(-1)!.to, false);
  const expected = reach.map(r => dayIn(t, r, true)).find(Boolean), qty = howMany(t, reach, q.item);
  return [trim({ kind: 'order', item: q.item, source: q.source, price: total(sums, qty) ?? forAll(t, q, qty), shipping: sums.shipping ?? q.shipping, expected, qty: qty ?? q.qty }) as Entry];
}

/** The quoted price of so many, where it was quoted for one. */
const forAll = (t: Telling, q: { item: string; price: number } | undefined, qty: number | undefined): number | undefined =>
  (q && qty && qty > 1 && pricedSingly(t, q.item, q.price) ? Math.round(q.price * qty * 100) / 100 : q?.price);

/** "were due Wednesday": the one gone by. */
function pastDay(t: Telling, c: Clause): string | undefined {
  const f = dims(c.items, 'when')[0], day = f?.value.from, words = f ? t.sheet.tokens.slice(f.from, f.to).map(x => x.low).join(' ') : '';
  if (!day || !/^(on )?(last )?(mon|tues|wednes|thurs|fri|satur|sun)day$/.test(words) || day <= t.sheet.ctx.at.slice(0, 10)) return undefined;
  return DateTime.fromISO(day).minus({ days: 7 }).toISODate() ?? undefined;
}

/** "seal ordered" after "need a mech seal": the fuller name. */
const fullName = (t: Telling, item: string): string => {
  const was = t.prior.concat(t.told.map(x => x.entry)).findLast(e => e.kind === 'want' && e.item.endsWith(` ${item}`));
  return was && 'item' in was ? was.item : item;
};
const sameThing = (a: string, b: string): boolean => a === b || a.split(' ').at(-1)!.replace(/s$/, '') === b.split(' ').at(-1)!.replace(/s$/, '');

/** "went with the other chap and ordered it" */
function withSeller(t: Telling, c: Clause): string | undefined {
  const k = c.items.findIndex((i, n) => /^(with|for)$/.test(i.low) && c.items[n + 1]?.np);
  return k >= 0 ? bare(textOf(t.sheet, c.items[k + 1]!.from, c.items[k + 1]!.to)) : undefined;
}

/** A clause that goes on about the order: price, when it should be here, what the seller says. */
function continues(t: Telling, c: Clause): boolean {
  if (c.asks || c.verb?.base === 'order') return false;
  const text = lowText(t, c);
  if (/^(please |to )?send (it|them|one|her)\b/.test(text) || /^(he|she|they) (says?|said|reckons?)$/.test(text) || /^(i|we)'ll have (it|them|her)\b/.test(text) && dims(c.items, 'when').length) return true;
  if (/^(and |but |so )?((it|they|that|he|she|the \w+|\w+ \w+|supposed|should|due|expected|says?|said|reckons?|promised|will|'ll|shipping|free|plus|delivery)\b)/.test(text) && (dims(c.items, 'when').length || dims(c.items, 'span').length || dims(c.items, 'money').length || /\b(shipping|postage|carriage|delivery|each|be here|arrive|land)\b/.test(text)) && !/\b(came|arrived|showed|went|is off|is on)\b/.test(text)) return true;
  if (/^(should|supposed|due|eta|expected|promised|promises|says|said|reckons|told|here|delivery|arriving|landing|coming|ready)\b/.test(text) && (dims(c.items, 'when').length || dims(c.items, 'span').length)) return true;
  if (((/^(he|she|they|person)$/.test(c.who ?? '') || sourceSubject(t, [c]) !== undefined) && /^(say|reckon|promise|tell|think|swear|guess|quote|figure|want|ask)$/.test(c.verb?.base ?? '') || /\b(he|she|they) ?('ll|will) have (it|them|one) (here|to me|with me|ready|out)\b/.test(text)) && (dims(c.items, 'when').length || dims(c.items, 'span').length) && !dims(c.items, 'money').length) return true;
  if (dims(c.items, 'span').length && c.items.some(i => /^(he|she|they)$/.test(i.low)) && c.items.some(i => /^(say|reckon|promise|tell)$/.test(i.base ?? ''))) return true; // "three weeks he says"
  return c.pred === 'none' && !c.subj.some(s => !s.carried && !isSeller(s.name)) && (moneyClause(t, c) || tailText(text) || sourceSubject(t, [c], true) !== undefined || sourceIn(t.sheet, c.items) !== undefined || c.items.filter(i => i.t !== 'mark').every(i => i.f?.dim === 'when' || i.f?.dim === 'span' || i.t === 'adv' || i.t === 'prep') || bareSum(c) || sumFirst(c));
}

/** "two hundred ten with the bolts thrown in": a clause that begins with a figure and says no more than what goes with it. */
const sumFirst = (c: Clause): boolean => c.items[0]?.f?.dim === 'number' && (!c.items[1] || c.items[1].t === 'mark' || /^(with|even|flat|all|plus|for|in)$/.test(c.items[1].low));

/** "410, ten days": a figure alone beside when it comes. */
const bareSum = (c: Clause): boolean => c.items.every(i => i.t === 'mark' || /^(number|span|when)$/.test(i.f?.dim ?? '')) && dims(c.items, 'number').length === 1 && c.items.some(i => /^(span|when)$/.test(i.f?.dim ?? ''));

/** "ordered now, bearing house in town, 59.95": a seller named between commas. */
function named(t: Telling, reach: readonly Clause[]): string | undefined {
  for (const c of reach) for (const [k, i] of c.items.entries()) {
    if (i.np && !i.np.stands && (k === 0 || c.items[k - 1]!.low === ',') && t.sheet && k > 0) {
      const s = sourceSubject(t, [{ ...c, items: c.items.slice(k), subj: [] }], true);
      if (s) return s;
    }
  }
  return undefined;
}
