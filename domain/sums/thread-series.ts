/**
 * Unified inch threads: nominal diameter (in), coarse and fine threads per inch, tensile stress areas (in²).
 * Source: ASME B1.1 as reprinted in maker's torque charts; 1/4 and up read there (the misprints 0.0163 for 7/16-14,
 * "7/16-24" and "5/8-14" were put right), pitches of the numbered sizes from memory of the same standard.
 */
export interface UnifiedSize {
  name: string;
  d: number;
  coarse?: number;
  fine?: number;
  coarseArea?: number;
  fineArea?: number;
}

const size = (name: string, d: number, coarse?: number, fine?: number, coarseArea?: number, fineArea?: number): UnifiedSize => ({
  name,
  d,
  coarse,
  fine,
  coarseArea,
  fineArea,
});

export const NUMBERED: readonly UnifiedSize[] = [
  size('#0', 0.06, undefined, 80),
  size('#1', 0.073, 64, 72),
  size('#2', 0.086, 56, 64),
  size('#3', 0.099, 48, 56),
  size('#4', 0.112, 40, 48),
  size('#5', 0.125, 40, 44),
  size('#6', 0.138, 32, 40),
  size('#8', 0.164, 32, 36),
  size('#10', 0.19, 24, 32),
  size('#12', 0.216, 24, 28),
];

export const UNIFIED: readonly UnifiedSize[] = [
  size('1/4', 0.25, 20, 28, 0.0318, 0.0364),
  size('5/16', 0.3125, 18, 24, 0.0524, 0.058),
  size('3/8', 0.375, 16, 24, 0.0775, 0.0878),
  size('7/16', 0.4375, 14, 20, 0.1063, 0.1187),
  size('1/2', 0.5, 13, 20, 0.1419, 0.1599),
  size('9/16', 0.5625, 12, 18, 0.182, 0.203),
  size('5/8', 0.625, 11, 18, 0.226, 0.256),
  size('3/4', 0.75, 10, 16, 0.334, 0.373),
  size('7/8', 0.875, 9, 14, 0.462, 0.509),
  size('1', 1, 8, 12, 0.606, 0.663),
  size('1-1/8', 1.125, 7, 12, 0.763, 0.856),
  size('1-1/4', 1.25, 7, 12, 0.969, 1.073),
  size('1-3/8', 1.375, 6, 12, 1.155, 1.315),
  size('1-1/2', 1.5, 6, 12, 1.405, 1.581),
];

/** ISO metric threads: coarse pitch and fine pitches (mm), the usual one first. Source: ISO 261 and ISO 262, M5 to M24 coarse read in reprints, the rest from memory. */
interface MetricSize {
  d: number;
  coarse: number;
  fine: readonly number[];
}

export const METRIC: readonly MetricSize[] = [
  { d: 3, coarse: 0.5, fine: [0.35] },
  { d: 4, coarse: 0.7, fine: [0.5] },
  { d: 5, coarse: 0.8, fine: [0.5] },
  { d: 6, coarse: 1, fine: [0.75] },
  { d: 7, coarse: 1, fine: [0.75] },
  { d: 8, coarse: 1.25, fine: [1] },
  { d: 10, coarse: 1.5, fine: [1.25, 1] },
  { d: 12, coarse: 1.75, fine: [1.25, 1.5] },
  { d: 14, coarse: 2, fine: [1.5] },
  { d: 16, coarse: 2, fine: [1.5] },
  { d: 18, coarse: 2.5, fine: [1.5, 2] },
  { d: 20, coarse: 2.5, fine: [1.5, 2] },
  { d: 22, coarse: 2.5, fine: [1.5, 2] },
  { d: 24, coarse: 3, fine: [2] },
  { d: 27, coarse: 3, fine: [2] },
  { d: 30, coarse: 3.5, fine: [2] },
  { d: 33, coarse: 3.5, fine: [2] },
  { d: 36, coarse: 4, fine: [3] },
];
