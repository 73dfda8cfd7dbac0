/** A leaf on hand: thickness in whole units of the smallest step, and how many there are (Infinity where not counted). */
export interface Leaf {
  thickness: number;
  count: number;
}

/**
 * Fewest leaves for every total from 0 to `top`, whole units: the coin table. Counted leaves are laid in one by one.
 * Infinity where a total cannot be made.
 */
export function fewestLeaves(leaves: readonly Leaf[], top: number): number[] {
  const fewest = new Array<number>(top + 1).fill(Infinity);
  fewest[0] = 0;
  for (const { thickness, count } of leaves) {
    const uses = Math.min(count, Math.floor(top / thickness));
    if (count === Infinity) {
      for (let total = thickness; total <= top; total += 1)
        fewest[total] = Math.min(fewest[total] ?? Infinity, (fewest[total - thickness] ?? Infinity) + 1);
    } else {
      for (let i = 0; i < uses; i += 1) {
        for (let total = top; total >= thickness; total -= 1)
          fewest[total] = Math.min(fewest[total] ?? Infinity, (fewest[total - thickness] ?? Infinity) + 1);
      }
    }
  }
  return fewest;
}

/** Every stack of at most `most` leaves that makes the total exactly, thick leaves first, fewest leaves first, at most `limit` of them. */
export function stacksFor(leaves: readonly Leaf[], total: number, most: number, limit: number): number[][] {
  const thickFirst = [...leaves].sort((a, b) => b.thickness - a.thickness);
  const found: number[][] = [];
  for (let size = 1; size <= most && found.length < limit; size += 1) {
    fill(thickFirst, 0, total, size, [], found, limit);
  }
  return found;
}

function fill(leaves: readonly Leaf[], from: number, left: number, size: number, stack: number[], found: number[][], limit: number): void {
  if (found.length >= limit) return;
  if (size === 0) {
    if (left === 0) found.push(stack);
    return;
  }
  for (let i = from; i < leaves.length; i += 1) {
    const leaf = leaves[i];
    if (!leaf || leaf.thickness * size < left) return; // even the thickest left can't reach
    if (leaf.thickness > left) continue;
    const used = stack.filter((each) => each === leaf.thickness).length;
    if (used < leaf.count) fill(leaves, i, left - leaf.thickness, size - 1, [...stack, leaf.thickness], found, limit);
  }
}
