import type { Entry } from '../../../domain/model/entry.ts';
import { sourceIn, trim } from '../lib/fields.ts';
import { goodsIn, isSeller } from '../lib/goods.ts';
import { moneyClause, sumsIn, total } from '../lib/money.ts';
import { lastQuote, quoteBy } from '../lib/quoted.ts';
import { lowText, type Telling } from '../telling.ts';

const TAKES = /^(grab|buy|take|get|have|bag|snag|nab|fetch|collect|pick|snap|score|land)$/;
const DOWN = /\b(gave|paid|handed|offered and got) (him|her|them) (?=[\d$£€a-z])|\b(beat|talked|knocked|haggled|got|argued|brought|worked|bargained|whittled|ground|drove|went|came|squeezed) (him |her |them |it |the \w+ |the \w+ \w+ )?(down )?to (?=[\d$£€a-z])|\bsettled (at|on|for) (?=[\d$£€a-z])|\b(got|had) (it|them|the \w+) (down to|for)\b/;

/** What was quoted, here or in the notes before, is bought: "grabbed one", "took it for fifty", "beat him down to 150", "bought the roll off him". */
export function tookQuoted(t: Telling): Entry[] | undefined {
  const c = t.clause, text = lowText(t), here = t.told.at(-1)?.entry.kind === 'quote' ? t.told.at(-1) : undefined;
  const own = sumsIn(t, c.from, c.to, true);
  const down = DOWN.test(text) && own.price !== undefined && !c.items.some(i => i.f?.dim === 'measure' || i.f?.dim === 'span' || i.f?.dim === 'when');
  const before = t.told.findLast(x => x.entry.kind === 'bought')?.entry;
  if (down && before?.kind === 'bought' && /\bdown to\b|settled/.test(text)) { before.price = own.price; return []; }
  if (!down && (!TAKES.test(c.verb?.base ?? '') || /^(base|ing|s)$/.test(c.verb!.form ?? 'base') && c.verb!.low !== 'bought')) return undefined;
  const from = sourceIn(t.sheet, c.items)?.source, off = /\b(off|from) (him|her|them|you)\b/.test(text);
  const quote = from ? quoteBy(t, from) : here?.entry.kind === 'quote' ? here.entry : lastQuote(t);
  if (!quote || c.neg || !down && !standsFor(t, quote.item, here !== undefined, off || from !== undefined)) return undefined;
  if (here?.entry === quote) t.told.splice(t.told.indexOf(here), 1);
  const price = own.price ?? (own.at === undefined ? quote.price : undefined);
  const first = trim({ kind: 'bought', item: quote.item, source: quote.source, price: down || !here || moneyOfIt(t) ? price : quote.price, shipping: quote.shipping }) as Entry;
  const more = goodsIn(t, c.items, c.vi + 1).filter(g => g.item !== quote.item && !isSeller(g.item) && !bareLot(g.item) && !sameHead(g.item, quote.item) && moneyClause(t, c));
  return [first, ...more.map(g => { const s = sumsIn(t, g.to, c.to, true); return trim({ kind: 'bought', item: g.item, source: quote.source, price: total(s, g.qty), qty: g.qty && g.qty > 1 ? g.qty : undefined }) as Entry; })];
}

/** Whether the clause takes what was quoted: "it", "one", "the pair", the roll, with nothing done to it but paying. */
function standsFor(t: Telling, item: string, here: boolean, named: boolean): boolean {
  const c = t.clause, obj = c.items[c.vi + 1 + Number(c.items[c.vi + 1]?.t === 'prt')];
  if (!obj || c.prt.some(p => /^(off|out|apart|on|in|loose|together|away)$/.test(p)) && !named) return false;
  const lot = obj.np && (bareLot(obj.np.said) || sameHead(obj.np.said, item)) && !obj.np.stands;
  if (!(obj.t === 'pron' && /^(it|one|them|both|those|that)$/.test(obj.low) || obj.np?.stands || lot || obj.f?.dim === 'number')) return false;
  if (lot && !/^(the|that|those|this|both|his|her|their)$/.test(t.sheet.tokens[obj.from]!.low)) return false;
  const rest = c.items.slice(c.items.indexOf(obj) + 1);
  const other = rest.some(i => i.t === 'verb' || i.t === 'adj' || i.t === 'to' || /^(on|in|into|to|apart|out|with|under|behind|back)$/.test(i.low));
  return !other && (here || named || moneyClause(t, c) || /^(fetch|collect|buy|pick|take|grab|bag|snag|nab|snap|have|get)$/.test(c.verb!.base!) && rest.every(i => i.t === 'mark' || i.t === 'adv' || i.t === 'prt' || i.low === 'home' || i.f?.dim === 'when'));
}

const bareLot = (said: string): boolean => /^(roll|set|lot|pair|job lot|thing|box|length|whole roll|whole lot|whole set)$/.test(said);
const sameHead = (a: string, b: string): boolean => a.split(' ').at(-1)!.replace(/s$/, '') === b.split(' ').at(-1)!.replace(/s$/, '');
/** Money that stands for the thing itself: "took it for fifty". */
const moneyOfIt = (t: Telling): boolean => moneyClause(t, t.clause) && !t.clause.items.some(i => i.np && !i.np.stands);
