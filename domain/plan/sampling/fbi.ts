import type { Network } from '../network.ts';

/**
 * Orders a schedule for the pass in the other direction: last to finish comes first. Scheduling the mirrored network in
 * that order pushes every activity as late as it will go (justification); doing it again pulls them back to the left.
 * Neither pass can lengthen the schedule, and often one shortens it. (Valls, Ballestin & Quintanilla 2005, EJOR 165:375-386.)
 * A counting sort over finish times; among equals the later in topological order comes first, so that the result is a
 * valid list for the mirrored network even with activities of no length.
 */
export function turnedOrder(network: Network): (start: Int32Array, list: Int32Array) => void {
  const { count, duration, topological } = network;
  const places = new Int32Array(duration.reduce((sum, d) => sum + d, 0) + 2);
  return (start, list) => {
    let last = 0;
    for (let i = 0; i < count; i++) {
      const end = start[i]! + duration[i]!;
      places[end]!++;
      if (end > last) last = end;
    }
    let filled = count;
    for (let t = 0; t <= last; t++) {
      const here = places[t]!;
      places[t] = filled;
      filled -= here;
    }
    for (let at = 0; at < count; at++) {
      const i = topological[at]!;
      list[--places[start[i]! + duration[i]!]!] = i;
    }
    places.fill(0, 0, last + 1);
  };
}
