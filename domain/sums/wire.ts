/**
 * Copper wire by American gauge. Diameter .005 in x 92^((36 - n)/39): ASTM B258; resistance 10,371/cmil ohm per 1,000 ft at 20 °C, copper.
 * Gauges 1/0 to 4/0 are n = 0 to -3.
 */
export const wireDiameter = (n: number): number => 0.005 * 92 ** ((36 - n) / 39);

/** Circular mils: the square of the diameter in thousandths. */
export const circularMils = (n: number): number => (1000 * wireDiameter(n)) ** 2;

/** Ohms per foot at a temperature in °C. Copper: 234.5 °C is where its line meets zero. */
export const ohmsPerFoot = (n: number, celsius = 20): number => (10.371 / circularMils(n)) * ((234.5 + celsius) / 254.5);

/** Resistance of copper by section, ohms per metre: 0.017241 Ω·mm²/m at 20 °C (IEC 60028). */
export const ohmsPerMetre = (mm2: number, celsius = 20): number => (0.017241 / mm2) * ((234.5 + celsius) / 254.5);

export const gaugeName = (n: number): string => `${n > 0 ? n : `${1 - n}/0`} AWG`;

/** 14, "14 AWG", "#10", "1/0", "2/0", "00" -> gauge number; undefined outside 4/0 to 40. */
export function parseGauge(said: string | number): number | undefined {
  const text = String(said)
    .toLowerCase()
    .replace(/awg|gauge|ga\b\.?|#|no\.?|number/g, '')
    .trim();
  const aught = /^([1-4])\s*\/\s*0$/.exec(text)?.[1];
  const n = aught ? 1 - Number(aught) : /^0{1,4}$/.test(text) ? 1 - text.length : /^-?\d{1,2}$/.test(text) ? Number(text) : undefined;
  return n !== undefined && n >= -3 && n <= 40 ? n : undefined;
}

/** Gauges that shops keep, thin to thick. */
export const STOCK_GAUGES: readonly number[] = [20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];

/** Largest fuse for a gauge, A. Source: FAA AC 43.13-1B table 11-3 (rebuilt from column lists). */
export const FUSE_OF_GAUGE: ReadonlyMap<number, number> = new Map([
  [18, 10],
  [16, 10],
  [14, 15],
  [12, 20],
  [10, 30],
  [8, 50],
  [6, 70],
  [4, 70],
  [2, 100],
  [0, 150],
]);

/** Tinned stranded aircraft wire, most ohms per 1,000 ft at 20 °C. Source: FAA AC 43.13-1B table 11-9. */
export const TINNED_OHMS: ReadonlyMap<number, number> = new Map([
  [18, 6.23],
  [16, 4.81],
  [14, 3.06],
  [12, 2.02],
  [10, 1.26],
  [8, 0.7],
  [6, 0.44],
  [4, 0.28],
  [2, 0.18],
  [0, 0.12],
  [-1, 0.09],
  [-3, 0.06],
]);
