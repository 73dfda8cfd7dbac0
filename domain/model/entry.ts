import { z } from 'zod';
import { Carried, Clock, Day, FIT_STATES, Money, MoneyExtras, Phrase, SKIES, VERDICTS } from './fields.ts';

/**
 * What a note can say. One schema a kind; the first field names the entry.
 * Shapes and names are those of the contract of notes; units are the trade's ("in", "lb-ft", "psi", "°F", "h", "mi", "count").
 */
const kind = <K extends string, S extends z.ZodRawShape>(k: K, shape: S) => z.object({ kind: z.literal(k), ...shape, ...Carried });

const Fit = kind('fit', { part: Phrase, state: z.enum(FIT_STATES), with: Phrase.optional() });
const Finding = kind('finding', { part: Phrase, condition: Phrase, verdict: z.enum(VERDICTS).optional() });
const Measured = kind('reading', {
  part: Phrase, what: Phrase, value: z.number().finite(), unit: z.string().optional(), asWas: z.boolean().optional(),
});
const Work = kind('work', { part: Phrase, action: Phrase, done: z.boolean().optional(), product: Phrase.optional() });
const Job = kind('job', { do: Phrase, part: Phrase.optional() });
const Want = kind('want', { item: Phrase, qty: z.number().optional(), spec: Phrase.optional(), for: Phrase.optional() });
const Order = kind('order', {
  item: Phrase, source: Phrase.optional(), price: Money.optional(), shipping: Money.optional(), expected: Day.optional(), ...MoneyExtras,
});
const Bought = kind('bought', {
  item: Phrase, source: Phrase.optional(), price: Money.optional(), shipping: Money.optional(), ...MoneyExtras,
});
const Quote = kind('quote', {
  item: Phrase, source: Phrase.optional(), price: Money, shipping: Money.optional(), ...MoneyExtras,
});
const Arrival = kind('arrival', { item: Phrase });
const Rule = kind('rule', { first: Phrase, then: Phrase });
const Recheck = kind('recheck', {
  part: Phrase.optional(), do: Phrase.optional(), after: z.number().optional(),
  unit: z.enum(['hours', 'days', 'weeks', 'months', 'miles']).optional(), due: Day.optional(),
});
const Stow = kind('stow', { part: Phrase, where: Phrase });
const Out = kind('out', { part: Phrase, where: Phrase.optional(), until: Day.optional(), do: Phrase.optional() });
const Wait = kind('wait', {
  part: Phrase, until: Day.optional(), after: z.number().optional(), unit: z.enum(['hours', 'days', 'weeks']).optional(),
});
const Hours = kind('hours', { hours: z.number().nonnegative(), part: Phrase.optional(), total: z.boolean().optional() });
/** `from`, `to`: when on that day, if said. `none`: whatever help was said for that day before does not come, or is gone. */
const Hands = kind('hands', { when: Day, for: Phrase.optional(), from: Clock.optional(), to: Clock.optional(), none: z.boolean().optional() });
const Weather = kind('weather', { sky: z.enum(SKIES), from: Day.optional(), to: Day.optional() });
/** `of` is the entry that is struck or changed, by its number in the log; filled in when the note is recorded, not by the reader. */
const Amend = kind('amend', {
  undo: z.boolean().optional(), field: z.string().optional(), value: z.union([z.string(), z.number(), z.boolean()]).optional(),
  part: Phrase.optional(), of: z.number().int().optional(),
});
const Remark = kind('remark', { text: Phrase });

export const Entry = z.discriminatedUnion('kind', [
  Fit, Finding, Measured, Work, Job, Want, Order, Bought, Quote, Arrival, Rule, Recheck, Stow, Out, Wait, Hours, Hands, Weather, Amend, Remark,
]);
export type Entry = z.infer<typeof Entry>;
type EntryKind = Entry['kind'];
export type EntryOf<K extends EntryKind> = Extract<Entry, { kind: K }>;
