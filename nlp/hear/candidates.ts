/** A word piece that may come next: its number and its log-probability. */
interface Candidate {
  piece: number;
  score: number;
}

/** What lies so far under the best would add 0.006 if the whole vocabulary (51,864 pieces) lay there, and is five of six pieces: not worth an exponential each. */
const NEGLIGIBLE = 16;

/** log Σ exp over one row of logits. */
function logSum(row: Float32Array): number {
  let most = -Infinity;
  for (let i = 0; i < row.length; i++) if (row[i]! > most) most = row[i]!;
  let sum = 0;
  for (let i = 0; i < row.length; i++) {
    const below = row[i]! - most;
    if (below > -NEGLIGIBLE) sum += Math.exp(below);
  }
  return most + Math.log(sum);
}

/** Log-probability of one piece in a row of logits. */
export function scoreOf(row: Float32Array, piece: number): number {
  return row[piece]! - logSum(row);
}

/**
 * The `count` likeliest pieces, and those of `favoured` that are within `reach` of the best: an expected word may rank low
 * and still win with its bonus. `banned` has one byte a piece.
 */
export function bestCandidates(row: Float32Array, count: number, banned: Uint8Array, favoured: Iterable<number>, reach: number): Candidate[] {
  const total = logSum(row);
  const best: Candidate[] = [];
  let least = -Infinity;
  for (let i = 0; i < row.length; i++) {
    if (row[i]! <= least || banned[i]) continue;
    best.push({ piece: i, score: row[i]! - total });
    best.sort((a, b) => b.score - a.score);
    if (best.length > count) best.pop();
    if (best.length === count) least = best[count - 1]!.score + total;
  }
  const top = best[0]?.score ?? 0;
  for (const piece of favoured) {
    const score = row[piece]! - total;
    if (score > top - reach && !banned[piece] && !best.some((c) => c.piece === piece)) best.push({ piece, score });
  }
  return best;
}
