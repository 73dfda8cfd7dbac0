import { DateTime } from 'luxon';
import { NEVER, type Bench } from './bench.ts';
import type { LocalDays } from './calendar.ts';
import type { PlanInput, Supply } from './input.ts';
import { isWet, USUAL_CLIMATE, type Climate, type Weather } from './forecast.ts';
import type { Draw } from './course.ts';
import { seeded, type Random } from './random.ts';
import { drawThreePoint, meanOf, type ThreePoint } from './three-point.ts';

const DAY = 86_400_000;

/** When a supply is in hand, ms UTC, with its spread taken at `value` (a draw or the mean). */
function arrivalOf(supply: Supply, now: number, value: (points: ThreePoint) => number): number {
  if ('arrives' in supply) return Math.max(now, value(supply.arrives));
  return Math.max(now, supply.orderedAt ?? now) + value(supply.leadDays) * DAY;
}

/** Makes draws of the future for one input. Arrays are filled anew by every call, not made anew. */
export interface Drawer {
  readonly draw: Draw;
  /** Arrival of each supply in the current draw, minutes. */
  readonly arrival: Int32Array;
  /** Means for durations and arrivals; wet days by lot, for want of anything better. */
  middling(seed: number): void;
  /**
   * One draw of everything. Each job and supply has a stream of chance of its own, from its id and `seed`: a job more or
   * less leaves the luck of all others as it was, so that two cases differ only by what differs.
   */
  chance(seed: number): void;
  /** Release of a job in the current draw if supply `s` came at `arrival` (minutes). */
  releaseWith(job: number, s: number, arrival: number): number;
}

export function drawer(input: PlanInput, bench: Bench): Drawer {
  const count = input.jobs.length;
  const draw: Draw = { minutes: new Int32Array(count), release: new Int32Array(count), wet: new Uint8Array(bench.slots.days.dates.length) };
  const arrival = new Int32Array(input.supplies.length);
  const place = new Map(input.supplies.map(({ id }, s) => [id, s]));
  // A supply nobody knows of has no date: the job then has none either.
  const needs = input.jobs.map((job) => job.needs.map((id) => place.get(id) ?? -1));
  const dated = input.jobs.map(({ notBefore }) => (notBefore ? minutesFrom(input.now, notBefore.at) : 0));
  const jobStreams = input.jobs.map(({ id }) => streamOf(`job ${id}`));
  const supplyStreams = input.supplies.map(({ id }) => streamOf(`supply ${id}`));
  const climate = input.weather?.climate ?? USUAL_CLIMATE;
  const known = knownDays(input.weather ?? {}, bench.slots.days);

  function releaseWith(job: number, changed: number, at: number): number {
    let release = dated[job]!;
    for (const s of needs[job]!) release = Math.max(release, s < 0 ? NEVER : s === changed ? at : arrival[s]!);
    return release;
  }

  function fill(value: (points: ThreePoint, stream: number) => number, seed: number): void {
    for (let i = 0; i < count; i++) draw.minutes[i] = Math.max(0, Math.round(value(input.jobs[i]!.hours, jobStreams[i]!) * 60));
    for (let s = 0; s < arrival.length; s++) {
      arrival[s] = minutesFrom(input.now, arrivalOf(input.supplies[s]!, input.now, (points) => value(points, supplyStreams[s]!)));
    }
    for (let i = 0; i < count; i++) draw.release[i] = releaseWith(i, -1, 0);
    wetDays(draw.wet, climate, seeded(mixed(WEATHER, seed)), known);
  }

  return {
    draw, arrival, releaseWith,
    middling: (seed) => fill(meanOf, seed),
    chance: (seed) => fill((points, stream) => drawThreePoint(points, seeded(mixed(stream, seed))), seed),
  };
}

/**
 * Scatters a stream and a seed over 32 bits (finaliser of MurmurHash3). The generator is linear over bits: seeds that differ
 * by a fixed pattern of bits would draw alike.
 */
function mixed(stream: number, seed: number): number {
  let h = stream ^ Math.imul(seed, 0x9e37_79b1);
  h = Math.imul(h ^ (h >>> 16), 0x85eb_ca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2_ae35);
  return h ^ (h >>> 16);
}

const WEATHER = streamOf('weather');

/** A number for a name: FNV-1a, 32 bits. */
function streamOf(name: string): number {
  let hash = 0x811c_9dc5;
  for (let k = 0; k < name.length; k++) hash = Math.imul(hash ^ name.charCodeAt(k), 0x0100_0193);
  return hash;
}

const minutesFrom = (now: number, at: number) => (Number.isFinite(at) ? Math.min(NEVER, Math.max(0, Math.ceil((at - now) / 60_000))) : NEVER);

/**
 * A wet day is likelier after a wet one: a first-order chain of two states (Gabriel & Neumann 1962, Q. J. R. Meteorol. Soc.
 * 88:90-95). Days that are known (`known`: 1 wet, 0 dry, -1 not known) stay as they are, and the chain goes on from the last.
 */
export function wetDays(wet: Uint8Array, { wetAfterDry, wetAfterWet }: Climate, random: Random, known?: Int8Array): void {
  const share = wetAfterDry / (1 + wetAfterDry - wetAfterWet);
  let yesterday = random.unit() < share;
  for (let d = 0; d < wet.length; d++) {
    const drawn = random.unit() < (yesterday ? wetAfterWet : wetAfterDry);
    yesterday = known && known[d]! >= 0 ? known[d] === 1 : drawn;
    wet[d] = yesterday ? 1 : 0;
  }
}

/** Which days the person or the forecast has spoken of: wet when rain falls between eight in the morning and eight at night. */
function knownDays({ forecast = [], said = [] }: Weather, { zone, dates }: LocalDays): Int8Array {
  const known = new Int8Array(dates.length).fill(-1);
  const place = new Map(dates.map((date, d) => [date, d]));
  for (const block of forecast) {
    const moment = DateTime.fromISO(block.startUtc, { zone });
    const d = place.get(moment.toISODate()!);
    if (d !== undefined && moment.hour >= 8 && moment.hour < 20) known[d] = known[d] === 1 || isWet(block) ? 1 : 0;
  }
  for (const { date, sky } of said) if (place.has(date)) known[place.get(date)!] = sky === 'rain' || sky === 'snow' ? 1 : 0;
  return known;
}
