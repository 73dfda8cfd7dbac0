import { UNC, UNF } from '../../../dimensions/thread/series.ts';
import type { Scope } from './scope.ts';

const ROW = /(?:#~*(?!~)(?: inch)?(?:, and |, | and | or ))+#~*(?!~)(?: inch)?,? (?:both |all )(?:in )?(coarse|fine|unc|unf)\b/;

/** "three eighths and half inch, both coarse": bolts in a row whose series is said once for all. Empty where there is no such row. */
export function sizesInRow(scope: Scope, fraction: (x: number) => string): { sizes: string[]; start: number; end: number } | undefined {
  const row = scope.seen(ROW);
  if (!row) return undefined;
  const series = /^(?:fine|unf)$/.test(row.m[1]!) ? UNF : UNC, sizes = row.nums.map(fraction);
  return sizes.every(s => series[s] !== undefined) ? { sizes: sizes.map(s => `${s}-${series[s]}`), start: row.start, end: row.end } : undefined;
}
