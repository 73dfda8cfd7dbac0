/** The smallest of the sorted numbers that a share `q` of them does not exceed; always one of them, so never between a date and none. */
export function quantile(sorted: ArrayLike<number>, q: number): number | undefined {
  return sorted[Math.max(0, Math.ceil(q * sorted.length) - 1)];
}

/** Share of the sorted numbers that are at most `limit`. */
export function shareUpTo(sorted: ArrayLike<number>, limit: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! <= limit) low = middle + 1;
    else high = middle;
  }
  return sorted.length === 0 ? 0 : low / sorted.length;
}
