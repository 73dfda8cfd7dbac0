import type { Sheet } from '../../types.ts';
import type { Told } from '../telling.ts';

const SMALL = String.raw`(?:the|a|an|my|its|his|her|our|that|some|two|three|four|an old|the old)`;
/** One more step of saying where: ", under the seed shelf", " with the lid", " above, in an oily rag". */
const FURTHER = new RegExp(String.raw`^(?: (?:above|below|beneath|upstairs))?(?:,? (?:in|on|on top of|under|inside|behind|beside|next to|at|by|with|over|above) ${SMALL} (?:[\p{L}\d'’-]+ ){0,2}[\p{L}\d'’-]+(?: on top| over| inside)?)?(?=\s*(?:[.,;:)!]|$))`, 'u');
/** A bound on the steps, so that a run of them ends. */
const STEPS = 2;

/** A place with all that says where it is: what stands after it, up to the stop, in steps of their own ("in the blue basin" "with the lid", "under the seed shelf"). */
export function wholePlace(sheet: Sheet, x: Told): Told {
  const e = x.entry;
  if (e.kind !== 'stow') return x;
  const start = sheet.text.toLowerCase().indexOf(e.where.toLowerCase(), sheet.tokens[x.clause.from]?.start ?? 0);
  if (start < 0) return x;
  let end = start + e.where.length;
  for (let k = 0; k < STEPS; k++) {
    const more = FURTHER.exec(sheet.text.slice(end))?.[0] ?? '';
    if (!more) break;
    end += more.length;
  }
  return end === start + e.where.length ? x : { ...x, entry: { ...e, where: sheet.text.slice(start, end) } };
}
