import { z } from 'zod';
import type { ForecastHour } from '../../domain/plan/forecast.ts';
import { request, WeatherTrouble, type Provider } from './provider.ts';

const span = z.object({ details: z.object({ precipitation_amount: z.number(), probability_of_precipitation: z.number().optional() }).partial() }).optional();
const Shape = z.object({
  properties: z.object({
    meta: z.object({ units: z.object({
      air_temperature: z.literal('celsius'), dew_point_temperature: z.literal('celsius'), relative_humidity: z.literal('%'),
      precipitation_amount: z.literal('mm'), wind_speed: z.literal('m/s'),
    }) }),
    timeseries: z.array(z.object({
      time: z.iso.datetime(),
      data: z.object({
        instant: z.object({ details: z.object({
          air_temperature: z.number(), dew_point_temperature: z.number().optional(), relative_humidity: z.number(), wind_speed: z.number(), wind_speed_of_gust: z.number().optional(),
        }) }),
        next_1_hours: span, next_6_hours: span,
      }),
    })),
  }),
});
type Point = z.infer<typeof Shape>['properties']['timeseries'][number];

/**
 * MET Norway's locationforecast 2.0, "complete": the world, about nine days, hourly at first, then blocks of six hours. Its terms ask
 * for a User-Agent that names the program and a contact, at most four decimals of place, and that its Expires is honoured.
 */
export const metNorway = (contact: string | undefined): Provider => ({
  name: 'met-norway',
  credit: 'Data from MET Norway (CC BY 4.0)',
  async get({ latitude, longitude }, fetch, since) {
    const url = new URL('https://api.met.no/weatherapi/locationforecast/2.0/complete');
    url.search = new URLSearchParams({ lat: String(latitude), lon: String(longitude) }).toString();
    const answer = await request(url, fetch, { 'User-Agent': `pawl/0.1 ${contact ?? 'private use'}`, ...(since ? { 'If-Modified-Since': since } : {}) });
    if (answer.status === 304) return 'unchanged';
    const read = Shape.safeParse(await answer.json().catch(() => undefined));
    if (!read.success) throw new WeatherTrouble('The weather service answered in a form I do not know; its forecast is not used.');
    const until = Date.parse(answer.headers.get('expires') ?? '') - Date.parse(answer.headers.get('date') ?? '');
    return {
      blocks: read.data.properties.timeseries.flatMap(block), freshForMs: Number.isFinite(until) && until > 0 ? until : 3_600_000,
      lastModified: answer.headers.get('last-modified') ?? undefined,
    };
  },
});

/** A point with the rain of its span: one hour where the service gives it, else the six hours as one block. */
function block({ time, data }: Point): ForecastHour[] {
  const hours = data.next_1_hours?.details.precipitation_amount !== undefined ? 1 : 6;
  const rain = hours === 1 ? data.next_1_hours?.details : data.next_6_hours?.details;
  const d = data.instant.details;
  if (rain?.precipitation_amount === undefined || d.dew_point_temperature === undefined) return [];
  return [{
    startUtc: time, hours, tempC: d.air_temperature, dewC: d.dew_point_temperature, rh: d.relative_humidity, popPct: rain.probability_of_precipitation ?? null,
    precipMm: rain.precipitation_amount, windMs: d.wind_speed, gustMs: d.wind_speed_of_gust ?? null,
  }];
}
