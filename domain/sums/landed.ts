import { z } from 'zod';
import type { SumResult } from './answer.ts';
import { amount } from './given.ts';
import { mileageRate } from './mileage-rates.ts';
import { result, round } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';

const money = () => amount('zero or more').optional();
const day = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/, { error: 'must be a date like 2026-03-04' })
  .optional();
const given = z.object({
  price: money(),
  shipping: money(),
  miles: money(),
  tax: money(),
  core: money(),
  rate: money(),
  date: day,
  share: amount().max(100, { error: 'cannot be over 100 percent' }).optional(),
});
type Given = z.infer<typeof given>;

/** Money to the cent; halves go up. */
const cents = (dollars: number): number => round(Math.round((dollars + 1e-9) * 100) / 100, 2);
const SOURCE = 'sum of the lines, each to the cent; IRS business mileage rate';

/** Dollars a mile: as said, or of the day; with what was assumed. */
function perMile(said: Given, assumed: string[]): number | Outcome {
  if (said.rate !== undefined) return said.rate;
  const rate = mileageRate(said.date);
  if (!rate) return refuse('I have mileage rates from 2019 on: say what a mile costs you.');
  assumed.push(
    `${rate.dollars} a mile, the US tax rate from ${rate.from}${rate.settled ? '' : ' (the newest I have)'}, not your fuel; say your own`,
  );
  return rate.dollars;
}

export const landed = defineSum({
  of: 'landed',
  answers: 'What a thing costs by the time it is in the shop.',
  fields: {
    price: 'price',
    shipping: 'shipping',
    miles: 'driven for it, there and back',
    tax: 'percent of the price',
    core: 'charge paid, and back with the old one',
    rate: 'cost of a mile',
    date: 'day of the trip (for the rate)',
    share: 'percent of the trip that is for this part',
  },
  given,
  work(said) {
    if (said.price === undefined) return ask('price', 'What is the price?');
    const assumed: string[] = [];
    const rate = said.miles ? perMile(said, assumed) : 0;
    if (typeof rate !== 'number') return rate;
    const trip = cents(((said.miles ?? 0) * rate * (said.share ?? 100)) / 100);
    const tax = cents((said.price * (said.tax ?? 0)) / 100);
    const total = cents(said.price + (said.shipping ?? 0) + tax + trip);
    const lines: SumResult[] = [
      result('landed', total, '$', 2),
      ...(said.core ? [result('outlay', cents(total + said.core), '$', 2, 'until the old one is returned')] : []),
      ...(said.tax ? [result('taxPaid', tax, '$', 2)] : []),
      ...(said.miles ? [result('trip', trip, '$', 2)] : []),
    ];
    if (said.core) assumed.push('the core charge comes back; if the old one is not returned the outlay is the cost');
    if (said.miles) assumed.push('miles for the whole trip');
    if (said.tax) assumed.push('tax on the price alone; some states tax shipping and cores');
    return { results: lines, basis: 'price + shipping + tax + miles, core back', assumed, source: SOURCE };
  },
});

export const mileage = defineSum({
  of: 'mileage',
  answers: 'What a drive costs.',
  fields: { miles: 'driven', date: 'day of the drive', rate: 'cost of a mile' },
  given,
  work(said) {
    if (said.miles === undefined) return ask('miles', 'How many miles?');
    const assumed: string[] = [];
    const rate = perMile(said, assumed);
    if (typeof rate !== 'number') return rate;
    return {
      results: [result('trip', cents(said.miles * rate), '$', 2), result('rate', rate, '$/mi', 3)],
      basis: 'miles times rate',
      assumed,
      source: SOURCE,
    };
  },
});
