/**
 * Clearance holes, close, normal, loose. Inch bolts in 1/64 drills or number drills (in), metric in mm.
 * Source: ASME B18.2.8 as reprinted in Machinery's Handbook 31 p. 1741 and a supplier's chart (1/4 to 1);
 * normal drills of #0 to #8 and loose holes over 1 in read there too, close ones agree with its metric drills; #10 loose from memory.
 * ISO 273 fine, medium, coarse from memory.
 */
type Holes = readonly [close: number, normal: number, loose: number];
const sixtyFourths = (close: number, normal: number, loose: number): Holes => [close / 64, normal / 64, loose / 64];

export const INCH_CLEARANCE: ReadonlyMap<number, Holes> = new Map([
  [0.06, [0.067, 0.076, 0.094]],
  [0.073, [0.081, 0.089, 0.104]],
  [0.086, [0.094, 0.102, 0.116]],
  [0.099, [0.106, 0.116, 0.128]],
  [0.112, [0.12, 0.128, 0.144]],
  [0.125, [0.141, 0.156, 0.172]],
  [0.138, [0.154, 0.17, 0.185]],
  [0.164, [0.18, 0.196, 0.213]],
  [0.19, [0.206, 0.221, 0.238]],
  [0.25, sixtyFourths(17, 18, 19)],
  [0.3125, sixtyFourths(21, 22, 23)],
  [0.375, sixtyFourths(25, 26, 27)],
  [0.4375, sixtyFourths(29, 30, 31)],
  [0.5, sixtyFourths(34, 36, 39)],
  [0.625, sixtyFourths(42, 44, 47)],
  [0.75, sixtyFourths(50, 52, 58)],
  [0.875, sixtyFourths(58, 60, 66)],
  [1, sixtyFourths(66, 70, 74)],
  [1.125, sixtyFourths(74, 78, 84)],
  [1.25, sixtyFourths(82, 86, 92)],
  [1.375, sixtyFourths(92, 96, 103)],
  [1.5, sixtyFourths(100, 104, 111)],
]);

export const METRIC_CLEARANCE: ReadonlyMap<number, Holes> = new Map([
  [3, [3.2, 3.4, 3.6]],
  [4, [4.3, 4.5, 4.8]],
  [5, [5.3, 5.5, 5.8]],
  [6, [6.4, 6.6, 7]],
  [7, [7.4, 7.6, 8]],
  [8, [8.4, 9, 10]],
  [10, [10.5, 11, 12]],
  [12, [13, 13.5, 14.5]],
  [14, [15, 15.5, 16.5]],
  [16, [17, 17.5, 18.5]],
  [18, [19, 20, 21]],
  [20, [21, 22, 24]],
  [22, [23, 24, 26]],
  [24, [25, 26, 28]],
  [27, [28, 30, 32]],
  [30, [31, 33, 35]],
  [33, [34, 36, 38]],
  [36, [37, 39, 42]],
]);
