/**
 * ISO 286 tolerance grades and fundamental deviations, micrometres, by size steps over 3 to 180 mm.
 * Source: ISO 286-2 / JIS B0401 reprints: H7, g6, k6, n6, p6 read for 10 to 80 mm; the rest of the same tables
 * from memory, compared with three open tables (no difference; two others take r and s in steps that are too wide).
 */
/** Upper end of each step, mm. */
export const STEPS: readonly number[] = [3, 6, 10, 18, 30, 50, 80, 120, 180];

export const GRADES: Readonly<Record<number, readonly number[]>> = {
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250],
};

/** Upper deviation of clearance shafts (under zero). */
export const UPPER: Readonly<Record<string, readonly number[]>> = {
  d: [-20, -30, -40, -50, -65, -80, -100, -120, -145],
  e: [-14, -20, -25, -32, -40, -50, -60, -72, -85],
  f: [-6, -10, -13, -16, -20, -25, -30, -36, -43],
  g: [-2, -4, -5, -6, -7, -9, -10, -12, -14],
  h: [0, 0, 0, 0, 0, 0, 0, 0, 0],
};

/** Lower deviation of transition and press shafts; k holds for grades 4 to 7. */
export const LOWER: Readonly<Record<string, readonly number[]>> = {
  k: [0, 1, 1, 1, 2, 2, 2, 3, 3],
  m: [2, 4, 6, 7, 8, 9, 11, 13, 15],
  n: [4, 8, 10, 12, 15, 17, 20, 23, 27],
  p: [6, 12, 15, 18, 22, 26, 32, 37, 43],
};

/** Lower deviation of r and s, whose steps are finer over 50 mm: [up to mm, r, s]. */
export const PRESS_STEPS: readonly (readonly [to: number, r: number, s: number])[] = [
  [3, 10, 14],
  [6, 15, 19],
  [10, 19, 23],
  [18, 23, 28],
  [30, 28, 35],
  [50, 34, 43],
  [65, 41, 53],
  [80, 43, 59],
  [100, 51, 71],
  [120, 54, 79],
  [140, 63, 92],
  [160, 65, 100],
  [180, 68, 108],
];
