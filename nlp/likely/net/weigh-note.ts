import type { Sheet } from '../../types.ts';
import type { Meant } from './pieces.ts';
import { weigh, type Weighed } from './weighed.ts';

/** What the net says of a note, words that were mended read as what is meant by them. */
export const weighNote = (sheet: Sheet): Weighed | undefined => weigh(sheet.text, sheet.ctx.prior?.at(-1), meantIn(sheet));

/** The stretches that were mended, each with its words; several words may stand in one stretch ("LF"). */
function meantIn(sheet: Sheet): Meant[] {
  const out: Meant[] = [];
  for (const t of sheet.tokens) {
    if (!t.mended) continue;
    const last = out.at(-1);
    if (last && last.start === t.start) last.words += ` ${t.low}`;
    else if (sheet.text.slice(t.start, t.end).toLowerCase() !== t.low) out.push({ start: t.start, end: t.end, words: t.low });
  }
  return out;
}
