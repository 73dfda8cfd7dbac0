import { seenFromTheEnd, type Bench } from './bench.ts';
import type { Drawer } from './draw.ts';
import { newTimes, type Draw } from './course.ts';
import type { PlanInput, Supply } from './input.ts';
import { benchBuilder } from './pass.ts';

/** Latest moment (ms UTC) to order a supply so that the P80 finish stays. `late`: even ordered now it moves the finish. */
export interface OrderBy { supply: string; what: string; by: number; late: boolean }

/** Runs looked at; they use the same luck, so few suffice to see the chance of a date sink. */
const RUNS = 60;
/** Losing no more of them than this counts as staying. */
const NOTICEABLE = 1;
/** So many runs on end that a delay does not hurt, the tightest first, stand for those with more room. */
const TRIED = 12;
const DAY = 1440;

interface OrderCase {
  input: PlanInput; bench: Bench; drawn: Drawer; list: Int32Array; seed: number;
  /** The P80 finish, minutes. */
  p80: number;
}

/** One run kept by: its draw, when each supply came, and whether it kept the P80. */
interface Run { draw: Draw; arrival: Int32Array; kept: boolean }
/** In how many days more a run can bear a supply: no more than `days`; with as many as `borne` it was tried and kept the P80. */
interface Room { run: Run; days: number; borne: number }

/**
 * For every supply not ordered yet: the last day on which the order can go out with the P80 finish as likely to be kept as
 * when it goes out now. (Not by moving quantiles: where help comes on Saturdays, finishes lie a week apart and a quantile
 * jumps.) Each supply is judged with all the others in time, so not all can be left to the last day.
 *
 * No run can bear more delay than what waits for the supply, put alone as late as it will go before the P80, leaves; that
 * costs next to nothing, and building the run anew with so much delay shows whether the rest fits around it.
 */
export function orderDates(given: OrderCase): OrderBy[] {
  const { input, bench, p80 } = given;
  if (!input.supplies.some(isToOrder)) return [];
  const { runs, keeps } = allRuns(given);
  const far = seenFromTheEnd(bench);
  const backward = benchBuilder(far.bench);
  const late = newTimes(input.jobs.length);
  const unreleased = new Int32Array(input.jobs.length);

  /** Whole days by which the supply may come later than drawn in a run, if nothing but what waits for it needed the hours. */
  function atMost({ draw, arrival }: Run, s: number, consumers: readonly number[], waiting: Int32Array): number {
    backward.build(waiting, { ...draw, release: unreleased }, late, Math.max(0, far.end - p80));
    const needed = Math.min(...consumers.map((i) => far.end - late.end[i]!));
    return Math.max(0, Math.floor((needed - arrival[s]!) / DAY));
  }

  function isLate(s: number, consumers: readonly number[]): boolean {
    let won = 0;
    for (const run of runs) {
      if (run.kept || consumers.every((i) => run.draw.release[i]! > run.arrival[s]!)) continue;
      if (keeps(run, s, consumers, 0) && ++won > NOTICEABLE) return true;
    }
    return false;
  }

  function daysLeft(s: number, consumers: readonly number[]): number {
    const waiting = waitingFor(bench, consumers, given.list);
    const rooms: Room[] = runs.filter(({ kept }) => kept).map((run) => ({ run, days: atMost(run, s, consumers, waiting), borne: 0 }));
    const bears = ({ run }: Room, days: number) => keeps(run, s, consumers, run.arrival[s]! + days * DAY);
    for (;;) {
      rooms.sort((a, b) => a.days - b.days);
      const days = rooms[NOTICEABLE]?.days ?? 0;
      const tight = rooms.slice(NOTICEABLE, NOTICEABLE + TRIED).find((room) => days > room.borne && !tried(room, days, bears));
      if (!tight) return days;
      tight.days = lastThat((n) => bears(tight, n), days);
      tight.borne = tight.days;
    }
  }

  return input.supplies.flatMap((supply, s) => {
    if (!isToOrder(supply)) return [];
    const consumers = [...input.jobs.keys()].filter((i) => input.jobs[i]!.needs.includes(supply.id));
    if (consumers.length === 0) return [];
    const late = isLate(s, consumers);
    return [{ supply: supply.id, what: supply.what, by: input.now + (late ? 0 : daysLeft(s, consumers) * DAY * 60_000), late }];
  });
}

function tried(room: Room, days: number, bears: (room: Room, days: number) => boolean): boolean {
  if (!bears(room, days)) return false;
  room.borne = days;
  return true;
}

/** The runs as drawn, and the trial of one with supply `s` coming at `arrival` (minutes) instead. */
function allRuns({ input, bench, drawn, list, seed, p80 }: OrderCase) {
  const builder = benchBuilder(bench);
  const times = newTimes(input.jobs.length);
  const runs = Array.from({ length: RUNS }, (_, k): Run => {
    drawn.chance(seed + k);
    const { minutes, release, wet } = drawn.draw;
    const draw = { minutes: minutes.slice(), release: release.slice(), wet: wet.slice() };
    return { draw, arrival: drawn.arrival.slice(), kept: builder.build(list, draw, times) <= p80 };
  });
  const keeps = ({ draw, arrival }: Run, s: number, consumers: readonly number[], at: number): boolean => {
    const release = draw.release.slice();
    drawn.arrival.set(arrival);
    for (const i of consumers) release[i] = drawn.releaseWith(i, s, at);
    return builder.build(list, { ...draw, release }, times) <= p80;
  };
  return { runs, keeps };
}

/** The jobs that wait for some, those themselves with them, each after all that follow it. */
function waitingFor({ network }: Bench, jobs: readonly number[], list: Int32Array): Int32Array {
  const waits = new Uint8Array(network.count);
  for (const i of jobs) waits[i] = 1;
  for (const i of network.topological) {
    if (!waits[i]) continue;
    for (let e = network.succStart[i]!; e < network.succStart[i + 1]!; e++) waits[network.succ[e]!] = 1;
  }
  return list.filter((i) => waits[i] === 1).reverse();
}

function isToOrder(supply: Supply): boolean {
  return 'leadDays' in supply && supply.orderedAt === undefined;
}

/** The greatest whole number below `limit` for which `holds`, given that it holds up to some number and not beyond; 0 at least. */
function lastThat(holds: (n: number) => boolean, limit: number): number {
  let [low, high] = [0, limit];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
