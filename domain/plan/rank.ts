import { DateTime } from 'luxon';
import { localDays, wallClock } from './calendar.ts';
import { saidObstacle, weatherJudge, FIT, SAMPLED, type Conditions } from './conditions.ts';
import { forecastAt, isWet } from './forecast.ts';
import type { PlanInput, PlanJob } from './input.ts';
import { meanOf } from './three-point.ts';

/** What the person said about this hour. */
interface NextAsk {
  minutes?: number;
  place?: 'indoors' | 'outdoors';
  /** Somebody is here to help now; left out: by the dated help. */
  helpHere?: boolean;
}

/** What is known of a job besides the plan. */
export interface NextNotes {
  /** Things it waited for that have come lately. */
  inHand?: ReadonlyMap<string, string>;
  /** It makes a temporary fit good: which part, and since when (YYYY-MM-DD). */
  temporary?: ReadonlyMap<string, { part: string; since: string }>;
  /** Share of simulated runs in which the finish hung on it. */
  critical?: ReadonlyMap<string, number>;
}

export type NextReason =
  | { why: 'unlocks'; count: number }
  | { why: 'dryUntil'; until: number }
  | { why: 'fits'; minutes: number }
  | { why: 'inHand'; what: string }
  | { why: 'helpUntil'; until: number | undefined }
  | { why: 'temporary'; part: string; since: string }
  | { why: 'decides' }
  | { why: 'ready' };

interface NextJob { id: string; reasons: NextReason[] }
/** `score`: the greater, the sooner. */
export interface ReadyJob extends NextJob { score: number }

const HOUR = 3_600_000;
/** Below this nothing is begun and laid down again. Common practice, no source. */
const WORTHWHILE_MINUTES = 30;
const SOON = 24 * HOUR;

/** Up to three jobs that can be done now, best first, each with at most three reasons. Deterministic; `input.now` is now. */
export function rankNext(input: PlanInput, ask: NextAsk = {}, notes: NextNotes = {}): NextJob[] {
  return rankReady(input, ask, notes).slice(0, 3).map(({ id, reasons }) => ({ id, reasons }));
}

/** All jobs that can be done now, best first. */
export function rankReady(input: PlanInput, ask: NextAsk = {}, notes: NextNotes = {}): ReadyJob[] {
  const unlocks = dependents(input.jobs);
  const dryUntil = endOfDrySpell(input);
  const help = helpNow(input, ask);
  const ready = input.jobs.filter((job) => isReady(job, input) && suits(job, ask, help !== undefined) && weatherAllows(job, input, ask));
  const rated = ready.map((job) => {
    const reasons: [weight: number, reason: NextReason][] = [];
    const minutes = Math.round(meanOf(job.hours) * 60);
    const temporary = notes.temporary?.get(job.id);
    const count = unlocks.get(job.id)!.size;
    if (temporary) reasons.push([count > 0 ? 6 : 0.5, { why: 'temporary', ...temporary }]);
    if (job.conditions.place === 'outdoors' && dryUntil) reasons.push([dryUntil - input.now < SOON ? 5 : 1, { why: 'dryUntil', until: dryUntil }]);
    // With help there, what takes two comes first, and what a hoist would do as well after it.
    if (job.conditions.hands === 2 || (job.orHoist && help)) reasons.push([job.conditions.hands === 2 ? 5 : 4, { why: 'helpUntil', until: help?.until }]);
    if ((notes.critical?.get(job.id) ?? 0) >= 0.5) reasons.push([4, { why: 'decides' }]);
    if (count > 0) reasons.push([Math.min(4, count), { why: 'unlocks', count }]);
    if (notes.inHand?.has(job.id)) reasons.push([2, { why: 'inHand', what: notes.inHand.get(job.id)! }]);
    if (ask.minutes !== undefined && minutes <= ask.minutes) reasons.push([2, { why: 'fits', minutes: ask.minutes }]);
    const told = reasons.toSorted((a, b) => b[0] - a[0]).slice(0, 3).map(([, reason]) => reason);
    return { id: job.id, score: reasons.reduce((sum, [weight]) => sum + weight, 0), reasons: told.length > 0 ? told : [{ why: 'ready' } as const] };
  });
  return rated.sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
}

/** Nothing before it is open: jobs done and supplies in hand are no longer in the input. */
function isReady({ after, needs, notBefore }: PlanJob, { now }: PlanInput): boolean {
  return after.length === 0 && needs.length === 0 && (notBefore?.at ?? now) <= now;
}

function suits({ conditions, hours, unbroken }: PlanJob, { minutes, place }: NextAsk, helped: boolean): boolean {
  if (conditions.hands === 0 || (conditions.hands === 2 && !helped)) return false;
  if (place && conditions.place !== 'either' && conditions.place !== place) return false;
  if (minutes === undefined) return true;
  return minutes >= (unbroken ? meanOf(hours) * 60 : Math.min(hours.low * 60, WORTHWHILE_MINUTES));
}

/** By the forecast for as long as the job takes, at most the next four hours; what nobody knows does not hold it up. */
function weatherAllows(job: PlanJob, { weather = {}, hours, now }: PlanInput, ask: NextAsk): boolean {
  const dateOf = (at: number) => DateTime.fromMillis(at, { zone: hours.zone }).toISODate()!;
  const place = job.conditions.place === 'either' ? ask.place ?? 'either' : job.conditions.place;
  const verdict = weatherJudge({ ...job.conditions, place }, weather, dateOf)(now, now + Math.min(4, Math.max(1, meanOf(job.hours))) * HOUR);
  return verdict === FIT || verdict === SAMPLED;
}

/** When it next turns wet out of doors; `undefined` when it is not known to, or is wet now. */
function endOfDrySpell({ weather = {}, hours, now }: PlanInput): number | undefined {
  const lookup = forecastAt(weather.forecast ?? []);
  const said = new Map((weather.said ?? []).map(({ date, sky }) => [date, sky]));
  const outdoors: Conditions = { place: 'outdoors', hands: 1 };
  for (let at = now, h = 0; h < 16 * 24; h++, at = Math.floor(now / HOUR) * HOUR + h * HOUR) {
    const day = DateTime.fromMillis(at, { zone: hours.zone });
    const sky = said.get(day.toISODate()!);
    const block = lookup(at);
    if (!sky && !block) return undefined;
    const wet = sky ? saidObstacle(sky, outdoors, false) === 'wet' : isWet(block!);
    if (wet) return h === 0 ? undefined : sky ? Math.max(now, day.startOf('day').toMillis()) : at;
  }
  return undefined;
}

function helpNow({ help = [], hours, now }: PlanInput, { helpHere }: NextAsk): { until: number | undefined } | undefined {
  const today = localDays(hours.zone, now, 1);
  for (const { date, from = '00:00', to = '24:00' } of help) {
    if (date !== today.dates[0] || wallClock(today, 0, from) > 0) continue;
    const minutes = wallClock(today, 0, to);
    if (minutes > 0) return { until: to === '24:00' ? undefined : now + minutes * 60_000 };
  }
  return helpHere ? { until: undefined } : undefined;
}

/** For each job all that waits on it, directly or through others. */
function dependents(jobs: readonly PlanJob[]): Map<string, Set<string>> {
  const direct = new Map(jobs.map(({ id }) => [id, [] as string[]]));
  for (const { id, after } of jobs) for (const { job } of after) direct.get(job)?.push(id);
  return new Map(jobs.map(({ id }) => {
    const found = new Set(direct.get(id)!);
    for (const one of found) for (const next of direct.get(one) ?? []) found.add(next);
    found.delete(id);
    return [id, found];
  }));
}
