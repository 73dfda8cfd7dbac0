import type { Entry } from '../../../domain/model/entry.ts';
import { sourceIn, trim } from '../lib/fields.ts';
import { goodsIn, isSeller } from '../lib/goods.ts';
import { sumsIn, total } from '../lib/money.ts';
import { sellerBefore } from '../lib/sellers.ts';
import { sourceSubject } from '../lib/source.ts';
import { lowText, type Telling } from '../telling.ts';

/** "the chap at the tip let me have a length of angle iron for a fiver", "he sold me the pair for 40": bought, told from the seller's side. */
export function soldMe(t: Telling): Entry[] | undefined {
  const c = t.clause, text = lowText(t);
  const sold = c.verb?.base === 'sell' && /^(past|part)$/.test(c.verb.form ?? '') && /\bsold (me|us|it to me|them to me)\b/.test(text) || c.verb?.low === 'let' && /\blet (me|us) (have|take|buy)\b|\blet (it|them) go to me\b/.test(text);
  if (!sold || c.passive || c.items.some(i => i.t === 'modal')) return undefined;
  const sums = sumsIn(t, c.from, c.to, true);
  if (sums.price === undefined) return undefined;
  const from = c.items.findIndex(i => /^(have|take|buy|me|us)$/.test(i.low)) + 1;
  const topic = t.memory.topic(), own = goodsIn(t, c.items, Math.max(from, c.vi + 1)).filter(g => !isSeller(g.item) && !/^(trade|cash|change|town)$/.test(g.item));
  const goods = own.length || !topic ? own : [{ item: topic.name, from: c.from, to: c.to, thing: topic }];
  const source = sourceSubject(t, [c]) ?? sourceIn(t.sheet, c.items)?.source ?? sellerBefore(t);
  return goods.length ? goods.map((g, i) => trim({ kind: 'bought', item: g.item, source, price: i ? undefined : total(sums, g.qty), shipping: i ? undefined : sums.shipping, qty: g.qty && g.qty > 1 ? g.qty : undefined }) as Entry) : undefined;
}
