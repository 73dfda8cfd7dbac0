/**
 * Strengths of bolts by the mark on the head. Inch figures psi, metric MPa; sizes inclusive at the top of each band.
 * Source: SAE J429 (1, 2, 5, 8) read in two reprints; ISO 898-1, all classes, read in a reprint of EN ISO 898-1:2013; ASTM A307, A449, A193 B7
 * read. From memory of SAE J429: 4, 5.1, 5.2, 7 (no longer listed), 8.1, 8.2.
 */
export interface Strength {
  from: number;
  to: number;
  proof?: number;
  yield?: number;
  tensile: number;
}
export interface BoltGrade {
  name: string;
  system: 'inch' | 'metric';
  standard: string;
  mark: string;
  bands: readonly Strength[];
}

const band = (from: number, to: number, proof: number | undefined, yieldPoint: number | undefined, tensile: number): Strength => ({
  from,
  to,
  proof,
  yield: yieldPoint,
  tensile,
});
const inch = (name: string, standard: string, mark: string, ...bands: Strength[]): BoltGrade => ({
  name,
  system: 'inch',
  standard,
  mark,
  bands,
});
const metric = (name: string, ...bands: Strength[]): BoltGrade => ({
  name,
  system: 'metric',
  standard: 'ISO 898-1',
  mark: `${name} on the head`,
  bands,
});

export const BOLT_GRADES: readonly BoltGrade[] = [
  inch('1', 'SAE J429', 'no mark', band(0.25, 1.5, 33_000, 36_000, 60_000)),
  inch('2', 'SAE J429', 'no mark', band(0.25, 0.75, 55_000, 57_000, 74_000), band(0.75, 1.5, 33_000, 36_000, 60_000)),
  inch('4', 'SAE J429', 'studs, no mark', band(0.25, 1.5, 65_000, 100_000, 115_000)),
  inch('5', 'SAE J429', 'three lines', band(0.25, 1, 85_000, 92_000, 120_000), band(1, 1.5, 74_000, 81_000, 105_000)),
  inch('5.1', 'SAE J429', 'three lines', band(0.138, 0.625, 85_000, undefined, 120_000)),
  inch('5.2', 'SAE J429', 'three lines, wide set', band(0.25, 1, 85_000, 92_000, 120_000)),
  inch('7', 'SAE J429', 'five lines', band(0.25, 1.5, 105_000, 115_000, 133_000)),
  inch('8', 'SAE J429', 'six lines', band(0.25, 1.5, 120_000, 130_000, 150_000)),
  inch('8.1', 'SAE J429', 'studs, no mark', band(0.25, 1.5, 120_000, 130_000, 150_000)),
  inch('8.2', 'SAE J429', 'six lines, wide set', band(0.25, 1, 120_000, 130_000, 150_000)),
  inch('A307', 'ASTM', '307A', band(0.25, 4, 33_000, 36_000, 60_000)),
  inch(
    'A449',
    'ASTM',
    'A449',
    band(0.25, 1, 85_000, 92_000, 120_000),
    band(1, 1.5, 74_000, 81_000, 105_000),
    band(1.5, 3, 55_000, 58_000, 90_000),
  ),
  inch('B7', 'ASTM A193', 'B7', band(0.25, 2.5, undefined, 105_000, 125_000)),
  metric('4.6', band(3, 36, 225, 240, 400)),
  metric('4.8', band(3, 16, 310, 340, 420)),
  metric('5.6', band(3, 36, 280, 300, 500)),
  metric('5.8', band(3, 24, 380, 420, 520)),
  metric('6.8', band(3, 36, 440, 480, 600)),
  metric('8.8', band(3, 16, 580, 640, 800), band(16, 36, 600, 660, 830)),
  metric('9.8', band(3, 16, 650, 720, 900)),
  metric('10.9', band(3, 36, 830, 940, 1040)),
  metric('12.9', band(3, 36, 970, 1100, 1220)),
];

export const INCH_CHOICES: readonly string[] = ['2 (no lines)', '5 (three lines)', '8 (six lines)'];
export const METRIC_CHOICES: readonly string[] = ['4.8', '8.8', '10.9', '12.9'];
