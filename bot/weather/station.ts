import { keep, readKept, type KeptForecast } from './kept-forecast.ts';
import { rounded, WeatherTrouble, type Provider, type Spot } from './provider.ts';

/** The weather as the program has it: what was last fetched, how old, and what went wrong since. */
export interface Station {
  /** The last good forecast, whatever its age; undefined when none was ever fetched. */
  latest(): KeptForecast | undefined;
  /** Fetches if the last answer is no longer fresh. Never throws: the sentence of what went wrong comes back. */
  refresh(): Promise<string | undefined>;
  credit: string;
}

interface StationOptions { provider: Provider; spot: Spot; path: string; fetch?: typeof globalThis.fetch; now?: () => number }

export function openStation({ provider, spot, path, fetch = globalThis.fetch, now = Date.now }: StationOptions): Station {
  const place = rounded(spot);
  const own = (k: KeptForecast | undefined) => (k && k.provider === provider.name && k.latitude === place.latitude && k.longitude === place.longitude ? k : undefined);
  let held = own(readKept(path));
  return {
    credit: provider.credit,
    latest: () => held,
    async refresh() {
      if (held && now() < held.freshUntil) return undefined;
      try {
        const got = await provider.get(place, fetch, held?.lastModified);
        held = got === 'unchanged' && held
          ? { ...held, freshUntil: now() + 3_600_000 }
          : got === 'unchanged' ? undefined : { provider: provider.name, ...place, fetched: now(), freshUntil: now() + got.freshForMs, lastModified: got.lastModified, blocks: got.blocks };
        if (held) keep(path, held);
        return undefined;
      } catch (error) {
        if (error instanceof WeatherTrouble) return error.message;
        throw error;
      }
    },
  };
}
