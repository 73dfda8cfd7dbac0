import type { Network } from './network.ts';

/** Places a list of activities as early as possible; made once for a network, then called thousands of times. */
interface SerialBuilder {
  /**
   * Serial schedule generation: takes the activities in the order of `list` (every activity after its predecessors) and
   * starts each at the earliest time at which all are finished that must precede it and its resources are free throughout.
   * Fills `start` and answers the makespan. (Kolisch 1996, EJOR 90:320-333.)
   */
  build(list: Int32Array, start: Int32Array): number;
}

/** Answers a builder whose only state is its scratch table of resources in use, `used[time * resources + r]`. */
export function serialBuilder(network: Network): SerialBuilder {
  const { count, resources, capacity, duration, need, predStart, pred } = network;
  const horizon = duration.reduce((sum, d) => sum + d, 0);
  const used = new Int32Array((horizon + 1) * resources);

  /** Earliest start from `from` on. On a clash the start jumps past the clash, so no instant is looked at twice. */
  function firstFit(i: number, from: number): number {
    const length = duration[i]!;
    const base = i * resources;
    let start = from;
    for (let t = start + length - 1; t >= start; t--) {
      const row = t * resources;
      for (let r = 0; r < resources; r++) {
        if (used[row + r]! + need[base + r]! > capacity[r]!) {
          start = t + 1;
          t = start + length;
          break;
        }
      }
    }
    return start;
  }

  function occupy(i: number, from: number): void {
    const base = i * resources;
    const end = (from + duration[i]!) * resources;
    for (let row = from * resources; row < end; row += resources) {
      for (let r = 0; r < resources; r++) used[row + r]! += need[base + r]!;
    }
  }

  let dirty = 0;
  return {
    build(list, start) {
      used.fill(0, 0, dirty * resources);
      let makespan = 0;
      for (let at = 0; at < count; at++) {
        const i = list[at]!;
        let ready = 0;
        for (let e = predStart[i]!; e < predStart[i + 1]!; e++) {
          const end = start[pred[e]!]! + duration[pred[e]!]!;
          if (end > ready) ready = end;
        }
        const s = firstFit(i, ready);
        occupy(i, s);
        start[i] = s;
        if (s + duration[i]! > makespan) makespan = s + duration[i]!;
      }
      dirty = makespan;
      return makespan;
    },
  };
}
