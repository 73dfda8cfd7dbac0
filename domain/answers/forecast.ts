import { DateTime } from 'luxon';
import type { ForecastAnswer, ForecastWindow } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Ref } from '../model/stored.ts';
import { addDays } from '../log/days.ts';
import { readPhrase } from '../log/phrase.ts';
import { emptyMachine, type Machine, type Shop } from '../log/shop.ts';
import { isFitting, isVerb } from '../log/verbs.ts';
import { act } from '../lore/act.ts';
import { usualConditions } from '../lore/conditions.ts';
import type { ForecastHour } from '../plan/forecast.ts';
import type { Site } from '../plan/input.ts';
import type { More, Now } from './given.ts';
import { hereOf } from './find.ts';
import { hourWindows, type Wanted } from './forecast-windows.ts';
import { some } from './supply.ts';
import { surfaceToday, withSurface } from './surface.ts';
import { isCoating, saidOf, skyFits } from './weather.ts';
import { weatherUnits } from './weather-units.ts';

/** A forecast as it was fetched: blocks in the order of time, when (ISO), whose data it is, and of what place. */
export interface FetchedWeather { blocks: readonly ForecastHour[]; fetched: string; credit: string; site: Site }

/** How far ahead an open question looks, and the longest stretch one is answered for, in days. */
const WEEK = 7;
const LONGEST = 31;

/**
 * Whether the weather is fit for a work: by the hour as far as a fetched forecast reaches, with the person's own word about a day
 * winning over it, and by the day where there is only that word. A time that nothing is known of is left out.
 */
export function forecast(shop: Shop, ask: AskOf<'forecast'>, now: Now, more: More, fetched?: FetchedWeather): ForecastAnswer {
  const today = DateTime.fromISO(now.at).setZone(now.zone).toISODate()!;
  const [first, last] = [ask.from ?? today, ask.to ?? (ask.from ?? addDays(today, WEEK - 1))];
  const days = daysOf(first < today && last >= today ? today : first, last);
  const work = ask.for === undefined ? undefined : workOf(ask.for, hereOf(shop, more.machine) ?? emptyMachine('', ''));
  const coat = work?.verb !== undefined && isCoating(work.verb);
  const units = weatherUnits(shop, now.zone);
  const wanted: Wanted = { work, coat, now, units, said: day => saidOf(shop, day)?.sky };
  const known = (day: string): boolean => fetched !== undefined && reaches(fetched, day, now.zone);
  const byHour = fetched ? hourWindows(days.filter(known), fetched, wanted) : [];
  const byDay = dayWindows(shop, days.filter(d => !known(d)), work?.verb);
  const measured = coat && days.includes(today) ? surfaceToday(shop, work, now, fetched) : undefined;
  const windows = withSurface([...byHour, ...byDay], measured, now, units).sort((a, b) => (a.from < b.from ? -1 : 1));
  const caution = work && usualConditions(act(work.verb, work.name, work.off)).caution;
  return {
    kind: 'forecast', ...some({ for: ask.for }), windows, basis: basisOf(shop, days, byHour.length > 0 || !byDay.length ? fetched : undefined),
    ...(fetched && byHour.length ? { age: ageOf(fetched.fetched, now.at) } : {}), ...(coat ? { coat } : {}), ...(units === 'imperial' ? { units } : {}), ...some({ measured, caution }),
  };
}

/** "Paint hood": in what a question is for the verb stands first, though it may be a noun elsewhere. */
function workOf(phrase: string, machine: Machine): Ref {
  const ref = readPhrase(machine, phrase);
  const [verb = '', ...rest] = phrase.trim().toLowerCase().split(/\s+/);
  if (ref.verb !== undefined || ref.off || !isVerb(verb) || machine.things.has(ref.key)) return ref;
  const part = rest.length ? readPhrase(machine, rest.join(' ')) : { key: '', name: '' };
  return { key: part.key, name: part.name, ...(isFitting(verb) ? {} : { verb }) };
}

function daysOf(first: string, last: string): string[] {
  const days: string[] = [];
  for (let day = first; day <= last && days.length < LONGEST; day = addDays(day, 1)) days.push(day);
  return days;
}

/** Whether a forecast says something about a local day. */
function reaches({ blocks }: FetchedWeather, day: string, zone: string): boolean {
  const [from, to] = [DateTime.fromISO(day, { zone }).toMillis(), DateTime.fromISO(addDays(day, 1), { zone }).toMillis()];
  return blocks.some(b => Date.parse(b.startUtc) < to && Date.parse(b.startUtc) + b.hours * 3_600_000 > from);
}

/** Days on end with the same sky are one window. */
function dayWindows(shop: Shop, days: readonly string[], verb: Ref['verb']): ForecastWindow[] {
  const windows: ForecastWindow[] = [];
  for (const day of days) {
    const sky = saidOf(shop, day)?.sky;
    if (!sky) continue;
    const fit = skyFits(sky, verb);
    const before = windows.at(-1);
    if (before && before.fit === fit && before.why[0] === sky && addDays(before.to, 1) === day) before.to = day;
    else windows.push({ from: day, to: day, fit, why: [sky] });
  }
  return windows;
}

function basisOf(shop: Shop, days: readonly string[], fetched: FetchedWeather | undefined): string {
  if (!fetched) return 'said';
  return days.some(d => saidOf(shop, d)) ? `said; ${fetched.credit}` : fetched.credit;
}

/** "fetched 3 h ago": the forecast's age in whole hours, from two days on in days. */
export function ageOf(fetched: string, at: string): string {
  const hours = Math.max(0, Math.floor((Date.parse(at) - Date.parse(fetched)) / 3_600_000));
  return hours < 1 ? 'fetched within the hour' : hours < 48 ? `fetched ${hours} h ago` : `fetched ${Math.floor(hours / 24)} days ago`;
}
