import type { Entry } from '../../../domain/model/entry.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import { pointedApart } from '../../likely/pointed.ts';
import { allSaid, valueIn, wordsIn, type Said } from '../../likely/said.ts';
import { trim } from '../lib/fields.ts';
import { quantityOf } from '../lib/quantity.ts';
import { verdictIn } from '../lib/verdict.ts';
import type { Telling } from '../telling.ts';
import { asWas } from '../reading/as-was.ts';

/** How sure the net must be, on the whole, of each name and of what is said of it. */
const SURE = 0.6;

/**
 * Findings or readings of several things that one clause tells of one after another ("front is good, middle is rough"; "inlet twelve thou, exhaust sixteen"): to each name
 * that the net points to belongs what it takes for a condition or a figure before the next. Fewer than two are none.
 */
export function apart(t: Telling, net: Weighed, kind: 'finding' | 'reading'): Entry[] {
  const names = pointedApart(t.sheet, net, t.clause, kind).filter(n => n.p > SURE);
  if (names.length < 2) return [];
  const said = kind === 'finding' ? allSaid(t.sheet, net, t.clause, 'finding condition').filter(s => s.p > SURE) : t.sheet.found.filter(f => /^(measure|percent|number)$/.test(f.dim)).map(f => ({ from: f.from, to: f.to, p: 1 }));
  const of = (k: number): Said | undefined => said.find(s => s.from >= names[k]!.to && s.to <= (names[k + 1]?.from ?? t.clause.to));
  const out = names.flatMap((n, k) => { const own = of(k); return own ? [kind === 'finding' ? finding(t, n.name, own) : reading(t, net, n.name, own)].filter(e => e !== undefined) : []; });
  return out.length > 1 ? out : [];
}

function finding(t: Telling, part: string, said: Said): Entry | undefined {
  const condition = wordsIn(t.sheet, said);
  return condition ? trim({ kind: 'finding', part, condition, verdict: verdictIn(condition) }) as Entry : undefined;
}

function reading(t: Telling, net: Weighed, part: string, said: Said): Entry | undefined {
  const found = valueIn(t.sheet, said, ['measure', 'percent', 'number']), k = found ? t.clause.items.findIndex(i => i.from <= found.from && found.from < i.to) : -1;
  if (!found || k < 0) return undefined;
  const named = allSaid(t.sheet, net, t.clause, 'reading what').find(s => s.p > SURE), q = quantityOf(t, t.clause, found, k), what = named ? wordsIn(t.sheet, named) : q?.what;
  const first = t.clause.items.find(i => i.f?.dim === 'measure')?.f;
  const unit = found.dim === 'measure' ? found.value.unit : found.dim === 'percent' ? '%' : first?.dim === 'measure' ? first.value.unit : q?.unit; // "twelve thou, exhaust sixteen"
  const value = found.dim === 'number' && first?.dim === 'measure' && first.value.unit === 'in' && Number.isInteger(found.value.value) && first.value.value < 0.2 ? found.value.value / 1000 : found.value.value;
  return what !== undefined && unit !== undefined ? trim({ kind: 'reading', part, what, value, unit, asWas: asWas(t, t.clause) || undefined }) as Entry : undefined;
}
