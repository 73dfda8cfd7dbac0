/**
 * Threads per inch by diameter, and pitches by metric diameter: what "coarse" and "fine" mean.
 * UNC, UNF: ASME B1.1; BSW, BSF: BS 84; metric coarse: ISO 261. Metric fine has several pitches in ISO 261; the one given is the automotive
 * choice of ISO 8.8-class bolts sold as "fine" (common practice), and the person is asked nothing about it.
 */
export const UNC: Record<string, number> = {
  '#1': 64, '#2': 56, '#3': 48, '#4': 40, '#5': 40, '#6': 32, '#8': 32, '#10': 24, '#12': 24,
  '1/4': 20, '5/16': 18, '3/8': 16, '7/16': 14, '1/2': 13, '9/16': 12, '5/8': 11, '3/4': 10, '7/8': 9, '1': 8,
  '1-1/8': 7, '1-1/4': 7, '1-3/8': 6, '1-1/2': 6, '1-3/4': 5, '2': 4.5,
};
export const UNF: Record<string, number> = {
  '#0': 80, '#1': 72, '#2': 64, '#3': 56, '#4': 48, '#5': 44, '#6': 40, '#8': 36, '#10': 32, '#12': 28,
  '1/4': 28, '5/16': 24, '3/8': 24, '7/16': 20, '1/2': 20, '9/16': 18, '5/8': 18, '3/4': 16, '7/8': 14, '1': 12,
  '1-1/8': 12, '1-1/4': 12, '1-3/8': 12, '1-1/2': 12,
};
export const BSW: Record<string, number> = {
  '1/8': 40, '3/16': 24, '1/4': 20, '5/16': 18, '3/8': 16, '7/16': 14, '1/2': 12, '9/16': 12, '5/8': 11, '3/4': 10, '7/8': 9, '1': 8, '1-1/8': 7, '1-1/4': 7, '1-1/2': 6,
};
export const BSF: Record<string, number> = {
  '3/16': 32, '1/4': 26, '5/16': 22, '3/8': 20, '7/16': 18, '1/2': 16, '9/16': 16, '5/8': 14, '3/4': 12, '7/8': 11, '1': 10, '1-1/8': 9, '1-1/4': 9,
};
export const METRIC_COARSE: Record<number, number> = {
  2: 0.4, 2.5: 0.45, 3: 0.5, 4: 0.7, 5: 0.8, 6: 1, 7: 1, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2, 16: 2, 18: 2.5, 20: 2.5, 22: 2.5, 24: 3, 27: 3, 30: 3.5, 33: 3.5, 36: 4,
};
export const METRIC_FINE: Record<number, number> = { 8: 1, 10: 1.25, 12: 1.25, 14: 1.5, 16: 1.5, 18: 1.5, 20: 1.5, 22: 1.5, 24: 2, 27: 2, 30: 2 };

/** Less common pitches that are still threads (UNEF, 8-UN and the like), so that a typed size is believed. */
const OTHER: Record<string, readonly number[]> = { '1/4': [32], '5/16': [32], '3/8': [32], '7/16': [28], '1/2': [28], '9/16': [24], '5/8': [24], '3/4': [20], '7/8': [20], '1': [14, 20], '1-1/8': [8], '1-1/4': [8], '1-1/2': [8] };

/** Is this many threads to the inch a known thread of this diameter? */
export const knownPitch = (diameter: string, tpi: number): boolean =>
  [UNC, UNF, BSW, BSF].some(t => t[diameter] === tpi) || (OTHER[diameter] ?? []).includes(tpi);

/** Which of the two everyday series a pitch belongs to. */
export const seriesOf = (diameter: string, tpi: number): 'coarse' | 'fine' | undefined =>
  UNC[diameter] === tpi ? 'coarse' : UNF[diameter] === tpi ? 'fine' : undefined;
