import type { Price } from '../log/shop.ts';

/**
 * Sums of money in whole cents; each line (tax, the way driven) is rounded to the cent, halves up. Percentages are taken to four
 * decimals, miles to three, the rate to four, so that no binary fraction decides a half cent.
 */
export const amount = (cents: number): number => cents / 100;

function divided(n: number, by: number): number {
  const whole = Math.floor(n / by);
  return (n - whole * by) * 2 >= by ? whole + 1 : whole;
}

export const taxCents = (price: Price): number => price.taxPercent === undefined ? 0 : divided(price.cents * Math.round(price.taxPercent * 10_000), 1_000_000);
export const wayCents = (miles: number, rate: number): number => divided(Math.round(miles * 1_000) * Math.round(rate * 10_000), 100_000);

/** What was paid: price, shipping, tax, and the core charge while the old part has not gone back. */
export const paidCents = (price: Price): number => price.cents + (price.shippingCents ?? 0) + taxCents(price) + (price.coreCents ?? 0);

/**
 * What a price comes to at the shop: price + shipping + tax + core charge + miles × rate. The core charge comes back with the old part,
 * but is paid until then. `mileRate`: in the shop's currency a mile.
 */
export const landedCents = (price: Price, mileRate: number): number => paidCents(price) + wayCents(price.miles ?? 0, mileRate);
