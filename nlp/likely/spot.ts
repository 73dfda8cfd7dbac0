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
  return value === undefined ? undefined : figureIn(sheet, from, to, value);
}

/** The figure that tells an entry from others of its kind. */
const figureOf = (e: Entry): number | undefined => (e.kind === 'reading' ? e.value : e.kind === 'hours' ? e.hours : e.kind === 'quote' || e.kind === 'bought' || e.kind === 'order' ? e.price : undefined);

function deedIn(sheet: Sheet, from: number, to: number, deed: string): Stretch | undefined {
  const base = deed.split(/[\s-]/)[0]!.toLowerCase();
  for (let i = from; i < to; i++) if (sheet.tokens[i]!.low === base || verbForms(sheet.tokens[i]!.low).some(f => f.base === base)) return { from: i, to: i + 1 };
  return undefined;
}

function figureIn(sheet: Sheet, from: number, to: number, value: number): Stretch | undefined {
  const same = (v: number): boolean => Math.abs(v - value) <= 0.005 * Math.abs(value);
  for (let i = from; i < to; i++) {
    const f = valueAt(sheet, i, to);
    if (f && (f.dim === 'span' ? same(f.value.amount) : 'value' in f.value && typeof f.value.value === 'number' && (same(f.value.value) || same(f.value.value / 1000)))) return { from: f.from, to: f.to };
  }
  return undefined;
}

function wordsIn(sheet: Sheet, from: number, to: number, said: string): Stretch | undefined {
  const words = said.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [], at: number[] = [];
  for (let i = from; i < to && at.length < words.length; i++) if (sheet.tokens[i]!.low === words[at.length]) at.push(i);
  return at.length > 0 && at.length === words.length ? { from: at[0]!, to: at.at(-1)! + 1 } : undefined;
}
