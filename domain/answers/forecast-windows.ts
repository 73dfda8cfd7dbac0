import { DateTime } from 'luxon';
import type { ForecastWindow } from '../model/answer.ts';
import type { Ref } from '../model/stored.ts';
import { nameWords } from '../model/names.ts';
import { addDays } from '../log/days.ts';
import { act } from '../lore/act.ts';
import { usualConditions } from '../lore/conditions.ts';
import { obstacleIn, saidObstacle, type Conditions } from '../plan/conditions.ts';
import { forecastAt, isWet, type ForecastHour, type SaidSky } from '../plan/forecast.ts';
import { coatWindows, type CoatWindow } from '../plan/windows.ts';
import { obstacleWords } from './why.ts';
import type { Now } from './given.ts';
import type { FetchedWeather } from './forecast.ts';
import { degrees, rainRate, rise, sign, temperature, wind, type WeatherUnits } from './weather-units.ts';

/** What a window is wanted for: the work (none: the weather itself), whether that is a coat, and the person's word about a day. */
export interface Wanted { work: Ref | undefined; coat: boolean; now: Now; said: (day: string) => SaidSky['sky'] | undefined; units: WeatherUnits }

const HOUR = 3_600_000;
/** Castings that are slow to warm up in the morning; their surface is taken to be as cold as the night was. Common practice, no source. */
const HEAVY = new Set(['engine', 'block', 'gearbox', 'frame', 'chassis', 'axle', 'casting', 'transmission', 'tractor', 'head', 'housing']);

/** Wind below this is not worth a word. */
const BREEZE_MS = 3.5;

/** Windows by the hour over some local days, each with its reasons; past hours and the dark are left out. */
export function hourWindows(days: readonly string[], fetched: FetchedWeather, wanted: Wanted): ForecastWindow[] {
  const { now, work, coat, said } = wanted;
  const conditions = conditionsOf(wanted);
  const skies = days.flatMap(date => { const sky = said(date); return sky ? [{ date, sky }] : []; });
  const ask = {
    weather: { forecast: fetched.blocks, said: skies }, zone: now.zone, coat: conditions, site: fetched.site,
    heavy: coat && nameWords(work?.name ?? '').some(w => HEAVY.has(w)),
  };
  const stretches = joined(days, said).map(([first, last]) => ({
    from: Math.max(hourOf(Date.parse(now.at)), DateTime.fromISO(first, { zone: now.zone }).toMillis()),
    to: DateTime.fromISO(addDays(last, 1), { zone: now.zone }).toMillis(),
  }));
  return stretches.flatMap(s => coatWindows({ ...ask, ...s })).filter(w => !w.why.includes('dark') && !w.why.includes('unknown')).map(w => ({
    from: isoIn(w.from, now.zone), to: isoIn(w.to, now.zone), fit: w.fit, why: w.fit ? goodWords(w, fetched, wanted) : [badWords(w, fetched, wanted, conditions)],
  }));
}

/** What the work usually asks of its hour, taken to be done out of doors. */
function conditionsOf({ work }: Wanted): Conditions {
  const usual = work ? usualConditions(act(work.verb, work.name, work.off)).conditions : undefined;
  return { ...usual, place: 'outdoors', hands: 1 };
}

/** Days on end of which the person said the same (or nothing), as first and last: where the word ends a window does. */
function joined(days: readonly string[], said: Wanted['said']): [string, string][] {
  const out: [string, string][] = [];
  for (const day of days) {
    const last = out.at(-1);
    if (last && addDays(last[1], 1) === day && said(last[1]) === said(day)) last[1] = day;
    else out.push([day, day]);
  }
  return out;
}

const hourOf = (at: number): number => Math.floor(at / HOUR) * HOUR;
const isoIn = (at: number, zone: string): string => DateTime.fromMillis(at, { zone }).toISO({ suppressMilliseconds: true, includeOffset: true })!;
const clock = (at: number, zone: string): string => DateTime.fromMillis(at, { zone }).toFormat('HH:mm');
const blocksIn = ({ blocks }: FetchedWeather, from: number, to: number): ForecastHour[] =>
  blocks.filter(b => Date.parse(b.startUtc) < to && Date.parse(b.startUtc) + b.hours * HOUR > from);
const range = (celsius: readonly number[], units: WeatherUnits): string => {
  const [low, high] = [degrees(Math.min(...celsius), units), degrees(Math.max(...celsius), units)];
  return `${low === high ? low : `${low} to ${high}`} ${sign(units)}`;
};

/** Why a stretch is fit: what the sky does, warmth, distance to the dew point, wind; and where the person's word goes against the service. */
function goodWords(w: CoatWindow, fetched: FetchedWeather, { coat, now, said, units }: Wanted): string[] {
  const inside = blocksIn(fetched, w.from, w.to);
  const wet = inside.find(isWet);
  const words = [wet ? `you said ${said(DateTime.fromMillis(w.from, { zone: now.zone }).toISODate()!) ?? 'dry'}, though the forecast has rain at ${clock(Math.max(w.from, Date.parse(wet.startUtc)), now.zone)}` : 'dry'];
  if (inside.length) words.push(range(inside.map(b => b.tempC), units));
  if (coat && w.margin !== undefined) words.push(`at least ${rise(w.margin, units)} over the dew point`);
  const most = Math.max(0, ...inside.map(b => b.windMs));
  if (most >= BREEZE_MS) words.push(`wind up to ${wind(most, units)}`);
  return words;
}

/** Why a stretch is not fit: the first hour in it (or in the first cure after it) that is in the way, with its figure. */
function badWords(w: CoatWindow, fetched: FetchedWeather, { now, said, units }: Wanted, c: Conditions): string {
  const why = w.why[0]!;
  if (why === 'short') return 'too short a spell';
  if (why === 'unknown') return 'beyond the forecast';
  const lookup = forecastAt(fetched.blocks);
  const until = w.to + (c.cureHours ?? 0) * HOUR;
  for (let at = w.from; at <= until; at += HOUR) {
    const sky = said(DateTime.fromMillis(at, { zone: now.zone }).toISODate()!);
    const block = lookup(at);
    const bySaid = saidObstacle(sky, c, false) === why;
    if (!bySaid && !(block && obstacleIn(block, c, false) === why)) continue;
    const detail = bySaid ? `${sky}, you said` : figures(why, block!, c, units);
    return at > w.from && c.cureHours ? `${detail} from ${clock(at, now.zone)}, within its first ${c.cureHours} h` : detail;
  }
  return w.margin !== undefined && why === 'dew' ? `only ${rise(w.margin, units)} over the dew point after a cold night` : obstacleWords(why);
}

function figures(why: Exclude<CoatWindow['why'][number], 'unknown' | 'short'>, b: ForecastHour, c: Conditions, units: WeatherUnits): string {
  switch (why) {
    case 'wet': return b.precipMm / b.hours >= 0.1 ? `rain, ${rainRate(b.precipMm / b.hours, units)}` : `rain likely, ${b.popPct} %`;
    case 'cold': return `too cold, ${temperature(b.tempC, units)}${c.minTempC === undefined ? '' : ` (wants ${degrees(c.minTempC, units)})`}`;
    case 'hot': return `too hot, ${temperature(b.tempC, units)}`;
    case 'damp': return `air too damp, ${Math.round(b.rh)} %`;
    case 'dew': return `only ${rise(b.tempC - b.dewC, units)} over the dew point`;
    case 'wind': return `too windy, ${wind(b.windMs, units)}`;
    default: return obstacleWords(why);
  }
}
