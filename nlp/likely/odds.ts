import { kindOf, type Sort } from './sort.ts';

/** Under this the net speaks plainly against a kind. */
const AGAINST = 0.1;
/** Kinds with a bound of their own: rules that are wide tell wrong under it more often than right, narrow ones hold where the net doubts; corrections are few, so that a true one may look unlikely. */
const OWN: Readonly<Record<string, number>> = { job: 0.3, finding: 0.3, reading: 0.2, work: 0.1, fit: 0.05, hands: 0.05, amend: 0.01 };

/** What the net says of a clause: how strongly it speaks for each sort (log odds), and the word of the clause that says most for one. */
export interface ByNet { z: ReadonlyMap<Sort, number>; loudest(sort: Sort): string }

/** How likely a clause holds an entry of each sort, 0 to 1: what the net says of it, through the logistic function. */
export class Odds {
  private readonly of: [Sort, number][];
  private readonly byKind = new Map<string, number>();
  private readonly net: ByNet;

  constructor(net: ByNet) {
    this.net = net;
    this.of = [...net.z].map(([sort, z]): [Sort, number] => [sort, 1 / (1 + Math.exp(-z))]).sort((a, b) => b[1] - a[1]);
    for (const [s, p] of this.of) if (!this.byKind.has(kindOf(s))) this.byKind.set(kindOf(s), p);
  }

  /** Every sort with its likelihood, likeliest first. */
  sorts(): readonly (readonly [sort: Sort, p: number])[] { return this.of; }

  /** How likely one sort is; nothing is known of one that was not learned. */
  p(sort: Sort): number | undefined { return this.of.find(([s]) => s === sort)?.[1]; }

  /** The likeliest sort with the word that speaks most for it, as the trace says it. */
  why(): string {
    const [sort, p] = this.of[0] ?? ['nothing', 0];
    return `${sort} ${p.toFixed(2)}: by "${this.net.loudest(sort)}"`;
  }

  /** Whether the net speaks plainly against every one of some kinds, so that a rule that gives them need not be asked. */
  against(kinds: readonly string[]): boolean {
    return kinds.length > 0 && kinds.every(k => (this.byKind.get(k) ?? 1) < (OWN[k] ?? AGAINST));
  }
}
