import type { FreeHours, HelpDay } from './calendar.ts';
import type { Conditions } from './conditions.ts';
import type { Weather } from './forecast.ts';
import type { ThreePoint } from './three-point.ts';

/** One job follows another, at once or after `lagHours` of elapsed time (cure, dry, cool), whatever the hour of the clock. */
export interface Link {
  job: string;
  lagHours?: number;
  /** What the lag is for, in one word: `cure`, `recoat`, `dry`, `cool`. */
  lag?: string;
}

export interface PlanJob {
  id: string;
  /** Hours of work, at best, likely, at worst; for `hands: 0` hours that pass by themselves. */
  hours: ThreePoint;
  conditions: Conditions;
  after: readonly Link[];
  /** Ids of supplies that must be in hand. */
  needs: readonly string[];
  /** Not before this moment (ms UTC), and what it waits for. */
  notBefore?: { at: number; what: string };
  /** Takes two people or a hoist: `conditions.hands` says which is counted on, and help that is there suits it either way. */
  orHoist?: boolean;
  /** Must be done in one go, like a coat of paint; otherwise it may be laid down and taken up again. */
  unbroken?: boolean;
}

/** A thing that must be got. Either it is under way and `arrives` (ms UTC), or it has to be ordered and takes `leadDays`. */
export type Supply =
  | { id: string; what: string; arrives: ThreePoint }
  | { id: string; what: string; leadDays: ThreePoint; /** When the order goes out (ms UTC); left out: now. */ orderedAt?: number };

export interface Site { latitude: number; longitude: number }

/** All that the planner looks at; it reads no clock. Moments are ms UTC, days are local dates of `hours.zone`. */
export interface PlanInput {
  now: number;
  jobs: readonly PlanJob[];
  supplies: readonly Supply[];
  hours: FreeHours;
  /** Days with a second pair of hands. */
  help?: readonly HelpDay[];
  /** Counted on after the last dated help; left out: none, and what needs two people then has no date. */
  helpUsually?: FreeHours['weekly'];
  /** Days (YYYY-MM-DD) on which nobody comes, usual or not. */
  helpNever?: readonly string[];
  weather?: Weather;
  /** For daylight. */
  site?: Site;
}

/** The same input with jobs and supplies in the order of their ids: the order in which things were noted must not change a plan. */
export function inOrderOfIds(input: PlanInput): PlanInput {
  const sorted = <T extends { id: string }>(list: readonly T[]) => list.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  return { ...input, jobs: sorted(input.jobs), supplies: sorted(input.supplies) };
}
