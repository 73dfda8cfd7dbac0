/** Edit distance in which two neighbouring letters changed about count one (Damerau, optimal alignment). Stops counting at 3. */
export function slips(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 2) return 3;
  let two: number[] = [], one = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      row[j] = Math.min(row[j - 1]! + 1, one[j]! + 1, one[j - 1]! + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) row[j] = Math.min(row[j]!, two[j - 2]! + 1);
    }
    two = one; one = row;
  }
  return Math.min(3, one[b.length]!);
}
