import type { Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { isSource } from '../../clauses/things.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import { PERSONS } from '../../words/persons.ts';
import { TRADE_ENDING } from '../../words/sources.ts';
import { lowText, type Telling } from '../telling.ts';
import { sellerText } from './sellers.ts';

/** Ways to take up a seller's price: "went with the catalogue house", "said yes to him", "told the breaker yes", "took his offer". */
const AGREES: readonly RegExp[] = [
  /^(?:so |then |and |ok |okay |right |well |in the end |finally |i |we |have |'ve |just )*(?:went|gone|go|going|settled|stuck|plumped) (?:with|for|on)\b/,
  /^(?:so |then |and |ok |okay |i |we |have |'ve |just )*(?:said|say) (?:yes|aye|ok|okay|go ahead)\b/,
  /^(?:so |then |and |ok |okay |i |we |have |'ve |just )*(?:told|gave|give) .{2,40}\b(?:yes|go ahead|the go ahead|the nod|the order|the job|to send|aye|ok|okay)\b/,
  /^(?:so |then |and |ok |okay |i |we |have |'ve |just )*(?:took|taken|accepted) (?:up )?.{2,30}\b(?:up on|offer|price|quote)\b/,
];

/** Whether a clause takes up what a seller offered; the item index of the seller, or -1 where he is only "him". */
export function agreedWith(t: Telling, c: Clause): number | undefined {
  const text = lowText(t, c);
  if (c.neg || c.asks || c.reality !== 'deed' || !AGREES.some(re => re.test(text))) return undefined;
  const k = c.items.findIndex((i, n) => n > 0 && i.np !== undefined && sells(i));
  return k >= 0 ? k : c.items.some(i => /^(him|them|her)$/.test(i.low)) ? -1 : undefined;
}
const sells = (i: Item): boolean => !i.np!.stands && (isSource(i.np!) || PERSONS.test(i.np!.said) || TRADE_ENDING.test(i.np!.said));

/** The quote of the notes before that is taken up: of the seller where he is named, else of the thing, else the last where only one was heard. */
export function quoteTaken(t: Telling, source: string | undefined, item: string | undefined): Extract<Entry, { kind: 'quote' }> | undefined {
  const all = t.prior.concat(t.told.map(x => x.entry)).filter((e): e is Extract<Entry, { kind: 'quote' }> => e.kind === 'quote');
  if (source !== undefined) {
    const words = source.toLowerCase().replace(/^other /, '');
    return all.findLast(q => (q.source ?? '').toLowerCase().includes(words)) ?? all.findLast(q => likeSeller(words, (q.source ?? '').toLowerCase()));
  }
  const of = item === undefined ? all : all.filter(q => q.item === item || q.item.endsWith(` ${item}`));
  return of.length === 1 || new Set(of.map(q => q.source)).size === 1 ? of.at(-1) : undefined;
}
/** "forum guy" is the "guy on the forum"; "breaker" the "breaker across the bay". */
const likeSeller = (a: string, b: string): boolean => b !== '' && a.split(' ').every(w => /^(the|a|on|at|in|of|my|man|guy|fella|chap|bloke)$/.test(w) || b.split(/[ -]/).includes(w)) && a.split(' ').some(w => b.split(/[ -]/).includes(w));

/** The seller's words at an item. */
export const sellerAt = (t: Telling, c: Clause, k: number): string => sellerText(t, c.items, k);
