import type { Entry } from '../../../domain/model/entry.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import { pointedApart } from '../../likely/pointed.ts';
import { onlyWhich } from '../../likely/name-of.ts';
import { allSaid, wordsIn, type Said } from '../../likely/said.ts';
import { trim } from '../lib/fields.ts';
import { verdictIn } from '../lib/verdict.ts';
import type { Telling } from '../telling.ts';
import { readOff } from './read-off.ts';

/** How sure the net must be, on the whole, of each name and of what is said of it. */
const SURE = 0.6;

/**
 * Findings or readings of several things that one clause tells of one after another ("front is good, middle is rough"; "inlet twelve thou, exhaust sixteen"): to each name
 * that the net points to belongs what it takes for a condition or a figure before the next. Fewer than two are none.
 */
export function apart(t: Telling, net: Weighed, kind: 'finding' | 'reading'): Entry[] {
  const names = pointedApart(t.sheet, net, t.clause, kind).filter(n => n.p > SURE && !onlyWhich(n.name));
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

/** Told in a row, a figure without a unit of its own or of the first says too little. */
function reading(t: Telling, net: Weighed, part: string, said: Said): Entry | undefined {
  const read = readOff(t, net, said);
  return read?.unit !== undefined ? { kind: 'reading', part, ...read } as Entry : undefined;
}
