import type { EntryOf } from '../../model/entry.ts';
import { nameKey } from '../../model/names.ts';
import type { Ref } from '../../model/stored.ts';
import type { OpenOrder, OutNow, Price, Said, Thing } from '../shop.ts';
import { worked } from './working.ts';

/** The way of a thing that must be got: wanted, quoted, ordered, arrived or bought. */
const cents = (amount: number): number => Math.round(amount * 100);

function priceOf(entry: EntryOf<'order' | 'bought' | 'quote'>): Price | undefined {
  if (entry.price === undefined) return undefined;
  const price: Price = { cents: cents(entry.price) };
  if (entry.shipping !== undefined) price.shippingCents = cents(entry.shipping);
  if (entry.core !== undefined) price.coreCents = cents(entry.core);
  if (entry.tax !== undefined) price.taxPercent = entry.tax;
  if (entry.miles !== undefined) price.miles = entry.miles;
  if (entry.qty !== undefined) price.qty = entry.qty;
  return price;
}

/** A want for the same purpose said again is the same want, with what was newly said of it. */
export function wanted(thing: Thing, entry: EntryOf<'want'>, said: Said, purpose: Ref | undefined): void {
  const same = (w: { for?: Ref }): boolean => (w.for?.key ?? '') === (purpose?.key ?? '') && (w.for?.verb ?? '') === (purpose?.verb ?? '');
  const before = thing.wants.find(same);
  thing.wants = thing.wants.filter(w => w !== before);
  thing.wants.push({ ...said, qty: entry.qty ?? before?.qty, spec: entry.spec ?? before?.spec, for: purpose });
  thing.inHand = undefined;
}

export function ordered(thing: Thing, entry: EntryOf<'order'>, said: Said): void {
  thing.orders.push({ ...said, source: entry.source, price: priceOf(entry), expected: entry.expected, qty: entry.qty });
  thing.inHand = undefined;
}

export function quoted(thing: Thing, entry: EntryOf<'quote'>, said: Said): void {
  const source = nameKey(entry.source ?? '');
  if (source) thing.quotes = thing.quotes.filter(q => nameKey(q.source ?? '') !== source);
  thing.quotes.push({ ...said, source: entry.source, price: priceOf(entry)! });
}

/** Bought ends the want, and an open order from the same source (or where no source tells them apart), which was this purchase. */
export function bought(thing: Thing, entry: EntryOf<'bought'>, said: Said): void {
  const order = thing.orders.find(o => !o.source || !entry.source || nameKey(o.source) === nameKey(entry.source));
  thing.orders = thing.orders.filter(o => o !== order);
  const came = order ? undefined : thing.paid.findLast(p => p.ordered && p.at === said.at); // "it came. They charged 35 in the end"
  if (came) Object.assign(came, { source: came.source ?? entry.source, price: priceOf(entry) ?? came.price });
  else pay(thing, said, entry.source ?? order?.source, priceOf(entry) ?? order?.price);
  haveIt(thing, said);
}

/** What arrives ends the oldest order, and work outside; ordered things are paid for by then at the latest. */
export function arrived(thing: Thing, said: Said): void {
  const wasOut = thing.out !== undefined;
  if (thing.out) cameBack(thing, thing.out, said);
  const order: OpenOrder | undefined = thing.orders.shift();
  if (order) pay(thing, said, order.source, order.price, true);
  if (order || !wasOut) haveIt(thing, said);
}

/** What it was sent out for is taken as done; the note that says otherwise comes after. */
function cameBack(thing: Thing, out: OutNow, said: Said): void {
  if (out.do) worked(thing, { kind: 'work', part: thing.name, action: out.do }, said, 0);
  thing.out = undefined;
  thing.back = said;
}

function pay(thing: Thing, said: Said, source: string | undefined, price: Price | undefined, ordered = false): void {
  thing.paid.push({ ...said, source, price, for: thing.wants[0]?.for, ...(ordered ? { ordered } : {}) });
}

function haveIt(thing: Thing, said: Said): void {
  if (thing.orders.length === 0) thing.wants = [];
  thing.inHand = said;
  if (thing.fault?.verdict === 'replace') thing.fault = undefined;
  thing.jobs = thing.jobs.filter(job => !/^(order|buy|get|find|source|collect|fetch|pick)/.test(job.do));
}
