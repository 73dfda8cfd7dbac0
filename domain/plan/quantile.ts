/** The smallest of the sorted numbers that a share `q` of them does not exceed; always one of them, so never between a date and none. */
export function quantile(sorted: ArrayLike<number>, q: number): number | undefined {
  return sorted[Math.max(0, Math.ceil(q * sorted.length) - 1)];
}

/** How many of the sorted numbers are at most `limit`, which is also the place of the first that is over it. */
export function countUpTo(sorted: ArrayLike<number>, limit: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! <= limit) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Share of the sorted numbers that are at most `limit`. */
export const shareUpTo = (sorted: ArrayLike<number>, limit: number): number => (sorted.length === 0 ? 0 : countUpTo(sorted, limit) / sorted.length);
