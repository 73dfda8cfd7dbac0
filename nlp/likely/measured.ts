import type { Entry } from '../../domain/model/entry.ts';
import { nameWords } from '../../domain/model/names.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import { suits } from '../meanings/lib/quantity.ts';
import { choice } from './choice.ts';
import type { Weighed } from './net/weighed.ts';
import { spotOf } from './spot.ts';
import { stretchOf } from './stretch-of.ts';

/** How strongly the net must speak for what a figure measures, or for the unit of a bare one, where the note does not say it (log odds). */
const MEASURES = 0.5, IN = 0.5;

/** A reading with what the net takes its figure to measure, where the rules only took it from the unit or the verb; and with the unit that a bare figure is in. */
export function measured(sheet: Sheet, x: Told, net: Weighed): Told {
  const e = x.entry;
  if (e.kind !== 'reading') return x;
  const at = spotOf(sheet, x);
  if (!at) return x;
  const says = net.alone(...stretchOf(sheet, at)), said = new Set(sheet.tokens.flatMap(t => nameWords(t.low)));
  const told = nameWords(e.what).some(w => said.has(w)) ? undefined : choice(says, 'what ', MEASURES), what = told !== undefined && suits(told, e.unit) ? told : undefined;
  const by = e.unit === undefined ? choice(says, 'in ', IN) : undefined;
  if ((what === undefined || nameWords(what).every(w => nameWords(e.what).includes(w))) && by === undefined) return x; // "lifting pressure" says more than "pressure"
  const made = { ...e, what: what ?? e.what, ...(by === 'thou' ? { value: e.value / 1000, unit: 'in' } : by !== undefined ? { unit: by } : {}) } as Entry;
  sheet.trace.push({ stage: 'odds', rule: 'measured', text: e.what, gave: [what, by].filter(Boolean).join(', ') });
  return { ...x, entry: made };
}
