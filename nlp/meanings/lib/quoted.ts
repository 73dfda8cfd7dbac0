import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { nameWords } from '../../../domain/model/names.ts';
import type { Sheet } from '../../types.ts';
import { lowText, type Telling, type Told } from '../telling.ts';
import { countSaid } from './how-many.ts';

type Quote = Extract<Entry, { kind: 'quote' }>;

/** Prices heard so far, in the notes before and in this one, oldest first. */
const quotes = (t: Pick<Telling, 'prior' | 'told'>): Quote[] => t.prior.concat(t.told.map(x => x.entry)).filter((e): e is Quote => e.kind === 'quote');
const words = (s: string): string[] => s.toLowerCase().split(/[^a-z0-9'-]+/).filter(w => w.length > 2 && !/^(the|other|that|this|one|from|with|for|and|down|off)$/.test(w));

/** The quote that a source's name points to: the one that shares most words with it; "the other one" is whoever was not heard last. */
export function quoteBy(t: Pick<Telling, 'prior' | 'told'>, source: string): Quote | undefined {
  const all = quotes(t), said = words(source);
  const shared = (q: Quote): number => words(q.source ?? '').filter(w => said.some(s => s.replace(/s$/, '') === w.replace(/s$/, ''))).length;
  const best = all.reduce<Quote | undefined>((b, q) => (shared(q) > 0 && shared(q) >= (b ? shared(b) : 1) ? q : b), undefined);
  return best ?? (/^other\b/.test(source) ? all.at(-1) : undefined);
}

/** The quote for a thing, where only one seller was heard of it; `item` left out stands for "it". */
export function quoteOf(t: Telling, item?: string): Quote | undefined {
  const all = quotes(t).filter(q => item === undefined || q.item === item || q.item.endsWith(` ${item}`) || item.endsWith(` ${q.item}`));
  const last = all.at(-1);
  return last && all.every(q => q.item === last.item && q.source === last.source) ? last : undefined;
}

/** "the cheaper one": by what was asked, where there are several to choose from. */
export function byPrice(t: Telling, least: boolean): Quote | undefined {
  const all = quotes(t).filter(q => q.price !== undefined);
  return all.length > 1 ? all.reduce((a, b) => ((b.price! < a.price!) === least ? b : a)) : all[0];
}

/** The seller heard last, for "off him", "took it". */
export const lastQuote = (t: Pick<Telling, 'prior' | 'told'>): Quote | undefined => quotes(t).at(-1);

const CHOSE = /\b(went|gone|going|go) (with|for)\b|\b(said|say) (yes|aye|ok|okay|yeah) to\b|\b(gave|given|told) .{1,40}\b(go[- ]ahead|nod|thumbs up|green light|yes|to send|to go ahead|to put (it|them|one) in the post|to ship|i'd (have|take))\b|\b(gave in|pulled the trigger|bit the bullet|caved)\b|\btook (him|them|her|the \S+|the \S+ \S+) up\b|\b(plumped|opted) for\b|\b(settled|decided) on\b|\baccepted\b|\bsaid (yes|aye) in the end\b|\bsaid i'd (have|take) (it|them|one|the)\b/;

/** Whether the clause says whose offer was taken. */
export const chose = (t: Telling, c: Clause): boolean => CHOSE.test(lowText(t, c)) && !c.neg && !c.asks && !/^(if|unless|until|when|that)$/.test(c.sub ?? '');

/** Whom the choice names: the words of the clause that point to a quote. */
export const chosen = (t: Telling, c: Clause): Quote | undefined => quoteBy(t, lowText(t, c)) ?? quoteOf(t) ?? undefined;

/** Whether what is said to be ordered is no thing: the order itself, a word that stands for it, or whom it is ordered from ("ordered the foundry's"). */
const namingNothing = (e: Extract<Entry, { kind: 'order' }>): boolean => /^(order|lots?|tis|'tis|it|ones?|things?|those|that|stuff)$/.test(e.item) || e.source !== undefined && nameWords(e.item).join() === nameWords(e.source).join();

/** An order from the seller that the note names, where the one it got was only heard of before: "phoned the salvage yard back, told them to send theirs". */
function otherSeller(sheet: Sheet, e: Extract<Entry, { kind: 'order' }>, t: Pick<Telling, 'prior' | 'told'>): Extract<Entry, { kind: 'order' }> {
  const heard = e.source === undefined ? undefined : quotes(t).find(q => q.source === e.source), here = new Set(words(sheet.text.toLowerCase()));
  if (!heard || words(e.source!).some(w => here.has(w))) return e;
  const named = quoteBy(t, sheet.text.toLowerCase());
  if (!named?.source || named.source === e.source || named.item !== heard.item) return e;
  const { price: _, shipping: __, ...rest } = e;
  return e.price === undefined || e.price === heard.price ? { ...rest, source: named.source } : e;
}

/** So much for one: what a seller asked is then to be paid for each. */
const EACH = /\b(each|apiece|ea|a piece)\b/i;

/**
 * An order at what the seller quoted for that thing in the notes before, where it has no price of its own; for each, where so many are ordered of what was quoted by the piece.
 * One at a price that only one seller asked is from that seller.
 */
export function asQuoted(sheet: Sheet, x: Told, t: Pick<Telling, 'prior' | 'told'>): Told {
  if (x.entry.kind !== 'order' || x.entry.source === undefined && x.entry.price === undefined) return x;
  const o = otherSeller(sheet, x.entry, t);
  const e = namingNothing(o) ? { ...o, item: (quoteBy(t, o.source ?? '') ?? lastQuote(t))?.item ?? o.item } : o;
  const asked = quotes(t).filter(q => q.price === e.price && q.source !== undefined), q = e.source !== undefined ? quoteBy(t, e.source) : asked.length === 1 ? asked[0] : undefined;
  const head = nameWords(e.item).at(-1), count = countSaid(sheet, [x.clause], e.item, sheet.tokens.length) ?? 1, each = EACH.test(sheet.ctx.prior?.at(-1) ?? '');
  if (q?.price === undefined || head === undefined || nameWords(q.item).at(-1) !== head || e.price !== undefined && e.price !== q.price || count > 1 && !each && e.price === undefined) return { ...x, entry: e };
  return { ...x, entry: { ...e, source: e.source ?? q.source, price: Math.round(q.price * (each ? count : 1) * 100) / 100, ...(q.shipping !== undefined && e.shipping === undefined ? { shipping: q.shipping } : {}) } as Entry };
}
