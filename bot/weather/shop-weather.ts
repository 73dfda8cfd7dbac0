import { join } from 'node:path';
import type { FetchedWeather } from '../../domain/answers/forecast.ts';
import type { PlanSettings } from '../../domain/plan/from-shop/settings.ts';
import type { Site } from '../../domain/plan/input.ts';
import { readSetting } from '../../domain/store/settings.ts';
import type { Store } from '../../domain/store/open.ts';
import { nowIn } from '../clock.ts';
import type { Config } from '../config.ts';
import { startLoop, type Loop } from '../loop.ts';
import { metNorway } from './met-norway.ts';
import { openMeteo } from './open-meteo.ts';
import { openStation, type Station } from './station.ts';

/** Settings by words: the place as "52.35,-7.7", and whether a forecast is fetched ("on", "off"; not set: as the environment says). */
export const PLACE = 'place';
export const FORECAST = 'forecast';

/** The weather of the shop: what was fetched of it, and where the shop is. */
export interface ShopWeather {
  /** The last good forecast with its credit; undefined: none was ever fetched, or the person does not want one. Never throws. */
  fetched(): FetchedWeather | undefined;
  /** Where the shop is, for daylight; undefined until said. */
  site(): Site | undefined;
  /** Whether a forecast is fetched: the person chose a service and a place. */
  isFetched(): boolean;
  /** The same as the planner takes it, beside what the person said of the weather. */
  planning(): Pick<PlanSettings, 'forecast' | 'site'>;
  /** Fetches what is no longer fresh; answers the sentence of what went wrong. */
  refresh(): Promise<string | undefined>;
  /** Gives up a request that is under way; the program ends. */
  stop(): void;
}

interface ShopWeatherOptions { store: Store; zone: string; dir: string; config?: Config['weather']; fetch?: typeof globalThis.fetch; now?: () => number }

/** Opens the weather of a shop. Nothing is fetched until `refresh`, and then only if the person chose it. */
export function shopWeather({ store, zone, dir, config, fetch: given = globalThis.fetch, now }: ShopWeatherOptions): ShopWeather {
  const ending = new AbortController();
  const fetch: typeof globalThis.fetch = (url, init) => given(url, { ...init, signal: AbortSignal.any([ending.signal, ...(init?.signal ? [init.signal] : [])]) });
  let open: { key: string; station: Station } | undefined;
  const site = (): Site | undefined => placeSaid(store) ?? (config && { latitude: config.latitude, longitude: config.longitude });
  /** The station for what is chosen now: the person may change it by words while the program runs. */
  const station = (): Station | undefined => {
    const spot = site();
    const chosen = readSetting(store, FORECAST);
    const service = chosen === 'off' || (chosen === undefined && !config) ? undefined : config?.service ?? 'open-meteo';
    if (!spot || !service) return undefined;
    const key = `${service} ${spot.latitude} ${spot.longitude}`;
    if (open?.key !== key) {
      const provider = service === 'open-meteo' ? openMeteo : metNorway(config?.contact);
      open = { key, station: openStation({ provider, spot, path: join(dir, 'forecast.json'), fetch, now }) };
    }
    return open.station;
  };
  const fetched = (): FetchedWeather | undefined => {
    const here = station();
    const kept = here?.latest();
    return here && kept && { blocks: kept.blocks, fetched: nowIn(zone, kept.fetched), credit: here.credit, site: { latitude: kept.latitude, longitude: kept.longitude } };
  };
  return {
    fetched, site, isFetched: () => station() !== undefined,
    planning: () => { const [f, s] = [fetched(), site()]; return { ...(f ? { forecast: f.blocks } : {}), ...(s ? { site: s } : {}) }; },
    refresh: async () => station()?.refresh(),
    stop: () => ending.abort(),
  };
}

function placeSaid(store: Store): Site | undefined {
  const [latitude = NaN, longitude = NaN] = readSetting(store, PLACE)?.split(',').map(Number) ?? [];
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : undefined;
}

/** How often the program looks whether the forecast is still fresh and still wanted, and how long a service that failed is let be, ms. */
const LOOK_MS = 60_000;
const LET_BE_MS = 10 * 60_000;

/** Keeps the forecast fresh while the program runs. Trouble is logged once until it is over; the last good forecast stays. */
export function keepFresh(weather: ShopWeather, log: (line: string) => void, now: () => number = Date.now, everyMs = LOOK_MS): Loop {
  let trouble: string | undefined;
  let notBefore = 0;
  const loop = startLoop(async () => {
    if (now() < notBefore) return undefined;
    const said = await weather.refresh();
    if (said && said !== trouble) log(said);
    trouble = said;
    notBefore = said ? now() + LET_BE_MS : 0;
    return undefined;
  }, everyMs);
  return { ...loop, close: () => { weather.stop(); return loop.close(); } };
}
