import type { Edge } from '../plan/circle.ts';
import type { Proposal } from './match.ts';

/**
 * Adds what the usual order proposes to what the person said. The person wins: a proposal that was refused (by the rule's
 * id) is left out, and so is one that would close a circle with the person's own rules or with earlier proposals.
 */
export function accepted(own: readonly Edge[], proposed: readonly Proposal[], refused: ReadonlySet<string>): Proposal[] {
  const edges: Edge[] = [...own];
  const known = new Set(own.map(([first, then]) => `${first}\n${then}`));
  return proposed.filter(({ rule, first, then }) => {
    if (refused.has(rule.id) || known.has(`${first}\n${then}`)) return false;
    if (leadsTo(edges, then, first)) return false;
    known.add(`${first}\n${then}`);
    edges.push([first, then]);
    return true;
  });
}

/** Whether `to` comes after `from`; edges are few, so a plain search does. */
function leadsTo(edges: readonly Edge[], from: string, to: string): boolean {
  const seen = new Set([from]);
  for (const here of seen) {
    if (here === to) return true;
    for (const [first, then] of edges) if (first === here) seen.add(then);
  }
  return false;
}
