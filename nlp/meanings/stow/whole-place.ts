import type { Sheet } from '../../types.ts';
import type { Told } from '../telling.ts';

const SMALL = String.raw`(?:the|a|an|my|its|his|her|our|that|some|two|three|four|an old|the old)`;
const WORDS = String.raw`(?:[\p{L}\d'’-]+ ){0,2}[\p{L}\d'’-]+`;
/** One more step of saying where: ", under the seed shelf", " with the lid", " above", " of drilled angle iron". */
const STEP = String.raw`(?: (?:above|below|beneath|upstairs)| of ${WORDS}|,? (?:in|on|on top of|under|inside|behind|beside|next to|at|by|with|over|above) ${SMALL} ${WORDS}(?: on top| over| inside)?)`;
/** Such steps, a few at most, as far as the next stop. */
const FURTHER = new RegExp(String.raw`^${STEP}{1,3}(?=\s*(?:[.,;:)!]|$))`, 'u');

/** A place with all that says where it is: what stands after it, up to the stop, in steps of their own ("in the blue basin" "with the lid", "under the seed shelf"). */
export function wholePlace(sheet: Sheet, x: Told): Told {
  const e = x.entry;
  if (e.kind !== 'stow') return x;
  const start = sheet.text.toLowerCase().indexOf(e.where.toLowerCase(), sheet.tokens[x.clause.from]?.start ?? 0);
  if (start < 0) return x;
  const end = start + e.where.length, more = FURTHER.exec(sheet.text.slice(end))?.[0] ?? '';
  return more ? { ...x, entry: { ...e, where: sheet.text.slice(start, end + more.length) } } : x;
}
