import type { Sheet } from '../../types.ts';
import { words } from './words.ts';

/** The state in which something was measured. */
export const STATE = /^(hot|cold|cranking|warm|idling|charging|loaded|wet|dry|running|resting|wide|narrow)$/;
/** Where on a part it was. */
export const SPOT = /^(top|bottom|middle|centre|center|end|idle|tickover|front|back|rear|skirt|nose|rim|edge|heel|toe|flange|shoulder|thinnest|thickest|widest|narrowest|worst|best|tip|root|mouth|base|rest|tdc|bdc|ends|edges|rims|tips|flats|top dead centre|top dead center|bottom dead centre|bottom dead center|far end|near end|big end|small end|drive end|other end|free end|lip|step|face|neck)$/;

/** Whether a spot, and no part that is called by it, stands at token `k` or after its article. */
export const spotAhead = (sheet: Sheet, k: number, to: number): boolean => { let i = k; while (i < to && sheet.tags[i] === 'det') i++; return SPOT.test(sheet.tokens[i]?.low ?? '') && sheet.tags[i + 1] !== 'noun'; };

/** Where a phrase that says the spot ends: "at the nose", "at a fast tickover", "at eight inches out"; undefined where it names a part. */
export function spotEnd(sheet: Sheet, k: number, to: number): number | undefined {
  let i = k;
  while (i < to && sheet.tags[i] === 'det') i++;
  const start = i;
  if (i >= to) return undefined;
  if (sheet.tags[i] === 'num') { while (i < to && sheet.tags[i] === 'num') i++; if (/^(out|in|down|up|back|rpm|revs)$/.test(sheet.tokens[i]?.low ?? '')) i++; return i; }
  while (i < to && ['noun', 'adj'].includes(sheet.tags[i]!)) { i++; if (SPOT.test(words(sheet, start, i)) && /^(of|on|in|,)$/.test(sheet.tokens[i]?.low ?? ',')) return i; }
  if (i === start) return undefined;
  const said = words(sheet, start, i);
  return SPOT.test(said) || SPOT.test(said.split(' ').at(-1)!) ? i : undefined;
}
