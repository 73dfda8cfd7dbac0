/** Sparse rows of signs, laid end to end: row i has the places `of[at[i]]` to `of[at[i + 1] - 1]`. */
export interface Table { at: Uint32Array; of: Uint32Array; width: number }

export function tableOf(rows: readonly (readonly number[])[], width: number): Table {
  const at = new Uint32Array(rows.length + 1);
  rows.forEach((r, i) => { at[i + 1] = at[i]! + r.length; });
  const of = new Uint32Array(at[rows.length]!);
  rows.forEach((r, i) => of.set(r, at[i]!));
  return { at, of, width };
}

/**
 * Logistic regression with a quadratic penalty (weight 1, the bias free), by L-BFGS (Nocedal & Wright, Numerical Optimization, algorithm 7.4) with
 * backtracking, begun from `start` where it is given. `use` are the rows to learn from, `hit[i]` says whether row i is one. Deterministic. Gives the weights, the bias last.
 */
export function logistic({ at, of, width }: Table, use: Uint32Array, hit: Uint8Array, start?: Float64Array, rounds = 60): Float64Array {
  const n = width + 1, w = start ? start.slice() : new Float64Array(n);
  let g = new Float64Array(n), f = loss(w, g);
  const steps: Step[] = [];
  for (let round = 0; round < rounds; round++) {
    const d = direction(g, steps), slope = dot(d, g);
    if (-slope < 1e-5 * (1 + Math.abs(f))) break;
    let t = round === 0 ? Math.min(1, 1 / Math.sqrt(dot(g, g))) : 1, next = along(w, d, t), g2 = new Float64Array(n), f2 = loss(next, g2);
    while (f2 > f + 1e-4 * t * slope && t > 1e-10) { t /= 2; next = along(w, d, t); f2 = loss(next, g2); }
    const s = along(next, w, -1), y = along(g2, g, -1), sy = dot(s, y);
    if (sy > 1e-12) { steps.push({ s, y, r: 1 / sy }); if (steps.length > 6) steps.shift(); }
    w.set(next); g = g2; f = f2;
  }
  return w;

  /** Loss at `w`; its gradient goes into `into`. */
  function loss(w: Float64Array, into: Float64Array): number {
    let sum = 0;
    for (let j = 0; j < width; j++) { into[j] = w[j]!; sum += w[j]! * w[j]! / 2; }
    into[width] = 0;
    for (const i of use) {
      let z = w[width]!;
      for (let k = at[i]!; k < at[i + 1]!; k++) z += w[of[k]!]!;
      const sign = hit[i] ? 1 : -1, m = sign * z;
      sum += m > 0 ? Math.log1p(Math.exp(-m)) : -m + Math.log1p(Math.exp(m));
      const slope = -sign / (1 + Math.exp(m));
      for (let k = at[i]!; k < at[i + 1]!; k++) into[of[k]!]! += slope;
      into[width]! += slope;
    }
    return sum;
  }
}

interface Step { s: Float64Array; y: Float64Array; r: number }
const along = (from: Float64Array, d: Float64Array, t: number): Float64Array => { const out = new Float64Array(from.length); for (let i = 0; i < out.length; i++) out[i] = from[i]! + t * d[i]!; return out; };
const dot = (a: Float64Array, b: Float64Array): number => { let s = 0; for (let i = 0; i < a.length; i++) s += a[i]! * b[i]!; return s; };

/** The two-loop recursion: minus the inverse Hessian, as the last steps have it, times the gradient. */
function direction(g: Float64Array, steps: readonly Step[]): Float64Array {
  const q = g.map(x => -x), a: number[] = [];
  for (const { s, y, r } of [...steps].reverse()) { const x = r * dot(s, q); a.push(x); for (let i = 0; i < q.length; i++) q[i]! -= x * y[i]!; }
  const last = steps.at(-1), scale = last ? 1 / (last.r * dot(last.y, last.y)) : 1;
  for (let i = 0; i < q.length; i++) q[i]! *= scale;
  for (const { s, y, r } of steps) { const x = a.pop()! - r * dot(y, q); for (let i = 0; i < q.length; i++) q[i]! += x * s[i]!; }
  return q;
}
