import { readFileSync } from 'node:fs';
import type { Entry } from '../../domain/model/entry.ts';
import { namedBy } from '../../domain/model/named-by.ts';
import { nameWords } from '../../domain/model/names.ts';
import type { Placed } from '../clauses/clauses.ts';
import { isKnownPart } from '../dimensions/part/known.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import { candidates, RENAMED } from './naming.ts';

let loaded: ReadonlyMap<string, number> | undefined;
/** What each sign says for a name (`learn/learn.ts`). */
const weights = (): ReadonlyMap<string, number> => (loaded ??= new Map(Object.entries(JSON.parse(readFileSync(new URL('./names.json', import.meta.url), 'utf8')) as Record<string, number>)));

/** By so much another name must speak louder than the one that the rules chose. */
const LOUDER = 0.5;

/**
 * Gives an entry the name that the signs speak most for, where that is plainly not the one the rules chose: a name of words that this note says (what only earlier notes
 * spoke of is left to the rules). One of several of its kind in a clause keeps its own.
 */
export function renamed(sheet: Sheet, x: Told, told: readonly Told[]): Told {
  const name = namedBy(x.entry);
  if (name === undefined || !RENAMED.has(x.entry.kind) || told.some(y => y !== x && y.clause === x.clause && y.entry.kind === x.entry.kind)) return x;
  if ([...x.clause.subj, ...x.clause.obj].some(s => s.name === name && s.choices)) return x;
  const w = weights(), said = new Set([...sheet.tokens.flatMap(t => nameWords(t.low)), ...nameWords(name)]);
  const all = candidates(sheet, x.clause as Placed, x.entry.kind, name).filter(c => nameWords(c.name).every(n => said.has(n))).map(c => ({ name: c.name, loud: [...c.signs].reduce((n, s) => n + (w.get(s) ?? 0), 0) }));
  const best = all.reduce((a, b) => (b.loud > a.loud ? b : a));
  if (best === all[0] || best.loud < all[0]!.loud + LOUDER || known(sheet, name) && !known(sheet, best.name)) return x;
  sheet.trace.push({ stage: 'odds', rule: 'name', text: name, gave: best.name });
  return { ...x, entry: { ...x.entry, ['item' in x.entry ? 'item' : 'part']: best.name } as Entry };
}

/** Whether the shop itself has this name. */
const known = (sheet: Sheet, name: string): boolean => isKnownPart(sheet.ctx.parts, name);
