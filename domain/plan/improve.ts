import type { Drawer } from './draw.ts';
import { NEVER, seenFromTheEnd, type Bench } from './bench.ts';
import { lastOf, newTimes, type Draw, type Times } from './course.ts';
import { benchBuilder } from './pass.ts';
import type { Random } from './random.ts';
import { sampler } from './sampling/biased.ts';

/** A list of jobs and what it comes to: last end first, then the sum of all ends. `NEVER` ends weigh most. */
interface Ranked { list: Int32Array; last: number; sum: number; never: number }

/**
 * Looks for the list that gives the soonest end: regret-biased samples, each improved by one pass from the far end of the
 * calendar and one back (justification), and the `hints` first. Each pass counts as one of `schedules`.
 * With conditions that change by the hour a pass can also lengthen the plan; the best seen is kept.
 */
export function bestList(bench: Bench, draw: Draw, schedules: number, random: Random, hints: readonly Int32Array[] = []): Ranked {
  const { count } = bench.network;
  const forward = benchBuilder(bench);
  const far = seenFromTheEnd(bench);
  const backward = benchBuilder(far.bench);
  const unreleased: Draw = { ...draw, release: new Int32Array(count) };
  const times = newTimes(count);
  const late = newTimes(count);
  const samples = sampler(bench.network);
  let best: Ranked | undefined;
  let made = 0;

  function tryList(list: Int32Array): Ranked {
    made++;
    const ranked = rank(list, forward.build(list, draw, times), times);
    if (!best || isSooner(ranked, best)) best = { ...ranked, list: list.slice() };
    return ranked;
  }

  for (const hint of hints) tryList(hint);
  for (let k = 0; k === 0 || made < schedules; k++) {
    const list = new Int32Array(count);
    if (k === 0) samples.urgent(list);
    else samples.draw(list, random);
    const { last } = tryList(list);
    if (last >= NEVER || made + 2 > schedules) continue;
    made++;
    backward.build(byTime(bench, times.end, true), unreleased, late, Math.max(0, far.end - last));
    tryList(byTime(bench, late.end.map((end) => far.end - end), false));
  }
  return best!;
}

function rank(list: Int32Array, last: number, { end }: Times): Ranked {
  let sum = 0;
  let never = 0;
  for (let i = 0; i < end.length; i++) {
    if (end[i]! >= NEVER) never++;
    else sum += end[i]!;
  }
  return { list, last, sum, never };
}

function isSooner(a: Ranked, b: Ranked): boolean {
  return a.never - b.never < 0 || (a.never === b.never && (a.last < b.last || (a.last === b.last && a.sum < b.sum)));
}

/** Jobs by a time, earliest or latest first; equal ones keep to the order of precedence (or its reverse). */
function byTime({ network }: Bench, time: Int32Array, latestFirst: boolean): Int32Array {
  const list = network.topological.slice();
  if (latestFirst) list.reverse();
  const place = new Int32Array(list.length);
  for (let at = 0; at < list.length; at++) place[list[at]!] = at;
  return list.sort((a, b) => (latestFirst ? time[b]! - time[a]! : time[a]! - time[b]!) || place[a]! - place[b]!);
}

/** Paths of weather to choose a middling one from; odd, so that there is a middle. */
const PATHS = 15;

/**
 * Fills the draw with middling durations and arrivals and, of some seeded paths of weather, the one on which the plain list
 * of latest finish times ends in the middle: a plan drawn on a freak spring would be as wrong as one without rain.
 * Answers the seed of that path.
 */
export function drawMiddling(bench: Bench, drawn: Drawer, seed: number): number {
  const builder = benchBuilder(bench);
  const list = new Int32Array(bench.network.count);
  sampler(bench.network).urgent(list);
  const times = newTimes(bench.network.count);
  const paths = Array.from({ length: PATHS }, (_, k) => {
    drawn.middling(seed + k);
    return { seed: seed + k, last: builder.build(list, drawn.draw, times) };
  });
  paths.sort((a, b) => a.last - b.last || a.seed - b.seed);
  const middle = paths[PATHS >> 1]!.seed;
  drawn.middling(middle);
  return middle;
}

/** Of some lists, the one with the soonest finish on average over a hundred draws; what is best on one path need not be on most. */
export function soonestList(bench: Bench, drawn: Drawer, lists: readonly Int32Array[], aim: Int32Array, seed: number): Int32Array {
  const builder = benchBuilder(bench);
  const times = newTimes(bench.network.count);
  const urgent = new Int32Array(bench.network.count);
  sampler(bench.network).urgent(urgent);
  let best: Int32Array = urgent;
  let least = Infinity;
  for (const list of [urgent, ...lists]) {
    let sum = 0;
    for (let run = 0; run < 100; run++) {
      drawn.chance(seed + run);
      builder.build(list, drawn.draw, times);
      const last = lastOf(aim, times);
      if (last >= 0) sum += times.end[last]!;
    }
    if (sum >= least) continue;
    best = list;
    least = sum;
  }
  return best;
}
