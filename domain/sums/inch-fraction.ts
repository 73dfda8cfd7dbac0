/** A length in inches as the shop names it, to the nearest 1/64: 0.421875 -> "27/64", 1.0625 -> "1-1/16". */
export function inchFraction(inches: number): string {
  const parts = Math.round(inches * 64);
  const whole = Math.floor(parts / 64);
  let top = parts % 64;
  let bottom = 64;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole ? `${whole}-${top}/${bottom}` : `${top}/${bottom}`;
}

/** "27/64", "1-1/16", "1 1/16" or ".4219" in inches; undefined where it is none of these. */
export function parseInches(text: string): number | undefined {
  const mixed = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(text.trim());
  if (mixed) return Number(mixed[3]) ? Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]) : undefined;
  return /^(\d+\.?\d*|\.\d+)$/.test(text.trim()) ? Number(text) : undefined;
}
