import type { ForecastHour } from '../../domain/plan/forecast.ts';

/** Where the shop is, already rounded to what leaves this computer; degrees, north and east positive. */
export interface Spot { latitude: number; longitude: number }

/** What a service answered: blocks in the order of time, and for how long it asks not to be called again (ms). */
interface Fetched { blocks: ForecastHour[]; freshForMs: number; lastModified?: string }

/** One weather service. `fetch` is handed in, so that tests answer from files; it throws WeatherTrouble with a sentence. */
export interface Provider {
  name: string;
  /** Whose data it is, to be said beside the forecast as its licence asks. */
  credit: string;
  get(spot: Spot, fetch: typeof globalThis.fetch, since?: string): Promise<Fetched | 'unchanged'>;
}

export class WeatherTrouble extends Error {}

/** Two decimals are about a kilometre: near enough for weather, and no more of the person's place than that leaves this computer. */
export const rounded = ({ latitude, longitude }: Spot): Spot => ({ latitude: Math.round(latitude * 100) / 100, longitude: Math.round(longitude * 100) / 100 });

const LIMIT_MS = 15_000;

/** One polite request. Throws WeatherTrouble when the service can't be had or refuses. */
export async function request(url: URL, fetch: typeof globalThis.fetch, headers: Record<string, string> = {}): Promise<Response> {
  let answer: Response;
  try {
    answer = await fetch(url, { headers, signal: AbortSignal.timeout(LIMIT_MS), redirect: 'error' });
  } catch { throw new WeatherTrouble('The weather service did not answer.'); }
  if (answer.status === 429) throw new WeatherTrouble('The weather service asks for fewer questions.');
  if (!answer.ok && answer.status !== 304) throw new WeatherTrouble(`The weather service refused (${answer.status}).`);
  return answer;
}
