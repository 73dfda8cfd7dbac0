import type { Entry } from '../../../domain/model/entry.ts';
import type { Sheet } from '../../types.ts';
import { PHRASAL } from '../../words/phrasal.ts';
import { verbForms } from '../../words/verbs.ts';
import type { Told } from '../telling.ts';
import { deedOf } from './deed-of.ts';

/** So many words may stand between a verb and its particle: "build the worn one up". */
const BETWEEN = 4;

/** An entry whose verb the clause has with a particle that makes it another deed: "built up", "drill the stud out". */
export function phrasal(sheet: Sheet, x: Told): Told {
  const e = x.entry, deed = deedOf(e) ?? (e.kind === 'recheck' || e.kind === 'out' ? e.do : undefined), particle = deed === undefined ? undefined : PHRASAL[deed];
  if (!particle) return x;
  const { tokens } = sheet, at = tokens.findIndex((t, k) => k >= x.clause.from && k < x.clause.to && verbForms(t.low).some(f => f.base === deed));
  const with_ = at < 0 ? undefined : tokens.slice(at + 1, Math.min(x.clause.to, at + 2 + BETWEEN)).find(t => particle.test(t.low));
  return with_ ? { ...x, entry: { ...e, [e.kind === 'work' ? 'action' : 'do']: `${deed} ${with_.low}` } as Entry } : x;
}
