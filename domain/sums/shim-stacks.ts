/** A leaf on hand: thickness in whole units of the smallest step, and how many there are (Infinity where not counted). */
export interface Leaf {
  thickness: number;
  count: number;
}

/** Steps of the search for stacks before it is given up: far past any real drawer of shims. */
const SEARCH_STEPS = 200_000;

/**
 * Fewest leaves for every total from 0 to `top`, whole units: the coin table, counted leaves laid in one by one.
 * Infinity where a total cannot be made; of a counted leaf at most `most` are tried.
 */
export function fewestLeaves(leaves: readonly Leaf[], top: number, most: number): number[] {
  const fewest = new Array<number>(top + 1).fill(Infinity);
  fewest[0] = 0;
  const lay = (total: number, thickness: number): void => {
    fewest[total] = Math.min(fewest[total] ?? Infinity, (fewest[total - thickness] ?? Infinity) + 1);
  };
  for (const { thickness, count } of leaves) {
    if (count === Infinity) {
      for (let total = thickness; total <= top; total += 1) lay(total, thickness);
    }
    for (let i = 0; count !== Infinity && i < Math.min(count, most); i += 1) {
      for (let total = top; total >= thickness; total -= 1) lay(total, thickness);
    }
  }
  return fewest;
}

/** Every stack of at most `most` leaves that makes the total exactly, thick leaves first, fewest leaves first, at most `limit` of them. */
export function stacksFor(leaves: readonly Leaf[], total: number, most: number, limit: number): number[][] {
  const fewest = fewestLeaves(leaves, total, most);
  const thickFirst = [...leaves].sort((a, b) => b.thickness - a.thickness);
  const search: Search = { leaves: thickFirst, fewest, found: [], limit, steps: 0 };
  for (let size = fewest[total] ?? Infinity; size <= most; size += 1) fill(search, 0, total, size, []);
  return search.found;
}

interface Search {
  leaves: readonly Leaf[];
  fewest: readonly number[];
  found: number[][];
  limit: number;
  steps: number;
}

/** Adds every way to make `left` with exactly `size` more leaves, none thicker than the one at `from`. */
function fill(search: Search, from: number, left: number, size: number, stack: number[]): void {
  search.steps += 1;
  if (search.found.length >= search.limit || search.steps > SEARCH_STEPS) return;
  if (size === 0 || (search.fewest[left] ?? Infinity) > size) {
    if (size === 0 && left === 0) search.found.push(stack);
    return;
  }
  for (let i = from; i < search.leaves.length; i += 1) {
    const leaf = search.leaves[i];
    if (!leaf || leaf.thickness * size < left) return; // even the thickest left can't reach
    if (leaf.thickness > left) continue;
    const used = stack.filter((each) => each === leaf.thickness).length;
    if (used < leaf.count) fill(search, i, left - leaf.thickness, size - 1, [...stack, leaf.thickness]);
  }
}
