import { LETTER_DRILLS, NUMBER_DRILLS, type Drill } from './drill-sizes.ts';
import { inchFraction, parseInches } from './inch-fraction.ts';
import { round } from './results.ts';

const SIXTY_FOURTHS = 160; // to 2-1/2 in
const FRACTION_DRILLS: readonly Drill[] = Array.from({ length: SIXTY_FOURTHS }, (_, i) => ({
  name: inchFraction((i + 1) / 64),
  inches: (i + 1) / 64,
}));

/** Jobber sets: tenths to 14 mm, halves above, and the quarter sizes between that tapping needs. */
const METRIC_MM = [...Array.from({ length: 135 }, (_, i) => (i + 5) / 10), ...Array.from({ length: 72 }, (_, i) => 14 + i / 2)];
export const METRIC_DRILLS: readonly Drill[] = METRIC_MM.map((mm) => ({ name: `${mm} mm`, inches: mm / 25.4 }));

/** Number, letter and fraction drills by size. Where a letter equals a fraction (E is 1/4) the fraction is named. */
export const INCH_DRILLS: readonly Drill[] = [...FRACTION_DRILLS, ...NUMBER_DRILLS, ...LETTER_DRILLS].sort((a, b) => a.inches - b.inches);

/** The drill nearest to a hole (in), and its neighbours below and above. */
export function nearestDrills(inches: number, drills: readonly Drill[]): { nearest: Drill; below?: Drill; above?: Drill } | undefined {
  const largest = drills.at(-1);
  if (!largest || inches > largest.inches * 1.01) return undefined;
  const nearest = drills.reduce((best, each) => (Math.abs(each.inches - inches) < Math.abs(best.inches - inches) - 1e-9 ? each : best));
  return {
    nearest,
    below: drills.filter((each) => each.inches < nearest.inches - 1e-9).at(-1),
    above: drills.find((each) => each.inches > nearest.inches + 1e-9),
  };
}

/** A drill by its name: "#7", "number 7", "F", "letter F", "27/64", "6.8 mm", ".201". A bare whole number is a number drill. */
export function findDrill(said: string): Drill | undefined {
  const text = said
    .trim()
    .replace(/\bdrill\b|["”]/gi, '')
    .trim();
  const metric = /^(\d*\.?\d+)\s*mm$/i.exec(text);
  if (metric) return { name: `${Number(metric[1])} mm`, inches: Number(metric[1]) / 25.4 };
  const letter = /^(?:letter\s*)?([a-z])$/i.exec(text);
  if (letter) return LETTER_DRILLS.find((each) => each.name === letter[1]?.toUpperCase());
  const number = /^(?:#|no\.?\s*|number\s*)?(\d{1,2})$/i.exec(text);
  if (number) return NUMBER_DRILLS[Number(number[1]) - 1];
  const inches = parseInches(text);
  return inches ? { name: text.includes('/') ? text : `${round(inches, 4)} in`, inches } : undefined;
}
