import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { measure } from './given.ts';
import { holeLimits, shaftLimits, type Limits } from './iso-limits.ts';
import { pair } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert } from './units.ts';

const SMALLEST = 1;
const LARGEST = 180;

export const isoFit = defineSum({
  of: 'isoFit',
  answers: 'The limits of a hole and shaft for an ISO fit, and how loose or tight they come out.',
  fields: { diameter: 'nominal, mm or in', fit: '"H7/g6", or one of the two, "H7", "k6"' },
  given: z.object({ ...measure('diameter', 'length'), fit: z.string().optional() }),
  work(given) {
    if (given.diameter === undefined) return ask('diameter', 'What is the nominal diameter?');
    if (!given.fit) return ask('fit', 'Which fit, such as H7/g6, H7/k6 or H7/p6?', ['H7/g6', 'H7/h6', 'H7/k6', 'H7/p6']);
    const mm = convert(given.diameter, given.diameterUnit ?? 'mm', 'mm');
    if (mm < SMALLEST || mm > LARGEST) return refuse(`The table runs ${SMALLEST} to ${LARGEST} mm.`);
    const codes = given.fit.replace(/\s/g, '').split('/').filter(Boolean);
    const hole = codes.find((code) => /^[A-Z]/.test(code));
    const shaft = codes.find((code) => /^[a-z]/.test(code));
    const [holes, shafts] = [
      hole === undefined ? undefined : holeLimits(mm, hole),
      shaft === undefined ? undefined : shaftLimits(mm, shaft),
    ];
    if (codes.length > 2 || (!hole && !shaft) || (hole && !holes) || (shaft && !shafts)) {
      return refuse(
        `"${given.fit}" is not in the table: holes H5 to H11 and JS, shafts d, e, f, g, h, js, k, m, n, p, r, s with grades 5 to 11.`,
      );
    }
    const assumed = given.diameterUnit ? [] : ['the diameter in mm; say inches if it was'];
    return finish(mm, given.fit, holes, shafts, assumed);
  },
});

function finish(mm: number, fit: string, hole: Limits | undefined, shaft: Limits | undefined, assumed: string[]): Outcome {
  const size = (name: string, micrometres: number) => pair(name, mm + micrometres / 1000, 'mm', 4, 5);
  const gap = (name: string, micrometres: number) => pair(name, micrometres, 'µm', 1, 2);
  const both = hole && shaft ? [...gap('tightest', shaft.high - hole.low), ...gap('loosest', shaft.low - hole.high)] : [];
  return {
    results: [
      ...both,
      ...(hole ? [...size('holeLow', hole.low), ...size('holeHigh', hole.high)] : []),
      ...(shaft ? [...size('shaftLow', shaft.low), ...size('shaftHigh', shaft.high)] : []),
    ],
    basis: `ISO 286, ${fit} at ${Number(mm.toFixed(4))} mm; tightest and loosest are interference, clearance where under zero`,
    assumed,
    caution: `Limits at 20 °C; guard the press, and heat or cool rather than force. ${MANUAL_FIRST}`,
    source: 'ISO 286-2 (JIS B0401 reprint)',
  };
}
