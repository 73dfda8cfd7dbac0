/**
 * Nut factor K by the surface of the threads (T = K D F).
 * Source: dry .20 and oiled .15 are the basis of four printed charts; plated .22 and waxed .10 of one of them; anti-seize .12 to .16 read in a
 * design tutorial, so it is put with the oiled charts. Army rule (plated 20 % under dry): TM 9-6115-604-34.
 */
export type Surface = 'dry' | 'oiled' | 'anti-seize' | 'plated' | 'waxed';

interface NutFactor {
  k: number;
  about: string;
}

export const NUT_FACTORS: Record<Surface, NutFactor> = {
  dry: { k: 0.2, about: 'dry, clean threads' },
  oiled: { k: 0.15, about: 'oiled threads' },
  'anti-seize': { k: 0.15, about: 'anti-seize taken as the oiled charts; makers give 0.12 to 0.16, so use theirs' },
  plated: { k: 0.22, about: 'zinc plated and not oiled' },
  waxed: { k: 0.1, about: 'waxed threads' },
};

/** New plated hardware against clean dry steel, by the Army rule: the opposite way of the plated column. */
export const ARMY_PLATED = 0.8;

/** Oil on a plated bolt is what counts, so oil is looked for before plating. */
const WORDS: readonly [Surface, RegExp][] = [
  ['anti-seize', /anti.?seiz|copper (grease|paste)|nickel paste|moly/],
  ['waxed', /wax/],
  ['oiled', /\boil|lubed?\b|lubricat|greas|\bwet\b/],
  ['plated', /plated|plating|\bzinc\b|cadmium|\bcad\b/],
  ['dry', /\bdry\b|plain|\bclean\b|\bbare\b|as received|\bblack\b/],
];

/** "not oiled", "unplated", "no lube": said to be absent, so plain unless something else is named. */
const ABSENT = /\b(?:not|no|without|un-?)\s*-?(?:oil\w*|lub\w*|greas\w*|plat\w*|zinc)/g;

/** The surface meant, or undefined for one the charts have no factor for (thread locker, hot-dip galvanised, paint). */
export function readSurface(text: string): Surface | undefined {
  const said = text.toLowerCase();
  const plain = said.replace(ABSENT, ' ');
  return WORDS.find(([, pattern]) => pattern.test(plain))?.[0] ?? (plain === said ? undefined : 'dry');
}
