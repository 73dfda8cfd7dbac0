import type { Entry } from '../../../domain/model/entry.ts';
import { namedBy } from '../../../domain/model/named-by.ts';
import { nameKey } from '../../../domain/model/names.ts';
import type { Placed } from '../../clauses/clauses.ts';
import type { Told } from '../../meanings/telling.ts';
import type { Found, Token } from '../../types.ts';
import { sortOf, type Sort } from '../sort.ts';

/** What a clause is labelled with: the sorts of the entries it tells, those that count neither way there, and which entries of the note they are. */
export interface Label { is: Set<Sort>; maybe: Set<Sort>; tells: number[] }

type Annotated = Entry & { maybe?: boolean };

/** Of a clause that is likely of a sort, so much speaks for an entry of that sort; where it tells another already, less, so that no likely clause is left without one. */
const LIKELY = 2.2, LIKELY_AGAIN = 0.8;
/** Entries are laid anew so often, each with the others where they lie: it settles in two or three. */
const ROUNDS = 4;
/** So much of a clause's words in a remark, and it is part of that remark. */
const PART_OF_REMARK = 0.7;

/**
 * Which clause of a note each of its annotated entries was said in: the one whose words have most of what the entry holds, sooner one that the rules
 * read the same from, or that is likely of that sort (`p`, once something was learned). An entry whose words are in no clause labels none.
 */
export function labels(tokens: readonly Token[], clauses: readonly Placed[], told: readonly Told[], entries: readonly Annotated[], p: (clause: number, sort: Sort) => number): Label[] {
  const out = clauses.map((): Label => ({ is: new Set(), maybe: new Set(), tells: [] }));
  const lows = clauses.map(c => tokens.slice(c.from, c.to).map(t => t.low));
  const words = clauses.map((c, i) => new Set([...lows[i]!.flatMap(keys), ...c.items.flatMap(x => (x.base ? [x.base] : [])), ...[...c.subj, ...c.obj].flatMap(x => keys(x.name))]));
  const figures = clauses.map(c => c.items.flatMap(x => (x.f ? numbers(x.f) : [])));
  const fit = (e: Annotated, i: number): number => {
    const read = told.filter(x => x.entry.kind === e.kind && x.clause.from === clauses[i]!.from), name = namedBy(e), deed = deedOf(e);
    let n = read.some(x => namedBy(x.entry) === name && deedOf(x.entry) === deed) ? 1.2 : read.length ? 0.6 : 0;
    for (const [field, v] of Object.entries(e)) {
      if (field === 'kind' || field === 'state' || typeof v === 'boolean') continue;
      if (typeof v === 'number') n += figures[i]!.some(f => Math.abs(f - v) <= 0.005 * Math.abs(v)) ? 1.2 : figures[i]!.length ? 0.4 : 0;
      else {
        const of = keys(String(v)), said = of.filter(w => words[i]!.has(w) || v === deed && lows[i]!.some(low => isForm(low, w)));
        if (of.length) n += said.length / of.length * (v === name ? 1 : TELLING.has(field) ? 1.4 : 0.9);
      }
    }
    return n;
  };
  const sorts = entries.map(sortOf), fits = entries.map(e => clauses.map((_, i) => fit(e, i))), at = entries.map(() => -1);
  for (let round = 0; round < ROUNDS; round++) {
    for (const [k, sort] of sorts.entries()) {
      const taken = new Set(at.filter((_, other) => other !== k && sorts[other] === sort));
      const worth = fits[k]!.map((n, i) => n + (taken.has(i) ? LIKELY_AGAIN : LIKELY) * p(i, sort));
      const best = worth.indexOf(Math.max(...worth));
      at[k] = best >= 0 && worth[best]! > 0.3 ? best : -1;
    }
  }
  for (const [k, e] of entries.entries()) {
    if (at[k]! < 0) continue;
    const label = out[at[k]!]!;
    label[e.maybe ? 'maybe' : 'is'].add(sorts[k]!);
    label.tells.push(k);
  }
  for (const e of entries) {
    if (e.kind !== 'remark') continue;
    const of = new Set(keys(e.text ?? ''));
    for (const [i, label] of out.entries()) {
      const own = lows[i]!.flatMap(keys);
      if (!label.tells.length && own.length && own.filter(w => of.has(w)).length >= PART_OF_REMARK * own.length) label[e.maybe ? 'maybe' : 'is'].add('remark');
    }
  }
  return out;
}

/** Fields that are said where the entry is told, while its name may stand in another clause. */
const TELLING = new Set(['condition', 'action', 'do', 'what', 'where', 'text', 'with', 'product', 'source', 'spec', 'first', 'then']);

const deedOf = (e: Entry): string | undefined => (e.kind === 'work' ? e.action : e.kind === 'job' || e.kind === 'recheck' ? e.do : undefined);

/** Whether a word is a form of a verb as far as its letters tell, with "re-" or without: `riveted`, `retapped`. */
function isForm(word: string, verb: string): boolean {
  const stem = /[ey]$/.test(verb) ? verb.slice(0, -1) : verb;
  return verb.length > 2 && [word, word.replace(/^re-?/, '')].some(w => w.length - verb.length <= 4 && w.startsWith(stem));
}

/** What a figure may be in an entry. */
const numbers = (f: Found): number[] => (f.dim === 'span' ? [f.value.amount, f.value.amount / 60] : f.dim !== 'when' && f.dim !== 'thread' ? [f.value.value].filter(v => typeof v === 'number') : []);

const keys = (s: string): string[] => nameKey(s).split(' ').filter(w => w && !/^(a|an|the|my|his|her|its|our|of|for|to|on|in|at|and)$/.test(w));
