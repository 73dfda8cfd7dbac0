import type { Entry } from '../../domain/model/entry.ts';
import { valueAt } from '../clauses/items.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import { verbForms } from '../words/verbs.ts';

/** A stretch of tokens [from, to). */
export interface Stretch { from: number; to: number }

/**
 * The word or figure of its clause that an entry was told with: the verb of a deed, the figure of a reading, of hours or of a price, the words of what was found.
 * What the net is asked from there is asked of this entry, not of all that its clause tells. Nothing where the clause does not say it in so many words.
 */
export function spotOf(sheet: Sheet, x: Told): Stretch | undefined {
  const from = x.clause.from, to = Math.max(x.clause.to, x.to ?? 0), e = x.entry;
  if (e.kind === 'work') return deedIn(sheet, from, to, e.action);
  if (e.kind === 'job') return deedIn(sheet, from, to, e.do);
  if (e.kind === 'finding') return wordsIn(sheet, from, to, e.condition);
  const value = figureOf(e);
  return value === undefined ? undefined : figureIn(sheet, from, to, value, e.kind === 'reading' ? e.unit : undefined);
}

/** The figure that tells an entry from others of its kind. */
const figureOf = (e: Entry): number | undefined => (e.kind === 'reading' ? e.value : e.kind === 'hours' ? e.hours : e.kind === 'quote' || e.kind === 'bought' || e.kind === 'order' ? e.price : undefined);

function deedIn(sheet: Sheet, from: number, to: number, deed: string): Stretch | undefined {
  const base = verbOf(deed.toLowerCase());
  for (let i = from; i < to; i++) if (sheet.tokens[i]!.low === base || verbForms(sheet.tokens[i]!.low).some(f => verbOf(f.base) === base)) return { from: i, to: i + 1 };
  return undefined;
}

/** "send" of "send out", "wire" of "wire-brush": the first word of a deed. */
export const verbOf = (deed: string): string => deed.split(/[\s-]/)[0]!;

/** Where a figure stands: in its own unit before any other ("all 4 rings gapped at 4 thou"), a bare one that may be thousandths last. */
function figureIn(sheet: Sheet, from: number, to: number, value: number, unit: string | undefined): Stretch | undefined {
  const same = (v: number): boolean => Math.abs(v - value) <= 0.005 * Math.abs(value), found: (Stretch & { fits: number })[] = [];
  for (let i = from; i < to; i++) {
    const f = valueAt(sheet, i, to), v = f?.value;
    if (!f || !v) continue;
    const fits = f.dim === 'span' ? (same(f.value.amount) || f.value.unit === 'minutes' && same(f.value.amount / 60) ? 2 : 0)
      : !('value' in v) || typeof v.value !== 'number' ? 0 : same(v.value) ? (f.dim === 'measure' && unit !== undefined && f.value.unit === unit ? 3 : 2) : same(v.value / 1000) ? 1 : 0;
    if (fits) found.push({ from: f.from, to: f.to, fits });
  }
  const best = found.reduce<(Stretch & { fits: number }) | undefined>((a, b) => (a && a.fits >= b.fits ? a : b), undefined);
  return best && { from: best.from, to: best.to };
}

/** The words of what was said, in their order; what was left off between them stands there too. */
function wordsIn(sheet: Sheet, from: number, to: number, said: string): Stretch | undefined {
  const letters = (s: string): string => s.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ''), all = letters(said);
  const ends = new Set<number>();
  (said.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).reduce((at, word) => { ends.add(at + word.length); return at + word.length; }, 0);
  let done = 0, first: number | undefined, last = from;
  for (let i = from; i < to && done < all.length; i++) {
    const word = letters(sheet.tokens[i]!.low);
    if (!word || !all.startsWith(word, done) || !ends.has(done + word.length)) continue; // not the "a" of "arm"
    done += word.length; first ??= i; last = i;
  }
  return first !== undefined && done === all.length ? { from: first, to: last + 1 } : undefined;
}
