import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { itemsOf } from '../../clauses/items.ts';
import { sheetBefore } from '../../sheet.ts';
import { isClass } from '../../words/verbs.ts';
import type { Sheet } from '../../types.ts';
import { sourceIn, trim } from '../lib/fields.ts';
import { goodsIn, isSeller } from '../lib/goods.ts';
import { sumsIn } from '../lib/money.ts';
import { sourceSubject } from '../lib/source.ts';
import { lowText, type Telling } from '../telling.ts';
import { LABOUR } from './outside.ts';

/** Words for what is asked that name no thing: "the bill was…", "no more to pay". */
const BILL = /^(?:bill|invoice|tab|account|damage|total|docket|receipt|six pack|pint|beer|ticket|tax|vat|labou?r|parts|labour and parts|more|cash|hand|change|money|glove box|pocket|note)s?$/;
/** A bare number beside which these stand is what was asked, though no word of money does. */
const ASKED = /\b(?:after tax|plus vat|all in|all told|like (?:he|she|they) said|as (?:quoted|agreed|promised|he said|they said)|for (?:the|his|their) (?:labou?r|trouble|work|job|lot)|(?:no|nothing) more to pay|paid|pay|charged|bill|invoice|even|flat|it (?:was|came to|cost) the|in the hand|on the nail)\b/;

/**
 * A price said in the note that tells of a thing come back from outside work, or come as ordered, with no other thing named beside it: "the knee lock is back,
 * brazed, fifty bucks", "radiator's home, and it was the ninety". It is what was paid for that thing.
 */
export function paidOnReturn(t: Telling): Entry[] | undefined {
  const c = t.clause, came = t.told.filter(x => x.entry.kind === 'arrival' && x.clause.from < c.to).at(-1)?.entry;
  if (came?.kind !== 'arrival' || c.asks || c.reality !== 'deed' || c.sub || t.told.some(x => /^(quote|order)$/.test(x.entry.kind))) return undefined;
  const paid = t.told.find(x => x.entry.kind === 'bought')?.entry;
  if (paid?.kind === 'bought' && (paid.price !== undefined || paid.item !== came.item)) return undefined;
  const price = asked(t, came.item);
  if (price === undefined) return undefined;
  const source = sourceIn(t.sheet, c.items)?.source ?? (c.verb ? sourceSubject(t, [c]) : undefined) ?? whence(t, came.item);
  if (paid?.kind !== 'bought') return [trim({ kind: 'bought', item: came.item, source, price }) as Entry];
  Object.assign(paid, trim({ price, source: paid.source ?? source }));
  return [];
}

/** The sum that is all the clause says, or that it says was asked for the thing; undefined where the clause is about something else. */
function asked(t: Telling, item: string): number | undefined {
  const c = t.clause, verb = c.verb?.base ?? '';
  if (dims(c.items, 'span').length || dims(c.items, 'measure').length || /^(base|s|ing)$/.test(c.verb?.form ?? 'past') && verb !== 'cost') return undefined;
  const theirs = isClass(verb, 'work') && (c.passive || /^(they|he|she)$/.test(c.who ?? ''));
  if (c.verb && !theirs && !(/^(pay|cost|owe|set)$/.test(verb) || /^(charge|come|say|ask|want|be)$/.test(verb) && !/^(i|we)$/.test(c.who ?? ''))) return undefined;
  const sure = t.sheet.found.some(f => f.dim === 'money' && (f.sure === 'certain' || f.value.per !== undefined) && f.from >= c.from && f.to <= c.to);
  if (!sure && !ASKED.test(lowText(t))) return undefined; // "it was twelve" may be thousandths
  const { price } = sumsIn(t, c.from, c.to, true), from = sourceIn(t.sheet, c.items)?.source ?? '';
  const others = goodsIn(t, c.items, 0).filter(g => !g.thing.carried && g.from >= c.from && !isSeller(g.item) && !BILL.test(g.item) && !LABOUR.test(g.item) && !item.endsWith(g.item.split(' ').at(-1)!) && !from.includes(g.item));
  return price !== undefined && price >= 2 && !others.length ? price : undefined;
}

/** Where a thing now back was, or who sold it: by what was told of it, or by the words of the notes before ("the clutch is home from the relining place"). */
export function whence(t: Telling, item: string): string | undefined {
  const head = item.split(' ').at(-1)!;
  const of = [...t.prior, ...t.told.map(x => x.entry)].findLast(e => e.kind === 'out' && e.part.endsWith(head) && e.where || (e.kind === 'order' || e.kind === 'quote') && e.item.endsWith(head) && e.source);
  const told = of?.kind === 'out' ? of.where?.replace(/^(?:at|to|in|with) (?:the )?/, '') : of && 'source' in of ? of.source : undefined;
  if (told) return told;
  const here = t.clauses.slice(0, t.at).map(x => sourceIn(t.sheet, x.items)?.source).findLast(Boolean);
  if (here) return here;
  for (let s: Sheet | undefined = sheetBefore(t.sheet.ctx); s; s = sheetBefore(s.ctx)) {
    const source = s.text.toLowerCase().includes(head) ? sourceIn(s, itemsOf(s, 0, s.tokens.length))?.source : undefined;
    if (source) return source;
  }
  return undefined;
}
