import type { Entry } from '../../../domain/model/entry.ts';
import { namedBy } from '../../../domain/model/named-by.ts';
import { nameWords } from '../../../domain/model/names.ts';
import type { Placed } from '../../clauses/clauses.ts';
import type { Told } from '../../meanings/telling.ts';
import type { Sheet } from '../../types.ts';
import { candidates, RENAMED } from '../naming.ts';

/** One name that an entry might have had, with its signs, and whether it is the one that the annotators gave. */
export interface NamedExample { signs: Set<string>; right: boolean }

/** From each entry that the rules read and the annotators wrote too (the same kind, most fields alike): every name it might have had. */
export function namedExamples(sheet: Sheet, told: readonly Told[], entries: readonly Entry[]): NamedExample[] {
  const left = [...entries], out: NamedExample[] = [];
  for (const x of told) {
    const name = namedBy(x.entry), same = left.filter(e => e.kind === x.entry.kind);
    if (name === undefined || !RENAMED.has(x.entry.kind) || !same.length) continue;
    const closest = same.reduce((a, b) => (closeness(b, x.entry) > closeness(a, x.entry) ? b : a)), gold = namedBy(closest);
    if (gold === undefined || same.length > 1 && closeness(closest, x.entry) <= 0.3) continue;
    left.splice(left.indexOf(closest), 1);
    const all = candidates(sheet, x.clause as Placed, x.entry.kind, name), best = Math.max(...all.map(c => alike(c.name, gold)));
    if (best >= 0.6) for (const c of all) out.push({ signs: c.signs, right: alike(c.name, gold) > best - 1e-6 });
  }
  return out;
}

/** How alike two entries are: their names twice, each other field once. */
function closeness(a: Entry, b: Entry): number {
  const other = b as unknown as Record<string, unknown>;
  return alike(namedBy(a) ?? '', namedBy(b) ?? '') * 2 + Object.entries(a).filter(([k]) => !/^(kind|part|item|maybe)$/.test(k)).reduce((n, [k, v]) => n + (typeof v === 'string' && typeof other[k] === 'string' ? alike(v, other[k] as string) : Number(v === other[k])), 0);
}

/** Dice over the words of two names, 0 to 1. */
function alike(a: string, b: string): number {
  const x = nameWords(a), pool = [...nameWords(b)], of = x.length + pool.length;
  let n = 0;
  for (const w of x) { const i = pool.indexOf(w); if (i >= 0) { n++; pool.splice(i, 1); } }
  return of ? 2 * n / of : 0;
}
