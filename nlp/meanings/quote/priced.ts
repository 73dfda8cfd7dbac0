import type { Clause } from '../../clauses/clause.ts';
import { isMachine, isPlaceNoun } from '../../clauses/name-kinds.ts';
import { singular } from '../../words/nouns.ts';
import { goodsIn, isSeller, type Goods } from '../lib/goods.ts';
import { sourceIn } from '../lib/fields.ts';
import { moneyClause, unitAt } from '../lib/money.ts';
import { subjectSpan } from '../lib/source.ts';
import { sellersIn } from '../lib/sellers.ts';
import { lowText, type Telling } from '../telling.ts';

/** What the price is of: a thing that is not the seller; else what was last wanted or named. */
export function pricedThing(t: Telling, c: Clause): Goods | undefined {
  const within = sellerSpans(t, c);
  const list = goodsIn(t, c.items, 0).filter(g => !isSeller(g.item) && !within.some(([a, b]) => g.from >= a && g.to <= b) && !NO_GOODS.test(g.item) && !isMachine(t.sheet, g.item) && !keptIn(c, g) && !unitAt(t, g.thing.np?.from ?? g.from));
  const one = list.length ? undefined : goodsIn(t, c.items, 0).find(g => unitAt(t, g.thing.np?.from ?? g.from));
  const whole = one && t.memory.all().find(x => singular(x.name).endsWith(singular(one.item)));
  if (one) return whole ? { item: whole.name, from: c.from, to: c.to, thing: whole } : one; // "the dealer wants 139 a bar", of the rasp bars just named
  if (list[0] && /\bsame\b/.test(lowText(t))) { // "the same bearings"
    const was = t.prior.concat(t.told.map(x => x.entry)).findLast(e => (e.kind === 'quote' || e.kind === 'want' || e.kind === 'order') && e.item.endsWith(list[0]!.item));
    if (was && 'item' in was) return { ...list[0], item: was.item };
  }
  const f = c.items.findIndex(i => i.low === 'for');
  const after = f >= 0 ? goodsIn(t, c.items, f + 1)[0] : undefined;
  if (after && (list.some(g => g.item === after.item) || !list.length && !isSeller(after.item) && moneyClause(t, c))) return after;
  for (const g of list) g.item = g.item.replace(/ (price|quote)$/, '');
  const sold = list.filter(g => !NO_GOODS.test(g.item));
  if (sold.length) return sold[0];
  const about = askedAbout(t);
  if (about) return about;
  const topic = t.memory.topic() && { ...t.memory.topic()!, name: t.memory.topic()!.name.replace(/ (prices?|quotes?|costs?)$/, '') };
  const earlier = t.told.map(x => x.entry).findLast(e => e.kind === 'quote' || e.kind === 'want' || e.kind === 'finding');
  const name = earlier && 'item' in earlier ? earlier.item : headed(t) ?? topic?.name;
  return name ? { item: name.replace(/ prices?$/, ''), from: c.from, to: c.to, thing: topic ?? { name, from: c.from, to: c.to, plural: false } } : undefined;
}

/** "had one on the shelf", "in stock": where the seller keeps it is not what he sells. */
const keptIn = (c: Clause, g: Goods): boolean => {
  const k = c.items.findIndex(i => i.np !== undefined && i.from <= g.from && g.from < i.to);
  return k > 0 && /^(on|in|under|behind)$/.test(c.items[k - 1]!.low) && (isPlaceNoun(c.items[k]!.np!) || g.item === 'stock');
};

/** Words beside a price that name no thing sold. */
export const NO_GOODS = /^(robbery|daylight robbery|highway robbery|joke|rip-off|steal|fortune|cheapest|dearest|best|price|prices|shipping|post|postage|carriage|delivery|freight|tax|vat|core|core charge|quote|quotation|estimate|figure|offer|reply|answer|change|cash|trade|each|lot|whole lot|set|pair|roll|box|length|bag|tin|can|dozen|piece|job|repair|labour|labor|work|guarantee|warranty|manners|trouble|phone|telephone|email|mind|deal|bargain|total|all|asking|bus|boat|train|ferry|carrier|courier)$|\b(ship|post|shipping|carriage|postage|freight|fiver|tenner|bucks|quid|pounds?|dollars?)$/;

/** Tokens of the clause that name who sells. */
export function sellerSpans(t: Telling, c: Clause): [number, number][] {
  const src = sourceIn(t.sheet, c.items), subject = subjectSpan(t, [c]);
  return [...(src ? [[c.items[src.at]!.from, c.items[src.to - 1]!.to] as [number, number]] : []), ...(subject ? [[subject.from, subject.to] as [number, number]] : []), ...sellersIn(t, c.items).map(([k, to]): [number, number] => [c.items[k]!.from, c.items[to - 1]!.to])];
}

/** "rang the mill about a drum belt": what was asked for just before. */
function askedAbout(t: Telling): Goods | undefined {
  for (const p of t.clauses.slice(Math.max(0, t.at - 2), t.at).reverse()) {
    const k = p.items.findIndex((i, n) => n > p.vi && /^(about|for|on|re|regarding|after|over)$/.test(i.low) && p.items[n + 1]?.np && !p.items[n + 1]!.np!.stands);
    if (k >= 0 && p.verb && /^(ring|call|phone|email|message|text|contact|ask|write|speak|talk|enquire|inquire|see|quote|chase|shop|look|hunt)$/.test(p.verb.base!)) return goodsIn(t, p.items, k + 1).find(g => !isSeller(g.item));
  }
  return undefined;
}

/** "Bronze bar prices.": what the sellers after it are asked for. */
function headed(t: Telling): string | undefined {
  for (const p of t.clauses.slice(Math.max(0, t.at - 4), t.at).reverse()) {
    if (p.pred !== 'none') continue;
    const k = p.items.findIndex(i => i.np !== undefined && /(?:^| )(?:prices?|quotes?|costs?)$/.test(i.np.said)), said = p.items[k]?.np?.said;
    const of = /^(?:on|for|of)$/.test(p.items[k + 1]?.low ?? '') ? p.items[k + 2]?.np : undefined; // "Price on friction blocks:"
    if (said && (of || said.includes(' '))) return of?.name ?? said.replace(/ (?:prices?|quotes?|costs?)$/, '');
  }
  return undefined;
}
