import { z } from 'zod';
import type { Drill } from './drill-sizes.ts';
import { findDrill, INCH_DRILLS, METRIC_DRILLS, nearestDrills } from './drills.ts';
import { amount } from './given.ts';
import { pipeAnswer } from './pipe-thread.ts';
import { named, pair, result } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { parseThread, type Thread } from './thread.ts';

/** Height of a full thread is 0.64952 pitch a side. ASME B1.1 and ISO 68-1: the 60° form. */
const FULL_THREAD = 1.29904;
const USUAL_PERCENT = 75;
/** ISO 2306 drills for the coarse metric threads, mm (from memory; they are D - P rounded down to a stocked drill). */
const METRIC_TAP_DRILLS: Readonly<Record<number, number>> = {
  3: 2.5,
  4: 3.3,
  5: 4.2,
  6: 5,
  7: 6,
  8: 6.8,
  10: 8.5,
  12: 10.2,
  14: 12,
  16: 14,
  18: 15.5,
  20: 17.5,
  22: 19.5,
  24: 21,
  27: 24,
  30: 26.5,
  33: 29.5,
  36: 32,
};

const pitchInches = (thread: Thread): number => (thread.system === 'inch' ? 1 / thread.tpi : thread.pitch / 25.4);
const majorInches = (thread: Thread): number => (thread.system === 'inch' ? thread.d : thread.d / 25.4);

/** Hole for a percentage of full thread, inches. */
const holeForPercent = (thread: Thread, percent: number): number =>
  majorInches(thread) - (FULL_THREAD * percent * pitchInches(thread)) / 100;

/** Percentage of full thread that a hole (in) leaves. */
const percentOfHole = (thread: Thread, hole: number): number =>
  ((majorInches(thread) - hole) / (FULL_THREAD * pitchInches(thread))) * 100;

export const tapDrill = defineSum({
  of: 'tapDrill',
  answers: 'What hole and drill to tap a thread at, or what thread a drill leaves.',
  fields: {
    size: 'thread, "3/8-16", "M8x1.25"',
    percent: 'percent of full thread wanted (75 where not said)',
    drill: 'a drill on hand, "#7", "F", "27/64", "6.8 mm": answers its percent',
  },
  given: z.object({ size: z.string().optional(), percent: amount().optional(), drill: z.coerce.string().optional() }),
  work(given) {
    if (!given.size) return ask('size', 'What thread are you tapping?');
    if (/npt|pipe|bspt?/i.test(given.size)) return pipeAnswer(given.size);
    const thread = parseThread(given.size);
    if ('problem' in thread) return refuse(`${thread.problem}.`);
    const assumed = thread.note ? [thread.note] : [];
    if (given.drill !== undefined) return percentForDrill(thread, given.drill, assumed);
    const percent = given.percent ?? USUAL_PERCENT;
    if (percent > 100) return refuse('More than a full thread cannot be cut: say 50 to 80 percent.');
    if (percent < 30) return refuse(`${percent} percent leaves hardly a thread to hold: say 50 to 80.`);
    if (given.percent === undefined) assumed.push(`${USUAL_PERCENT} % thread; say a percentage for a tighter or freer one`);
    return drillForPercent(thread, percent, given.percent === undefined, assumed);
  },
});

const CAUTION = 'Over 75 % adds little strength and much load on the tap.';
const SOURCE = 'ASME B1.1 and ISO 68-1 thread form; number, letter and fraction drill gauges; ISO 2306 for coarse metric';

function percentForDrill(thread: Thread, said: string, assumed: string[]): Outcome {
  const drill = findDrill(said);
  if (!drill) return refuse(`I don't know a drill "${said}".`);
  const percent = percentOfHole(thread, drill.inches);
  if (percent <= 0) return refuse(`${drill.name} is as big as the thread: nothing is left to cut.`);
  if (percent > 100) return refuse(`${drill.name} is smaller than the core of ${thread.label}: the tap would not go in.`);
  return {
    results: [result('percent', percent, '%', 1), named('drill', drill.name), ...holePair(thread, drill.inches)],
    basis: `${thread.label}, (D - drill) over 1.299 pitch`,
    assumed,
    caution: CAUTION,
    source: SOURCE,
  };
}

function drillForPercent(thread: Thread, percent: number, usual: boolean, assumed: string[]): Outcome {
  const hole = holeForPercent(thread, percent);
  const found = nearestDrills(hole, thread.system === 'inch' ? INCH_DRILLS : METRIC_DRILLS);
  const drill = (usual && standardMetric(thread)) || found?.nearest;
  if (!drill || !found)
    return refuse(`${thread.label} is bigger than the drills in the table; the hole for ${percent} % is ${hole.toFixed(3)} in.`);
  const beside = [found.below, found.above].filter((each): each is Drill => each !== undefined && each.name !== drill.name);
  return {
    results: [...holePair(thread, hole), named('drill', drill.name), result('percent', percentOfHole(thread, drill.inches), '%', 1)],
    basis: `${thread.label} at ${percent} % of full thread; ${drill.name} leaves ${percentOfHole(thread, drill.inches).toFixed(0)} %`,
    assumed,
    caution: CAUTION,
    source: SOURCE,
    also: beside.map((each) => `${each.name} leaves ${percentOfHole(thread, each.inches).toFixed(0)} %`),
  };
}

function standardMetric(thread: Thread): Drill | undefined {
  if (thread.system !== 'metric') return undefined;
  const coarse = METRIC_TAP_DRILLS[thread.d];
  const mm = coarse && Math.abs(thread.d - thread.pitch - coarse) < 0.1 ? coarse : undefined;
  return mm ? { name: `${mm} mm`, inches: mm / 25.4 } : undefined;
}

const holePair = (thread: Thread, inches: number) =>
  thread.system === 'inch' ? pair('hole', inches, 'in', 4, 2) : pair('hole', inches * 25.4, 'mm', 2, 4);
