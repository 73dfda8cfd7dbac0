/** The stretches [from, toA) and [from, toB) in which two words differ; `room` is how long the longer of them is. */
function differing(a: string, b: string): { from: number; toA: number; toB: number; room: number } {
  let from = 0, toA = a.length, toB = b.length;
  while (from < toA && from < toB && a.charCodeAt(from) === b.charCodeAt(from)) from++;
  while (toA > from && toB > from && a.charCodeAt(toA - 1) === b.charCodeAt(toB - 1)) { toA--; toB--; }
  return { from, toA, toB, room: Math.max(toA, toB) - from };
}

/** Whether one word is the other but for one slip at most. */
export function oneSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  const { from, toA, toB, room } = differing(a, b);
  return room <= 1 || room === 2 && toA === toB && a[from] === b[from + 1] && a[from + 1] === b[from];
}

/** Edit distance in which two neighbouring letters changed about count one (Damerau, optimal alignment). Stops counting at 3. */
export function slips(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 2) return 3;
  const { from, toA, toB, room } = differing(a, b);
  if (room <= 1) return room;
  let two: number[] = [], one = Array.from({ length: toB - from + 1 }, (_, j) => j), leastBefore = 0;
  for (let i = from; i < toA; i++) {
    const row = [i - from + 1];
    let least = row[0]!;
    for (let j = from, k = 1; j < toB; j++, k++) {
      let d = Math.min(row[k - 1]! + 1, one[k]! + 1, one[k - 1]! + (a[i] === b[j] ? 0 : 1));
      if (i > from && j > from && a[i] === b[j - 1] && a[i - 1] === b[j]) d = Math.min(d, two[k - 2]! + 1);
      row[k] = d;
      if (d < least) least = d;
    }
    if (least > 2 && leastBefore > 1) return 3;
    two = one; one = row; leastBefore = least;
  }
  return Math.min(3, one[toB - from]!);
}
