import type { Random } from './random.ts';

/** A guess in three points, all in the same unit: at best, most likely, at worst. */
export interface ThreePoint {
  low: number;
  likely: number;
  high: number;
}

/** The classical PERT mean, (a + 4m + b) / 6; also the mean of the beta-PERT distribution with λ = 4. (Malcolm et al. 1959.) */
export function meanOf({ low, likely, high }: ThreePoint): number {
  return (low + 4 * likely + high) / 6;
}

/**
 * Draws from the beta-PERT distribution with λ = 4: a beta distribution over [low, high] with
 * α = 1 + 4 (likely - low) / (high - low) and β = 1 + 4 (high - likely) / (high - low).
 * Points out of order are put in order first; equal ends give the likely value.
 */
export function drawThreePoint(points: ThreePoint, random: Random): number {
  const low = Math.min(points.low, points.likely);
  const high = Math.max(points.high, points.likely);
  const width = high - low;
  if (!(width > 0)) return points.likely;
  const up = gamma(1 + (4 * (points.likely - low)) / width, random);
  const down = gamma(1 + (4 * (high - points.likely)) / width, random);
  return low + (width * up) / (up + down);
}

/** A gamma deviate of the given shape (1 or more) and scale 1. (Marsaglia & Tsang 2000, ACM TOMS 26:363-372.) */
function gamma(shape: number, random: Random): number {
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random.unit()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}
