import { DateTime } from 'luxon';
import type { NextJob } from '../../../domain/model/answer.ts';
import { ASSUMED_HOURS } from '../../../domain/plan/from-shop/settings.ts';
import { skyAt, wetSpells } from '../../weather/wet.ts';
import { momentOf, plusDays } from '../local-time.ts';
import type { About, Look, Occasion } from '../occasion.ts';

const HOUR = 3_600_000;
/** A morning word that could not be said (the computer slept) is still worth saying for so long, hours. */
const STILL_MORNING = 4;
/** Where nothing was noted for so many days there is nobody to wish a good morning: a weekend's work keeps it coming, a rest ends it. */
const ASLEEP_DAYS = 10;
const MOST_JOBS = 3;
type Stretch = [from: number, to: number];

/** The word of the day: what to do next, and where, by what the sky does in the working hours. */
export const morning: Look = about => {
  const { settings, today, at, now, lastNote } = about;
  if (!settings.morning || lastNote === undefined || at - lastNote > ASLEEP_DAYS * 24 * HOUR) return [];
  const key = `morning|${today}`;
  const due = momentOf(today, settings.morning, now.zone);
  const putOff = about.mark(key)?.putOffUntil !== undefined;
  if (at < due || (at >= due + STILL_MORNING * HOUR && !putOff)) return [];
  const hours = hoursOn(about, today);
  if (!hours.length) return [];
  const sky = skyOf(about, hours);
  const jobs = jobsFor(about, sky);
  return jobs.length ? [{ topic: 'morning', key, stop: 'morning', jobs: jobs.slice(0, MOST_JOBS), ...(sky ? { sky } : {}), ...(sky && about.source ? { source: about.source } : {}) }] : [];
};

/** The working hours of a day: the person's, or on a day without any the assumed ones; none on a day that the person keeps free. */
function hoursOn({ hours, now }: About, day: string): Stretch[] {
  const weekday = DateTime.fromISO(day, { zone: 'utc' }).weekday;
  const given = hours?.exceptions.find(e => e.date === day)?.stretches ?? (hours?.weekly ?? ASSUMED_HOURS).filter(w => w.weekday === weekday);
  const stretches = given.length || hours ? given : [{ from: '09:00', to: '18:00' }];
  return stretches.map(({ from, to }): Stretch => [momentOf(day, from, now.zone), to === '24:00' ? momentOf(plusDays(day, 1), '00:00', now.zone) : momentOf(to > from ? day : plusDays(day, 1), to, now.zone)]);
}

type Sky = Extract<Occasion, { topic: 'morning' }>['sky'];

/** Wet: half the working hours or more. The last dry day: no rain in them, and tomorrow's day half wet or more. */
function skyOf({ weather, now, at, today }: About, hours: readonly Stretch[]): Sky {
  const left = hours.map(([from, to]): Stretch => [Math.max(from, at), to]).filter(([from, to]) => to > from);
  const wet = left.flatMap(([from, to]) => wetSpells(weather, from, to, now.zone));
  const total = sum(left);
  if (total > 0 && sum(wet.map(w => [w.from, w.to])) >= total / 2) return { is: 'wet', ...whole(wet[0]!.from, wet.at(-1)!.to) };
  if (wet.length || !left.every(([from, to]) => isKnown(from, to))) return undefined;
  const tomorrow: Stretch = [momentOf(plusDays(today, 1), '08:00', now.zone), momentOf(plusDays(today, 1), '20:00', now.zone)];
  const coming = wetSpells(weather, ...tomorrow, now.zone);
  if (sum(coming.map(w => [w.from, w.to])) < sum([tomorrow]) / 2) return undefined;
  const first = wetSpells(weather, Math.max(at, left.at(-1)?.[1] ?? at), tomorrow[1], now.zone)[0];
  return { is: 'lastDry', rain: first?.from ?? coming[0]!.from };

  /** The rain itself, which may begin before the working hours and go on after them. */
  function whole(from: number, to: number): { from: number; to: number } {
    const spells = wetSpells(weather, at, at + 36 * HOUR, now.zone).filter(w => w.from <= to && w.to >= from);
    return { from: Math.min(from, ...spells.map(w => w.from)), to: Math.max(to, ...spells.map(w => w.to)) };
  }
  function isKnown(from: number, to: number): boolean {
    const sky = skyAt(weather, now.zone);
    for (let t = from; t < to; t += HOUR) if (sky(t) === undefined) return false;
    return true;
  }
}
const sum = (stretches: readonly Stretch[]): number => stretches.reduce((n, [from, to]) => n + to - from, 0);

function jobsFor({ next }: About, sky: Sky): NextJob[] {
  if (!sky) return next();
  const fit = next(sky.is === 'wet' ? 'indoors' : 'outdoors');
  if (sky.is === 'wet') return fit;
  const others = next().filter(j => !fit.some(f => f.do === j.do && f.part === j.part));
  return [...fit, ...others];
}
