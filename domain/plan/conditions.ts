import { forecastAt, isWet, type ForecastHour, type SaidSky, type Weather } from './forecast.ts';

/** What a job asks of its hour. */
export interface Conditions {
  /** `either`: indoors when it is wet. */
  place: 'indoors' | 'outdoors' | 'either';
  /** 0: nobody's time (cure, a machinist's work); 2: only with help. */
  hands: 0 | 1 | 2;
  /** Dry air: humidity below 85 %, or below `maxRh`. */
  dry?: boolean;
  maxRh?: number;
  minTempC?: number;
  maxTempC?: number;
  /** Surface at least this much above the dew point (K); the surface is taken to be at air temperature. */
  dewMargin?: number;
  daylight?: boolean;
  /** The weather must stay fit for so many hours after the work. */
  cureHours?: number;
}

/** Why an hour does not fit; `fit` is 0 so that a mask of them can be tested quickly. `sampled`: unknown yet, fit when that day is dry. */
export const FIT = 0;
export const SAMPLED = 1;
export const OBSTACLES = ['fit', 'sampled', 'wet', 'cold', 'hot', 'damp', 'dew', 'wind', 'dark', 'help'] as const;
export type Obstacle = Exclude<(typeof OBSTACLES)[number], 'fit' | 'sampled'>;
const code = (obstacle: Obstacle) => OBSTACLES.indexOf(obstacle);

/** Painting out of doors stops above this wind (m/s). Common practice, no source. */
const WINDY_MS = 7;

/** True when weather has a say in it at all. */
function asksForWeather(c: Conditions): boolean {
  return c.place === 'outdoors' || c.dry === true || c.dewMargin !== undefined || c.maxRh !== undefined || c.minTempC !== undefined || c.maxTempC !== undefined;
}

/** The obstacle that a forecast block is to these conditions, if it is one; the surface is at air temperature unless told. */
export function obstacleIn(block: ForecastHour, c: Conditions, heated: boolean, surfaceC = block.tempC): Obstacle | undefined {
  const ruledByAir = !(heated && c.place === 'indoors');
  if (c.place === 'outdoors' && isWet(block)) return 'wet';
  if (ruledByAir && c.minTempC !== undefined && Math.min(block.tempC, surfaceC) < c.minTempC) return 'cold';
  if (ruledByAir && c.maxTempC !== undefined && block.tempC > c.maxTempC) return 'hot';
  if (ruledByAir && c.dewMargin !== undefined && surfaceC - block.dewC < c.dewMargin) return 'dew';
  if (ruledByAir && (c.dry || c.maxRh !== undefined) && block.rh >= (c.maxRh ?? 85)) return 'damp';
  if (c.place === 'outdoors' && c.dewMargin !== undefined && block.windMs > WINDY_MS) return 'wind';
  return undefined;
}

/** Judges the stretch of time `from`–`to` (ms UTC) against conditions: a code of `OBSTACLES`. */
type Judge = (from: number, to: number) => number;

/**
 * Makes the judge of the weather for one set of conditions. The person's word about a day comes first, then the forecast
 * hour by hour (through `cureHours` after the work), then the climate's usual temperature; past all that an hour that
 * rain or damp would spoil is `SAMPLED`. `dateOf` answers the local date of a moment.
 */
export function weatherJudge(c: Conditions, weather: Weather, dateOf: (at: number) => string): Judge {
  if (!asksForWeather(c)) return () => FIT;
  const lookup = forecastAt(weather.forecast ?? []);
  const said = new Map((weather.said ?? []).map(({ date, sky }) => [date, sky]));
  const knownUntil = Math.max(0, ...(weather.forecast ?? []).map(({ startUtc, hours }) => Date.parse(startUtc) + hours * HOUR));
  const lastSaid = [...said.keys()].sort().at(-1) ?? '';
  const beyond = (at: number) => (isUsuallyTooCold(c, weather, dateOf(at)) ? code('cold') : spoiltByRain(c) ? SAMPLED : FIT);
  return (from, to) => {
    if (from >= knownUntil && dateOf(from) > lastSaid) return beyond(from);
    const until = to + (c.cureHours ?? 0) * HOUR;
    let unknown = false;
    // From one full hour to the next, so that the last begun hour is looked at too.
    for (let at = from; at < until; at = Math.floor(at / HOUR) * HOUR + HOUR) {
      const sky = said.get(dateOf(at));
      const block = lookup(at);
      const obstacle = saidObstacle(sky, c, weather.heated ?? false) ?? (block && obstacleIn(block, c, weather.heated ?? false));
      // "Dry" said by the person beats the service's rain, not its temperature.
      if (obstacle && !(obstacle === 'wet' && sky && !FALLING.has(sky))) return code(obstacle);
      if (!block && !sky) unknown = true;
    }
    return unknown ? beyond(from) : FIT;
  };
}

const HOUR = 3_600_000;
const FALLING = new Set<SaidSky['sky']>(['rain', 'snow']);

function spoiltByRain(c: Conditions): boolean {
  return c.place === 'outdoors' || c.dry === true || c.maxRh !== undefined || c.dewMargin !== undefined;
}

/** The obstacle that the person's word about a day is to these conditions. */
export function saidObstacle(sky: SaidSky['sky'] | undefined, c: Conditions, heated: boolean): Obstacle | undefined {
  if (!sky || (heated && c.place === 'indoors')) return undefined;
  if (FALLING.has(sky) && c.place === 'outdoors') return 'wet';
  if (FALLING.has(sky) && spoiltByRain(c)) return 'damp';
  if ((sky === 'frost' || sky === 'snow') && c.minTempC !== undefined) return 'cold';
  if (sky === 'wind' && c.place === 'outdoors' && c.dewMargin !== undefined) return 'wind';
  return undefined;
}

function isUsuallyTooCold(c: Conditions, { climate, heated }: Weather, date: string): boolean {
  const usual = climate?.dayTempC?.[Number(date.slice(5, 7)) - 1];
  if (usual === undefined || c.minTempC === undefined || (heated && c.place === 'indoors')) return false;
  return usual < c.minTempC;
}
