import type { Network } from '../network.ts';
import type { Random } from '../random.ts';

/** The middle stretch taken from the second parent: at least a quarter of the list, at most three quarters. */
const SHORTEST = 0.25;
const LONGEST = 0.75;
/** Chance that two neighbours of a list change places. */
const SWAP = 0.03;

/** Makes a new list out of two; both parents and the child are valid lists for `network`. */
export interface Breeder {
  breed(mother: Int32Array, father: Int32Array, child: Int32Array, random: Random): void;
}

/** Two-point crossover of activity lists (Hartmann 1998, Nav. Res. Logist. 45:733-750), then swaps of neighbours. */
export function breeder(network: Network): Breeder {
  const { count, predStart, pred } = network;
  const taken = new Uint8Array(count);

  /** Takes, in the parent's order, what is not in the child yet, until the child is filled up to `to`. */
  function copy(parent: Int32Array, child: Int32Array, from: number, to: number): void {
    let filled = from;
    for (let at = 0; filled < to; at++) {
      const i = parent[at]!;
      if (taken[i]) continue;
      taken[i] = 1;
      child[filled++] = i;
    }
  }

  function mustPrecede(before: number, after: number): boolean {
    for (let e = predStart[after]!; e < predStart[after + 1]!; e++) if (pred[e] === before) return true;
    return false;
  }

  return {
    breed(mother, father, child, random) {
      const width = Math.floor(count * (SHORTEST + random.unit() * (LONGEST - SHORTEST)));
      const cut = random.below(count - width + 1);
      taken.fill(0);
      copy(mother, child, 0, cut);
      copy(father, child, cut, cut + width);
      copy(mother, child, cut + width, count);
      for (let at = 0; at + 1 < count; at++) {
        if (random.unit() >= SWAP) continue;
        const [first, second] = [child[at]!, child[at + 1]!];
        if (mustPrecede(first, second)) continue;
        child[at] = second;
        child[at + 1] = first;
      }
    },
  };
}
