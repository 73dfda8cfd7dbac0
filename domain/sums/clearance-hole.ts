import { z } from 'zod';
import { INCH_CLEARANCE, METRIC_CLEARANCE } from './clearance-sizes.ts';
import { INCH_DRILLS, METRIC_DRILLS, nearestDrills } from './drills.ts';
import { named, pair } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { parseThread } from './thread.ts';

const FITS = ['close', 'normal', 'loose'] as const;
const ISO_WORDS: Record<string, (typeof FITS)[number]> = {
  fine: 'close',
  tight: 'close',
  medium: 'normal',
  free: 'loose',
  coarse: 'loose',
};

export const clearanceHole = defineSum({
  of: 'clearanceHole',
  answers: 'What hole lets a bolt through.',
  fields: { size: 'bolt, "1/2", "M10"', fit: 'close, normal or loose (normal where not said)' },
  given: z.object({ size: z.string().optional(), fit: z.string().optional() }),
  work(given) {
    if (!given.size) return ask('size', 'What size is the bolt?');
    const said = given.fit?.toLowerCase();
    const fit = said === undefined ? 'normal' : (FITS.find((each) => each === said) ?? ISO_WORDS[said]);
    if (!fit) return ask('fit', 'Close, normal or loose?', FITS);
    const thread = parseThread(given.size);
    if ('problem' in thread) return refuse(`${thread.problem}.`);
    const inch = thread.system === 'inch';
    const holes = (inch ? INCH_CLEARANCE : METRIC_CLEARANCE).get(thread.d);
    if (!holes) return refuse(`${thread.d} ${inch ? 'in' : 'mm'} is not in the clearance table.`);
    const hole = holes[FITS.indexOf(fit)] ?? 0;
    const drill = nearestDrills(inch ? hole : hole / 25.4, inch ? INCH_DRILLS : METRIC_DRILLS)?.nearest;
    return {
      results: [
        ...(inch ? pair('hole', hole, 'in', 4, 2) : pair('hole', hole, 'mm', 1, 3)),
        ...(drill ? [named('drill', drill.name)] : []),
      ],
      basis: `${fit} fit, ${inch ? 'ASME B18.2.8' : 'ISO 273'}`,
      assumed: given.fit === undefined ? ['normal fit; say close or loose for another'] : [],
      source: inch ? "ASME B18.2.8 (Machinery's Handbook 31, p. 1741)" : 'ISO 273',
    };
  },
});
