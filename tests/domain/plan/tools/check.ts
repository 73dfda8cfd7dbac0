import type { Network } from '../../../../domain/plan/network.ts';

/**
 * Says what is wrong with a schedule, or `undefined` when it holds: every predecessor finished, no resource over its
 * capacity in any unit of time, the makespan as stated. Written apart from the builder: it counts each instant anew.
 */
export function faultIn(network: Network, start: ArrayLike<number>, makespan: number): string | undefined {
  const end = (i: number) => start[i]! + network.duration[i]!;
  let last = 0;
  for (let i = 0; i < network.count; i++) {
    if (!(start[i]! >= 0)) return `${network.ids[i]} has no start`;
    last = Math.max(last, end(i));
    for (let e = network.predStart[i]!; e < network.predStart[i + 1]!; e++) {
      const p = network.pred[e]!;
      if (end(p) > start[i]!) return `${network.ids[i]} starts before ${network.ids[p]} is finished`;
    }
  }
  for (let t = 0; t < last; t++) {
    for (let r = 0; r < network.resources; r++) {
      let used = 0;
      for (let i = 0; i < network.count; i++) {
        if (start[i]! <= t && t < end(i)) used += network.need[i * network.resources + r]!;
      }
      if (used > network.capacity[r]!) return `resource ${r} is over its capacity at ${t}`;
    }
  }
  return last === makespan ? undefined : `the makespan is ${last}, not ${makespan}`;
}
