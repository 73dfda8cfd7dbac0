import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { itemsOf } from '../../clauses/items.ts';
import { isMachine } from '../../clauses/name-kinds.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { sourceIn, trim } from '../lib/fields.ts';
import { goodsIn, isSeller, type Goods } from '../lib/goods.ts';
import { pricedThings } from '../lib/priced-things.ts';
import { moneyClause, sumsIn, type Sums } from '../lib/money.ts';
import { spanForward } from '../lib/reach.ts';
import { bareSeller, pricedAt, sellerBefore } from '../lib/sellers.ts';
import { sourceSubject } from '../lib/source.ts';
import { lowText, type Telling } from '../telling.ts';

const NOUN = /(?:^|['a-z]+ )(quote|quotation|estimate|price|asking price|going rate|tender)$/;
const ASKS = /\b(?:he|she|they)(?:'s|'re|'d|'ll| is| are| was| were| would| will)?(?: (?:only|still|now|just))* (?:wanted|wants|want|asks|asked|asking|quoted(?: me| us)?|after|looking for|holding out for|take|takes)\b(?! (?:to|me|us|a|the|my|some))/;
const WOULD = /\b(?:would|'d|will|'ll|going to|gonna) (?:be|cost|run|set|come to|come out at|work out at)(?: me)?(?: back)?\b/;
const SEEN = /^(?:(?:and|but|i|we|i've|'ve|have|just|also) )*(?:seen|saw|spotted|noticed|came across|come across)\b/;
const BEST = /\b(?:cheapest|best|lowest|keenest|dearest)(?: (?:price|quote|one|offer|figure))? (?:(?:i|we|that|so far|'ve|have|could|can) )+(?:found|find|seen|see|saw|heard|got|get|had|been quoted|do)\b/;
const PASSED = /\b(?:could have|could 've|could've|might have) (?:had|got|bought|picked up)\b|\b(?:was|been|got) offered\b/;

/** A price heard that is told without "the yard wants": a quote or an estimate, what somebody asks, what was seen or could have been had, the best found so far. */
export function heardPrice(t: Telling): Entry[] | undefined {
  const c = t.clause, text = lowText(t);
  if (c.neg || c.asks || /^(if|unless|until|till|before|when)$/.test(c.sub ?? '') || /^(buy|pay|order|spend|give|beat)$/.test(c.verb?.base ?? '') && !PASSED.test(text)) return undefined;
  const n = t.clauses[t.at + 1], said = n && /^(say|reckon|tell|figure|think|quote)$/.test(n.verb?.base ?? '') && !n.obj.some(o => !o.carried && !isSeller(o.name)) ? sourceSubject(t, [n]) ?? sourceSubject(t, [n], true) : undefined; // "…, the tyre fellow reckons"
  const noun = c.items.findIndex(i => i.np !== undefined && !i.np.stands && NOUN.test(i.np.said));
  const told = noun >= 0 || ASKS.test(text) || SEEN.test(text) && /\b(for|at)\b/.test(text) || BEST.test(text) || PASSED.test(text) || doesFor(c) || WOULD.test(text) && c.subj.some(x => !x.carried) && said !== undefined;
  if (!told || c.reality === 'cond') return undefined;
  const sumsAfter = n && noun >= 0 && (n.join === ':' || n.carriedSubj === true && /^(come|be|work)$/.test(n.verb?.base ?? 'be') || n.pred === 'none') && sumsIn(t, n.from, n.to, true).price !== undefined ? n : undefined;
  const at = sumsAfter && !own(t, c) ? sumsAfter : c;
  const from = noun >= 0 && at === c ? c.items[noun]!.to : at.from;
  const end = spanForward(t, x => x === at && x !== c || said !== undefined && x === n || onTop(t, x));
  const to = t.clauses[end]!.to, sums = sumsIn(t, from, to, true);
  if (sums.price === undefined || sums.price < 10 && !certain(t, from, to)) return undefined;
  const source = whose(c, noun) ?? sourceSubject(t, [c]) ?? sourceIn(t.sheet, c.items)?.source ?? (at === c ? undefined : sourceIn(t.sheet, at.items)?.source) ?? said ?? pricedAt(t, c) ?? bareSeller(t, [c]) ?? (/^(he|she|they)$/.test(c.who ?? '') ? sellerBefore(t) : undefined);
  const each = pricedThings(t, c.items).filter(p => !isSeller(p.item) && p.price >= 10);
  if (at === c && each.length > 1) return each.map(p => trim({ kind: 'quote', item: p.item, source, price: p.price, qty: p.qty }) as Entry); // "275 for the block and 60 for the pan"
  const item = goodsOf(t, c, noun) ?? topic(t, c);
  return item && trimmed(item, source, sums);
}

const trimmed = (item: Goods, source: string | undefined, sums: Sums): Entry[] =>
  [trim({ kind: 'quote', item: item.item, source, price: sums.price, shipping: sums.shipping, qty: item.qty && item.qty > 1 && item.qty !== sums.price ? item.qty : undefined, core: sums.core, tax: sums.tax }) as Entry];
const own = (t: Telling, c: Clause): boolean => sumsIn(t, c.from, c.to, true).price !== undefined;
const certain = (t: Telling, from: number, to: number): boolean => t.sheet.found.some(f => f.dim === 'money' && f.sure === 'certain' && f.from >= from && f.to <= to);
const onTop = (t: Telling, x: Clause): boolean => !x.asks && x.pred !== 'verb' && sumsIn(t, x.from, x.to, false).shipping !== undefined && sumsIn(t, x.from, x.to, false).price === undefined;

/** "he'll do me the white metal for 95 a bearing": work or a thing offered at a price by whoever is spoken of. */
const doesFor = (c: Clause): boolean => /^(he|she|they)$/.test(c.who ?? '') && /^(plan|maybe)$/.test(c.reality) && c.verb?.form === 'base' && (/^(do|make|let|sell|supply|get)$/.test(c.verb.base!) || isClass(c.verb.base!, 'work')) && c.items.some((i, k) => k > c.vi && i.low === 'for' && /^(money|number)$/.test(c.items[k + 1]?.f?.dim ?? ''));

/** "the dealer's price", "Foundry's quote": whose it is. */
const whose = (c: Clause, noun: number): string | undefined => (noun < 0 ? undefined : /^(?:the |my )?(.+?)'s (?:asking )?\w+$/.exec(c.items[noun]!.low)?.[1]?.trim());

/** What the price is of: after "for", "on" and the like, else what else is named beside it. */
function goodsOf(t: Telling, c: Clause, noun: number): Goods | undefined {
  const items = noun < 0 ? itemsOf(t.sheet, c.from, c.to) : c.items; // with what "cheapest I found on…" leaves out as a mere relative
  const good = (g: Goods): boolean => !isSeller(g.item) && !NOUN.test(g.item) && !/^(cheapest|dearest|best|lowest|keenest|lot|job|work|post|postage|shipping|carriage|ones?|change|cash)$/.test(g.item) && !isMachine(t.sheet, g.item);
  for (const [k, i] of items.entries()) {
    if (k < noun || !/^(for|on|to|of)$/.test(i.low) || items[k + 1]?.f) continue;
    const ing = items[k + 1]?.t === 'verb' ? k + 2 : k + 1; // "on rewinding the armature"
    if (!items[ing]?.np || items[ing]!.np!.stands) continue;
    const g = goodsIn(t, items.slice(0, ing + 1), ing).find(good);
    if (g) return g;
  }
  return goodsIn(t, items.filter((_, k) => k !== noun), 0).find(g => good(g) && !(verbForms(g.item).length && !/^re|ing$/.test(g.item)));
}

/** "They want sixty": of what was spoken of. */
const topic = (t: Telling, c: Clause): Goods | undefined => {
  const was = t.memory.topic();
  return was && moneyClause(t, c) && !isSeller(was.name) && !NOUN.test(was.name) ? { item: was.name, from: c.from, to: c.to, thing: was } : undefined;
};
