import { sheetBefore } from '../../sheet.ts';
import type { Sheet } from '../../types.ts';
import { longName } from '../../words/short-names.ts';
import type { Meant } from './pieces.ts';
import { weigh, type Weighed } from './weighed.ts';

/** What the net says of a note after the one before it, words that were mended in either, and short names, read as what is meant by them. */
export function weighNote(sheet: Sheet): Weighed | undefined {
  const before = sheetBefore(sheet.ctx);
  return weigh(sheet.text, before?.text, meantIn(sheet), before ? meantIn(before) : []);
}

/** The stretches that were mended, and the short names, each with its words; several words may stand in one stretch ("LF"). */
function meantIn(sheet: Sheet): Meant[] {
  const out: Meant[] = [];
  for (const t of sheet.tokens) {
    const long = longName(t.low); // the net has met "radiator" far oftener than "rad"
    if (long !== undefined) { out.push({ start: t.start, end: t.end, words: long }); continue; }
    if (!t.mended) continue;
    const last = out.at(-1);
    if (last && last.start === t.start) last.words += ` ${t.low}`;
    else if (sheet.text.slice(t.start, t.end).toLowerCase() !== t.low) out.push({ start: t.start, end: t.end, words: t.low });
  }
  return out;
}
