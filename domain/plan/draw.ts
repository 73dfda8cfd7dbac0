import { NEVER, type Bench } from './bench.ts';
import type { PlanInput, Supply } from './input.ts';
import { USUAL_CLIMATE, type Climate } from './forecast.ts';
import type { Draw } from './pass.ts';
import type { Random } from './random.ts';
import { drawThreePoint, meanOf, type ThreePoint } from './threePoint.ts';

const DAY = 86_400_000;

/** When a supply is in hand, ms UTC, with its spread taken at `value` (a draw or the mean). */
export function arrivalOf(supply: Supply, now: number, value: (points: ThreePoint) => number): number {
  if ('arrives' in supply) return Math.max(now, value(supply.arrives));
  return Math.max(now, supply.orderedAt ?? now) + value(supply.leadDays) * DAY;
}

/** Makes draws of the future for one input. Arrays are filled anew by every call, not made anew. */
export interface Drawer {
  readonly draw: Draw;
  /** Arrival of each supply in the current draw, minutes. */
  readonly arrival: Int32Array;
  /** Means for durations and arrivals; wet days by lot, for want of anything better. */
  middling(random: Random): void;
  chance(random: Random): void;
}

export function drawer(input: PlanInput, bench: Bench): Drawer {
  const count = input.jobs.length;
  const draw: Draw = { minutes: new Int32Array(count), release: new Int32Array(count), wet: new Uint8Array(bench.slots.dates.length) };
  const arrival = new Int32Array(input.supplies.length);
  const place = new Map(input.supplies.map(({ id }, s) => [id, s]));
  // A supply nobody knows of has no date: the job then has none either.
  const needs = input.jobs.map((job) => job.needs.map((id) => place.get(id) ?? -1));
  const dated = input.jobs.map(({ notBefore }) => (notBefore ? minutesFrom(input.now, notBefore.at) : 0));
  const climate = input.weather?.climate ?? USUAL_CLIMATE;

  function fill(value: (points: ThreePoint) => number, random: Random): void {
    for (let i = 0; i < count; i++) draw.minutes[i] = Math.max(0, Math.round(value(input.jobs[i]!.hours) * 60));
    for (let s = 0; s < arrival.length; s++) arrival[s] = minutesFrom(input.now, arrivalOf(input.supplies[s]!, input.now, value));
    for (let i = 0; i < count; i++) {
      let release = dated[i]!;
      for (const s of needs[i]!) release = Math.max(release, s < 0 ? NEVER : arrival[s]!);
      draw.release[i] = release;
    }
    wetDays(draw.wet, climate, random);
  }

  return {
    draw, arrival,
    middling: (random) => fill(meanOf, random),
    chance: (random) => fill((points) => drawThreePoint(points, random), random),
  };
}

const minutesFrom = (now: number, at: number) => (Number.isFinite(at) ? Math.min(NEVER, Math.max(0, Math.ceil((at - now) / 60_000))) : NEVER);

/** A wet day is likelier after a wet one: a first-order chain of two states (Gabriel & Neumann 1962, Q. J. R. Meteorol. Soc. 88:90-95). */
export function wetDays(wet: Uint8Array, { wetAfterDry, wetAfterWet }: Climate, random: Random): void {
  const share = wetAfterDry / (1 + wetAfterDry - wetAfterWet);
  let yesterday = random.unit() < share;
  for (let d = 0; d < wet.length; d++) {
    yesterday = random.unit() < (yesterday ? wetAfterWet : wetAfterDry);
    wet[d] = yesterday ? 1 : 0;
  }
}
