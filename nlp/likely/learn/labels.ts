import type { Entry } from '../../../domain/model/entry.ts';
import { namedBy } from '../../../domain/model/named-by.ts';
import { nameKey } from '../../../domain/model/names.ts';
import type { Placed } from '../../clauses/clauses.ts';
import type { Told } from '../../meanings/telling.ts';
import type { Found, Token } from '../../types.ts';
import { sortOf, type Sort } from '../sort.ts';

/** What a clause is labelled with: the sorts of the entries it tells, and those that count neither way there. */
export interface Label { is: Set<Sort>; maybe: Set<Sort> }

/**
 * Which clause of a note each of its annotated entries was said in: the one whose words have most of what the entry holds, sooner one that the rules
 * read the same from, or that is likely of that sort (`p`, once something was learned). An entry whose words are in no clause labels none.
 */
export function labels(tokens: readonly Token[], clauses: readonly Placed[], told: readonly Told[], entries: readonly (Entry & { maybe?: boolean })[], p: (clause: number, sort: Sort) => number): Label[] {
  const out = clauses.map((): Label => ({ is: new Set(), maybe: new Set() }));
  const words = clauses.map(c => new Set([...tokens.slice(c.from, c.to).flatMap(t => keys(t.low)), ...c.items.flatMap(i => (i.base ? [i.base] : [])), ...[...c.subj, ...c.obj].flatMap(x => keys(x.name))]));
  const figures = clauses.map(c => c.items.flatMap(i => (i.f ? numbers(i.f) : [])));
  for (const e of entries) {
    const sort = sortOf(e), name = namedBy(e);
    const fits = clauses.map((c, i) => {
      const read = told.filter(x => x.entry.kind === e.kind && x.clause.from === c.from);
      let n = read.some(x => namedBy(x.entry) === name) ? 1.2 : read.length ? 0.6 : 0;
      for (const [field, v] of Object.entries(e)) {
        if (field === 'kind' || field === 'state' || typeof v === 'boolean') continue;
        if (typeof v === 'number') { n += figures[i]!.some(f => Math.abs(f - v) <= 0.005 * Math.abs(v)) ? 1.2 : figures[i]!.length ? 0.4 : 0; continue; }
        const of = keys(String(v));
        if (of.length) n += of.filter(w => words[i]!.has(w)).length / of.length * (v === name ? 1 : TELLING.has(field) ? 1.4 : 0.9);
      }
      return n + 1.5 * p(i, sort);
    });
    const best = fits.indexOf(Math.max(...fits));
    if (best < 0 || fits[best]! <= 0.3) continue;
    out[best]![e.maybe ? 'maybe' : 'is'].add(sort);
  }
  return out;
}

/** Fields that are said where the entry is told, while its name may stand in another clause. */
const TELLING = new Set(['condition', 'action', 'do', 'what', 'where', 'text', 'with', 'product', 'source', 'spec', 'first', 'then']);

/** What a figure may be in an entry. */
const numbers = (f: Found): number[] => (f.dim === 'span' ? [f.value.amount, f.value.amount / 60] : f.dim !== 'when' && f.dim !== 'thread' ? [f.value.value].filter(v => typeof v === 'number') : []);

const keys = (s: string): string[] => nameKey(s).split(' ').filter(w => w && !/^(a|an|the|my|his|her|its|our|of|for|to|on|in|at|and)$/.test(w));
