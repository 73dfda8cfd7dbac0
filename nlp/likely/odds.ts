import { readFileSync } from 'node:fs';
import type { Placed } from '../clauses/clauses.ts';
import { signsOf } from './signs.ts';
import { kindOf, type Sort } from './sort.ts';

/** What was learned (`learn/learn.ts`): for each sort how common it is (`bias`), and for each sign the sorts it speaks for or against, as [place in `sorts`, weight, …]. */
interface Weights { sorts: Sort[]; bias: number[]; signs: Map<string, number[]> }

let loaded: Weights | undefined;
function weights(): Weights {
  if (!loaded) {
    const read = JSON.parse(readFileSync(new URL('./weights.json', import.meta.url), 'utf8')) as Omit<Weights, 'signs'> & { signs: Record<string, number[]> };
    loaded = { ...read, signs: new Map(Object.entries(read.signs)) };
  }
  return loaded;
}

/** What signs say for each sort (log odds): the sum of them. */
function bySigns(of: ReadonlySet<string>): [Sort, number][] {
  const { sorts, bias, signs } = weights(), sum = [...bias];
  for (const s of of) {
    const w = signs.get(s);
    if (w) for (let i = 0; i < w.length; i += 2) sum[w[i]!]! += w[i + 1]!;
  }
  return sorts.map((sort, i) => [sort, sum[i]!]);
}

/** Under this what was learned speaks plainly against a kind. */
const AGAINST = 0.15;
/** Kinds with a bound of their own: rules that are wide tell wrong under it more often than right, narrow ones hold where the net doubts; corrections are few, so that a true one may look unlikely. */
const OWN: Readonly<Record<string, number>> = { job: 0.3, finding: 0.3, reading: 0.2, work: 0.1, fit: 0.05, hands: 0.05, amend: 0.01 };

/** What the net says of a clause: how strongly it speaks for each sort (log odds), and the word of the clause that says most for one. */
export interface ByNet { z: ReadonlyMap<Sort, number>; loudest(sort: Sort): string }

/**
 * How likely a clause holds an entry of each sort, 0 to 1, through the logistic function: as the net has it, else as the sum of its signs, learned from annotated notes. Beside the net the
 * signs add nothing (found on notes that neither learned from).
 */
export class Odds {
  private readonly of: [Sort, number][];
  private readonly byKind = new Map<string, number>();
  private readonly signs: ReadonlySet<string>;
  private readonly net: ByNet | undefined;

  constructor(clauses: readonly Placed[], at: number, net?: ByNet) {
    this.net = net;
    this.signs = net ? new Set() : signsOf(clauses, at);
    this.of = (net ? [...net.z] : bySigns(this.signs)).map(([sort, z]): [Sort, number] => [sort, 1 / (1 + Math.exp(-z))]).sort((a, b) => b[1] - a[1]);
    for (const [s, p] of this.of) if (!this.byKind.has(kindOf(s))) this.byKind.set(kindOf(s), p);
  }

  /** Every sort with its likelihood, likeliest first. */
  sorts(): readonly (readonly [sort: Sort, p: number])[] { return this.of; }

  /** How likely one sort is; nothing is known of one that was not learned. */
  p(sort: Sort): number | undefined { return this.of.find(([s]) => s === sort)?.[1]; }

  /** The likeliest sort with what speaks most for it, as the trace says it: a word where the net says so, else signs. */
  why(): string {
    const [sort, p] = this.of[0] ?? ['nothing', 0];
    if (this.net) return `${sort} ${p.toFixed(2)}: by "${this.net.loudest(sort)}"`;
    const { sorts, signs } = weights(), place = sorts.indexOf(sort);
    const weight = (s: string): number => { const w = signs.get(s) ?? []; for (let i = 0; i < w.length; i += 2) if (w[i] === place) return w[i + 1]!; return 0; };
    const told = [...this.signs].map((s): [string, number] => [s, weight(s)]).sort((a, b) => b[1] - a[1]).slice(0, 4).filter(([, w]) => w > 0);
    return `${sort} ${p.toFixed(2)}: ${told.map(([s, w]) => `${s} +${w.toFixed(1)}`).join(', ')}`;
  }

  /** Whether what was learned speaks plainly against every one of some kinds, so that a rule that gives them need not be asked. */
  against(kinds: readonly string[]): boolean {
    return kinds.length > 0 && kinds.every(k => (this.byKind.get(k) ?? 1) < (OWN[k] ?? AGAINST));
  }
}
