import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { bare } from '../clauses/things.ts';
import { textOf } from '../dimensions/part/phrase.ts';
import { goodsIn, isSeller } from './lib/goods.ts';
import { dayIn } from './lib/day.ts';
import { sourceIn, trim } from './lib/fields.ts';
import { spanForward, tailText } from './lib/reach.ts';
import { moneyClause, sumsIn, total } from './lib/money.ts';
import { sourceSubject } from './lib/source.ts';
import { bareSeller, sellerBefore } from './lib/sellers.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** Ordered and not here yet: "ordered two from the brake supply, 27 each", "new ones are on order". */
export const order: Meaning = t => {
  const c = t.clause;
  if (c.neg || c.asks || c.reality !== 'deed' || c.sub && /^(if|unless|until|till|before|when|that)$/.test(c.sub)) return undefined;
  const text = lowText(t);
  const verb = c.verb?.base;
  const placed = /^(order|reorder|backorder)$/.test(verb ?? '') && c.verb!.form !== 'base' && c.verb!.form !== 'ing';
  const standing = /\b(on|on back) ?-?(order|back ?order)\b/.test(text) || /\bput in (an|the) order\b|\bplaced (an|the) order\b|\border (is |'s )?(in|placed)\b|\bsent (off|away) (to .+ )?for\b/.test(text);
  if (!placed && !standing || /\b(had|'d) (already )?ordered\b|\bordered (the |a )?wrong\b/.test(text) || /\b(almost|nearly|never|forgot)\b/.test(text)) return undefined;
  const end = spanForward(t, n => continues(t, n));
  const k = !placed && (c.obj.length === 0 || /^(order|back ?order)$/.test(c.obj[0]!.np?.said ?? '')) ? Math.max(0, c.items.findIndex(i => i.low === 'for') + 1) : c.vi + 1;
  const subjects = c.obj.length > 0 && c.obj.every(o => o.carried && !c.items.some(i => i.np !== undefined && i.np === o.np)) || !c.obj.length && c.subj.length > 0 && !/^(i|we)$/.test(c.who ?? '');
  const goods = subjects ? [] : goodsIn(t, c.items, k).filter(g => !isSeller(g.item) && !/^(due|eta|order|day|week|day week|delivery|shipping)$/.test(g.item) && (!c.obj.length || c.obj.some(o => o.from === g.from) || g.from > c.obj[0]!.from));
  const list = goods.length ? goods : (c.obj.length ? c.obj : c.subj).map(s => ({ item: s.name, qty: s.count, from: s.from, to: s.to, thing: s }));
  const under = !list.length && t.clauses[t.at + 1]?.join === ':' ? t.clauses[t.at + 1] : undefined; // "ordered: belt, hose, two clamps"
  if (under) { for (const g of goodsIn(t, under.items, 0)) list.push({ ...g, qty: g.qty }); (under as Clause & { spoken?: boolean }).spoken = true; }
  const topic = t.memory.topic();
  if (!list.length && topic) list.push({ item: topic.name, from: c.from, to: c.to, thing: topic, qty: undefined });
  if (!list.length) return undefined;
  const reach = t.clauses.slice(t.at, Math.max(end, under ? t.at + 1 : 0) + 1);
  const sums = sumsIn(t, c.from, reach.at(-1)!.to, true);
  const chosen = t.clauses.slice(Math.max(0, t.at - 3), t.at).findLast(x => x.verb?.base === 'go');
  const source = (chosen ? withSeller(t, chosen) : undefined) ?? reach.map(r => sourceIn(t.sheet, r.items)?.source).find(Boolean) ?? sourceSubject(t, reach) ?? reach.slice(1).map(r => sourceSubject(t, [r], true)).find(Boolean) ?? named(t, reach) ?? bareSeller(t, reach) ?? sellerBefore(t);
  const placedOn = placed ? c.items.slice(c.vi + 1, c.vi + 3).find((i, n) => i.f?.dim === 'when' && (n === 0 || c.items[c.vi + 1]?.low === 'on')) : undefined; // "ordered Tuesday" looks back
  const expected = reach.map(r => dayIn(t, placedOn && r === c ? { ...c, from: placedOn.to, items: c.items.filter(i => i.from >= placedOn.to) } : r, true)).find(Boolean);
  const quoted = t.prior.concat(t.told.map(x => x.entry)).findLast(e => e.kind === 'quote' && source !== undefined && (e.source ?? '').includes(source.replace(/^other /, '')) );
  const q = quoted?.kind === 'quote' && sums.price === undefined ? quoted : undefined;
  return list.map((g, i) => trim({
    kind: 'order', item: q && (g.thing.carried || !goods.length) ? q.item : g.item, source: q?.source ?? source, price: total(sums, g.qty) === undefined ? q?.price : i === 0 || list.length === 1 ? total(sums, g.qty) : undefined,
    shipping: sums.shipping ?? q?.shipping, expected, qty: g.qty && g.qty > 1 ? g.qty : undefined, core: sums.core, tax: sums.tax,
  }) as Entry);
};

/** "went with the other chap and ordered it" */
function withSeller(t: Telling, c: Clause): string | undefined {
  const k = c.items.findIndex((i, n) => /^(with|for)$/.test(i.low) && c.items[n + 1]?.np);
  return k >= 0 ? bare(textOf(t.sheet, c.items[k + 1]!.from, c.items[k + 1]!.to)) : undefined;
}

/** A clause that goes on about the order: price, when it should be here, what the seller says. */
function continues(t: Telling, c: Clause): boolean {
  if (c.asks || c.verb?.base === 'order') return false;
  const text = lowText(t, c);
  if (/^(and |but |so )?((it|they|that|he|she|the \w+|\w+ \w+|supposed|should|due|expected|says?|said|reckons?|promised|will|'ll|shipping|free|plus|delivery)\b)/.test(text) && (dims(c.items, 'when').length || dims(c.items, 'span').length || dims(c.items, 'money').length || /\b(shipping|postage|carriage|delivery|each|be here|arrive|land)\b/.test(text)) && !/\b(came|arrived|showed|went|is off|is on)\b/.test(text)) return true;
  return c.pred === 'none' && !c.subj.some(s => !s.carried && !isSeller(s.name)) && (moneyClause(t, c) || tailText(text) || sourceSubject(t, [c], true) !== undefined || sourceIn(t.sheet, c.items) !== undefined || c.items.filter(i => i.t !== 'mark').every(i => i.f?.dim === 'when' || i.t === 'adv' || i.t === 'prep'));
}

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
