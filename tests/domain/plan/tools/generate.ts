import { seeded } from '../../../../domain/plan/random.ts';
import type { Activity } from '../../../../domain/plan/network.ts';

/**
 * A made-up project: `count` activities of 1 to 10 units, one to three predecessors each out of the ones shortly before it,
 * four resources of which an activity needs some. Ours, and no relation of any published set.
 */
export function madeUpProject(count: number, seed: number, resources = 4): { activities: Activity[]; capacities: number[] } {
  const random = seeded(seed * 7919 + count);
  const activities: Activity[] = [];
  const share = [0.25, 0.5, 0.75, 1][seed % 4]!;
  for (let i = 0; i < count; i++) {
    const reach = Math.min(i, 12);
    const after = new Set<string>();
    for (let k = 0; k < 1 + random.below(3) && reach > 0 && i > 2; k++) after.add(`j${i - 1 - random.below(reach)}`);
    const needs = Array.from({ length: resources }, () => (random.unit() < share ? 1 + random.below(10) : 0));
    activities.push({ id: `j${i}`, duration: 1 + random.below(10), needs, after: [...after] });
  }
  const scarce = [1, 1.5, 2, 3][(seed >> 2) % 4]!;
  return { activities, capacities: Array.from({ length: resources }, () => Math.round(10 * scarce)) };
}
