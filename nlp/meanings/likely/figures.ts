import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { trim } from '../lib/fields.ts';
import { inFull } from '../lib/figure-units.ts';
import { figuresOf } from '../lib/figures.ts';
import { labelOf } from '../lib/label.ts';
import { quantityOf } from '../lib/quantity.ts';
import { asWas } from '../reading/as-was.ts';
import { meter } from '../reading/meter.ts';
import { lowText, type Telling } from '../telling.ts';
import { about } from './about.ts';

/** Figures read off a part: each with what it measures, as far as the words and the unit say. */
export function measured(t: Telling): Entry[] {
  const c = t.clause;
  const figures = figuresOf(t.sheet, c);
  inFull(figures, lowText(t));
  return figures.flatMap(f => {
    if (labelOf(t.sheet, ...f.lead).book) return []; // what the book says was not read off the part
    const k = c.items.findIndex(i => i.from <= f.from && f.from < i.to), found = c.items[k]?.f;
    const q = found && quantityOf(t, c, found, k);
    const part = q?.part ?? about(t, false)[0]?.name, what = (q && f.unit === 'psi' && q.unit === 'lb' ? 'pressure' : q?.what) ?? flaw(t);
    return part && what && (f.unit ?? q?.unit) ? [trim({ kind: 'reading', part, what, value: f.value, unit: f.unit ?? q?.unit, asWas: asWas(t, c) || undefined }) as Entry] : [];
  });
}

/** "a ridge in it, four thou", "a sixteenth of shake": what is wrong is what was measured. */
const flaw = (t: Telling): string | undefined => /\b(ridge|step|lip|groove|shake|slop|slack|play|wear|wobble|gap|clearance|bow|bend|dip|hollow|twist|droop|lift|throw|drop|crown|taper|wind|lash|float|rock)\b/.exec(lowText(t))?.[1];

/** Time that is still to be had, that something runs or is left alone, or that a tin says. */
const NOT_SPENT = /\b(alone|says|running|free|to spare|before the)\b/;

/** Time spent. */
export function spent(t: Telling): Entry[] {
  const run = meter(t);
  if (run) return [run]; // hours on a counter are those that the machine has run
  const span = dims(t.clause.items, 'span').find(s => /^(hours|minutes)$/.test(s.value.unit))?.value;
  if (!span || NOT_SPENT.test(lowText(t)) || t.clauses[t.at + 1]?.sub === 'before' && t.clauses[t.at + 1]!.who === undefined ) return [];
  return [trim({ kind: 'hours', hours: span.unit === 'minutes' ? span.amount / 60 : span.amount, part: about(t, true).find(p => !p.carried)?.name }) as Entry];
}
