/** Open belt over two pulleys, all lengths in one unit. Exact forms; they hold at equal pulleys too. */

const lean = (large: number, small: number, centre: number): number => Math.asin((large - small) / (2 * centre));

/** Length round both pulleys at their pitch diameters. */
export function beltLength(d1: number, d2: number, centre: number): number {
  const [small, large] = [Math.min(d1, d2), Math.max(d1, d2)];
  const a = lean(large, small, centre);
  return 2 * centre * Math.cos(a) + (Math.PI * (large + small)) / 2 + a * (large - small);
}

/** Degrees of the small pulley that the belt touches. */
export const smallArc = (d1: number, d2: number, centre: number): number =>
  180 - (2 * lean(Math.max(d1, d2), Math.min(d1, d2), centre) * 180) / Math.PI;

/** Free length of belt between the pulleys. */
export const beltSpan = (d1: number, d2: number, centre: number): number => Math.sqrt(centre ** 2 - ((d1 - d2) / 2) ** 2);

/** The closest centres at which the pulleys still clear each other. */
export const closestCentre = (d1: number, d2: number): number => (d1 + d2) / 2;

/**
 * Centre for a belt length, or undefined where the belt is too short to reach round pulleys that clear each other.
 * Halving between the closest centre and half the belt: the length only grows with the centre.
 */
export function beltCentre(d1: number, d2: number, length: number): number | undefined {
  let low = closestCentre(d1, d2);
  if (length <= beltLength(d1, d2, low)) return undefined;
  let high = length / 2;
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (beltLength(d1, d2, middle) < length) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
