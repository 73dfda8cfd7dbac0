import { describe, expect, it } from 'vitest';
import { logistic, tableOf } from '../../../nlp/likely/learn/logistic.ts';

// Checked against scikit-learn 1.9.1, LogisticRegression(C=1, solver='newton-cholesky', tol=1e-12) on the same ten rows of four signs.
const rows = [[0, 1], [0, 2], [1], [2, 3], [3], [0, 3], [1, 2], [], [0, 1, 2], [3, 1]];
const hit = [1, 1, 0, 0, 0, 1, 0, 0, 1, 0];
const REFERENCE = [1.509947, -0.036436, 0.149329, -0.251766, -1.000334];
const all = Uint32Array.from(rows.keys());

describe('logistic regression with a quadratic penalty', () => {
  it('finds the weights that a reference library finds', () => {
    const w = logistic(tableOf(rows, 4), all, Uint8Array.from(hit), undefined, 200);
    REFERENCE.forEach((r, i) => expect(w[i]).toBeCloseTo(r, 2));
  });
  it('finds the same from another start, and from the same start the same to the last bit', () => {
    const far = logistic(tableOf(rows, 4), all, Uint8Array.from(hit), Float64Array.from([3, -2, 1, 5, 4]), 200);
    REFERENCE.forEach((r, i) => expect(far[i]).toBeCloseTo(r, 2));
    expect([...logistic(tableOf(rows, 4), all, Uint8Array.from(hit))]).toEqual([...logistic(tableOf(rows, 4), all, Uint8Array.from(hit))]);
  });
  it('learns only from the rows that it may use', () => {
    const [w0] = logistic(tableOf(rows, 4), Uint32Array.from([2, 3, 4, 7]), Uint8Array.from(hit));
    expect(w0).toBe(0);
  });
});
