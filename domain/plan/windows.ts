import { DateTime } from 'luxon';
import { obstacleIn, saidObstacle, type Conditions, type Obstacle } from './conditions.ts';
import { forecastAt, type ForecastHour, type Weather } from './forecast.ts';
import { sunOn } from './sun.ts';
import type { Site } from './input.ts';

/**
 * What a coat asks for when its product sheet says nothing else: surface 3 °C or more over the dew point and humidity under
 * 85 % (practice quoted from ISO 8502-4 and ISO 12944-7 by secondary sources; the standards were not read), surface at
 * least 10 °C, first cure six hours (common practice, no source). The product's sheet beats all of it.
 */
export const USUAL_COAT: Conditions = { place: 'outdoors', hands: 1, dry: true, maxRh: 85, minTempC: 10, maxTempC: 35, dewMargin: 3, cureHours: 6 };

interface CoatAsk {
  weather: Weather;
  zone: string;
  /** Moments (ms UTC) between which windows are wanted. */
  from: number;
  to: number;
  coat?: Conditions;
  /** Hours the coating itself takes; a fit window is at least this long. */
  workHours?: number;
  /** Heavy castings lag the air: their surface is taken to be as cold as the coldest of the twelve hours before. */
  heavy?: boolean;
  /** With it, work is only in daylight when the coat asks for that. */
  site?: Site;
}

/** A stretch of hours with the same verdict. `margin`: least difference of surface and dew point in it (K). */
export interface CoatWindow {
  from: number;
  to: number;
  fit: boolean;
  /** What is in the way; empty when fit. `unknown`: the forecast does not reach that far. */
  why: (Obstacle | 'unknown' | 'short')[];
  margin: number | undefined;
}

const HOUR = 3_600_000;
type Verdict = { why?: CoatWindow['why'][number]; margin: number | undefined };

/**
 * Windows in which a coat can be laid on and get through its first cure, by the forecast and the person's word. It is the
 * forecast that allows; before spraying the surface has to be measured.
 */
export function coatWindows(ask: CoatAsk): CoatWindow[] {
  const { coat = USUAL_COAT, workHours = 1 } = ask;
  const judge = hourJudge(ask, coat);
  const windows: CoatWindow[] = [];
  for (let at = ask.from; at < ask.to; at += HOUR) {
    const { why, margin } = throughCure(judge, at, coat.cureHours ?? 0, ask);
    const last = windows.at(-1);
    if (last && last.to === at && last.why[0] === why) {
      last.to = Math.min(ask.to, at + HOUR);
      last.margin = least(last.margin, margin);
    } else windows.push({ from: at, to: Math.min(ask.to, at + HOUR), fit: !why, why: why ? [why] : [], margin });
  }
  return windows.map((one) => (one.fit && one.to - one.from < workHours * HOUR ? { ...one, fit: false, why: ['short'] } : one));
}

function throughCure(judge: (at: number) => Verdict, at: number, cureHours: number, { site, zone, coat = USUAL_COAT }: CoatAsk): Verdict {
  if (coat.daylight && site && !isLight(at, zone, site)) return { why: 'dark', margin: undefined };
  let margin: number | undefined;
  for (let h = 0; h <= cureHours; h++) {
    const verdict = judge(at + h * HOUR);
    margin = least(margin, verdict.margin);
    if (verdict.why) return { why: verdict.why, margin };
  }
  return { margin };
}

/** Judges one hour, with what the person said about its day first. */
function hourJudge({ weather, zone, heavy = false }: CoatAsk, coat: Conditions): (at: number) => Verdict {
  const lookup = forecastAt(weather.forecast ?? []);
  const said = new Map((weather.said ?? []).map(({ date, sky }) => [date, sky]));
  const heated = weather.heated ?? false;
  return (at) => {
    const sky = said.get(DateTime.fromMillis(at, { zone }).toISODate()!);
    const block = lookup(at);
    const bySaid = saidObstacle(sky, coat, heated);
    if (!block) return { why: bySaid ?? 'unknown', margin: undefined };
    const surface = heavy ? coldestBefore(lookup, at) : block.tempC;
    const why = bySaid ?? obstacleIn(block, coat, heated, surface);
    // "Dry" said by the person beats the service's rain, not its temperature.
    return { why: why === 'wet' && sky && !bySaid ? undefined : why, margin: surface - block.dewC };
  };
}

function coldestBefore(lookup: (at: number) => ForecastHour | undefined, at: number): number {
  let coldest = Infinity;
  for (let h = 0; h <= 12; h++) coldest = Math.min(coldest, lookup(at - h * HOUR)?.tempC ?? Infinity);
  return coldest;
}

function isLight(at: number, zone: string, site: Site): boolean {
  const [up, down] = sunOn(DateTime.fromMillis(at, { zone }), site);
  return up <= at && at + HOUR <= down;
}

const least = (a: number | undefined, b: number | undefined) => (a === undefined ? b : b === undefined ? a : Math.min(a, b));
