import { tails, type Network } from '../network.ts';
import type { Random } from '../random.ts';

/**
 * Draws lists by regret-biased random sampling over latest finish times (LFT): among the activities whose predecessors are
 * all in the list, one with an early LFT is likelier, in proportion to `max LFT - own LFT + 1`.
 * (Drexl 1991, Management Science 37:1590-1602; Kolisch & Hartmann 1999.)
 */
interface Sampler {
  draw(list: Int32Array, random: Random): void;
  /** The plain LFT list: always the most urgent, no chance in it. */
  urgent(list: Int32Array): void;
}

export function sampler(network: Network): Sampler {
  const { count, predStart, succStart, succ } = network;
  // LFT differs from minus the tail behind the activity by the same constant for all: only differences matter here.
  const latest = tails(network).map((tail, i) => network.duration[i]! - tail);
  const waiting = new Int32Array(count);
  const eligible = new Int32Array(count);

  function choose(size: number, random: Random): number {
    let most = latest[eligible[0]!]!;
    let sum = 0;
    for (let k = 0; k < size; k++) {
      const l = latest[eligible[k]!]!;
      if (l > most) most = l;
      sum += l;
    }
    let mark = random.unit() * (size * (most + 1) - sum);
    for (let k = 0; k < size - 1; k++) {
      mark -= most - latest[eligible[k]!]! + 1;
      if (mark < 0) return k;
    }
    return size - 1;
  }

  function mostUrgent(size: number): number {
    let best = 0;
    for (let k = 1; k < size; k++) if (latest[eligible[k]!]! < latest[eligible[best]!]!) best = k;
    return best;
  }

  function fill(list: Int32Array, pick: (size: number) => number): void {
    let size = 0;
    for (let i = 0; i < count; i++) {
      waiting[i] = predStart[i + 1]! - predStart[i]!;
      if (waiting[i] === 0) eligible[size++] = i;
    }
    for (let at = 0; at < count; at++) {
      const k = pick(size);
      const i = eligible[k]!;
      list[at] = i;
      eligible[k] = eligible[--size]!;
      for (let e = succStart[i]!; e < succStart[i + 1]!; e++) {
        const next = succ[e]!;
        if (--waiting[next]! === 0) eligible[size++] = next;
      }
    }
  }

  return {
    draw: (list, random) => fill(list, (size) => choose(size, random)),
    urgent: (list) => fill(list, mostUrgent),
  };
}
