/**
 * Freezing point (°F) by volume percent of antifreeze.
 * Ethylene: of the printings the warmest at each step is kept (others are up to 3 °F colder to 50 %, and -62 to -70 at 60 %).
 * Propylene: Lange's Handbook, 15th ed., table 5.13. Densities: specific gravity 1.1155 (ethylene, a printed worked case), 1.036 (propylene, memory).
 */
export interface Glycol {
  name: string;
  points: readonly (readonly [percent: number, fahrenheit: number])[];
  gravity: number;
}

export const GLYCOLS: Readonly<Record<'ethylene' | 'propylene', Glycol>> = {
  ethylene: {
    name: 'ethylene',
    points: [
      [0, 32],
      [10, 26],
      [20, 17],
      [30, 3],
      [40, -13],
      [50, -34],
      [60, -52],
    ],
    gravity: 1.1155,
  },
  propylene: {
    name: 'propylene',
    points: [
      [0, 32],
      [5, 30],
      [10, 28],
      [15, 25],
      [20, 20],
      [25, 16],
      [30, 9],
      [35, 3],
      [40, -5],
      [45, -16],
      [50, -28],
    ],
    gravity: 1.036,
  },
};

/** Freezing point in °F; undefined past the table. Straight lines between its points. */
export function freezingPoint(glycol: Glycol, percent: number): number | undefined {
  for (let i = 1; i < glycol.points.length; i += 1) {
    const [[p1, f1] = [0, 0], [p2, f2] = [0, 0]] = [glycol.points[i - 1], glycol.points[i]];
    if (percent >= p1 && percent <= p2) return f1 + ((percent - p1) / (p2 - p1)) * (f2 - f1);
  }
  return undefined;
}

/** Percent that freezes at that temperature (°F); undefined where the table doesn't reach. */
export function percentFor(glycol: Glycol, fahrenheit: number): number | undefined {
  for (let i = 1; i < glycol.points.length; i += 1) {
    const [[p1, f1] = [0, 0], [p2, f2] = [0, 0]] = [glycol.points[i - 1], glycol.points[i]];
    if (fahrenheit <= f1 && fahrenheit >= f2) return p1 + ((fahrenheit - f1) / (f2 - f1)) * (p2 - p1);
  }
  return undefined;
}

/** Percent by volume of a mix given by weight, volumes simply added. */
export function volumePercent(glycol: Glycol, weightPercent: number): number {
  const share = weightPercent / 100 / glycol.gravity;
  return (share / (share + 1 - weightPercent / 100)) * 100;
}
