import { z } from 'zod';

/** A calendar day of the shop, YYYY-MM-DD, in the note's own zone. */
export const Day = z.string().regex(/^\d{4}-\d\d-\d\d$/, 'a date is written YYYY-MM-DD');

/** A time on the wall clock, HH:MM. */
export const Clock = z.string().regex(/^\d\d:\d\d$/, 'a time is written HH:MM');

/** A name or phrase as said, without articles. */
export const Phrase = z.string().min(1);

/** Amounts are in the shop's own currency; the scale of cents is kept by the person's words. */
export const Money = z.number().finite().nonnegative();

/** How a part sits: off, tried (comes off again), temporary (held, not for good), on (for good), tight (brought to its torque). */
export const FIT_STATES = ['off', 'tried', 'temporary', 'on', 'tight'] as const;
export const VERDICTS = ['good', 'reuse', 'watch', 'repair', 'replace'] as const;
export const SKIES = ['rain', 'dry', 'frost', 'wind', 'hot', 'snow'] as const;

/**
 * What every entry may carry beside its own fields.
 * `sure`: said outright, or implied by what was said. `span`: offsets [from, to) into the note's text. `machine`: the machine named in the note.
 */
export const Carried = {
  sure: z.enum(['certain', 'implied']).optional(),
  span: z.tuple([z.number().int(), z.number().int()]).optional(),
  machine: z.string().optional(),
};

/** What money entries keep beyond the contract: how many, tax in percent of the price, core charge, miles driven for it. */
export const MoneyExtras = {
  qty: z.number().optional(),
  tax: z.number().optional(),
  core: Money.optional(),
  miles: z.number().optional(),
};
