import { performance } from 'node:perf_hooks';

/** Milliseconds of every run, sorted; fewer runs (three at least) when they take longer than `most` ms together. */
export function timed(runs: number, act: (i: number) => void, most = Infinity): number[] {
  const times: number[] = [];
  const end = performance.now() + most;
  for (let i = 0; i < runs && (i < 3 || performance.now() < end); i++) {
    const start = performance.now();
    act(i);
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b);
}
export const quantile = (sorted: readonly number[], q: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * q))] ?? NaN;
const ms = (n: number): string => (n < 10 ? n.toFixed(2) : n.toFixed(0)).padStart(7);
export const spread = (times: readonly number[]): string => `p50 ${ms(quantile(times, 0.5))}  p95 ${ms(quantile(times, 0.95))} ms`;
