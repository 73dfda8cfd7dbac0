import { GRADES, LOWER, PRESS_STEPS, STEPS, UPPER } from './iso-tolerances.ts';

/** Deviations from the nominal size, micrometres. */
export interface Limits {
  low: number;
  high: number;
}

const stepOf = (mm: number): number => STEPS.findIndex((to) => mm <= to);

/** Limits of a hole H5 to H11 or JS, or undefined where it isn't one of these. */
export function holeLimits(mm: number, code: string): Limits | undefined {
  const match = /^(H|JS)(\d{1,2})$/.exec(code);
  const width = GRADES[Number(match?.[2])]?.[stepOf(mm)];
  if (!match || width === undefined) return undefined;
  return match[1] === 'H' ? { low: 0, high: width } : { low: -width / 2, high: width / 2 };
}

/** Limits of a shaft: d, e, f, g, h, js, k, m, n, p, r, s with a grade of 5 to 11 (k 5 to 7). */
export function shaftLimits(mm: number, code: string): Limits | undefined {
  const match = /^(js|[defghkmnprs])(\d{1,2})$/.exec(code);
  const letter = match?.[1] ?? '';
  const step = stepOf(mm);
  const width = GRADES[Number(match?.[2])]?.[step];
  if (!match || width === undefined || (letter === 'k' && Number(match[2]) > 7)) return undefined;
  if (letter === 'js') return { low: -width / 2, high: width / 2 };
  const upper = UPPER[letter]?.[step];
  if (upper !== undefined) return { low: upper - width, high: upper };
  const press = PRESS_STEPS.find(([to]) => mm <= to);
  const lower = letter === 'r' ? press?.[1] : letter === 's' ? press?.[2] : LOWER[letter]?.[step];
  return lower === undefined ? undefined : { low: lower, high: lower + width };
}
