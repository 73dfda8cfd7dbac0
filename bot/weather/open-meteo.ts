import { z } from 'zod';
import type { ForecastHour } from '../../domain/plan/forecast.ts';
import { request, WeatherTrouble, type Provider } from './provider.ts';

const HOURLY = 'temperature_2m,dew_point_2m,relative_humidity_2m,precipitation_probability,precipitation,wind_speed_10m,wind_gusts_10m';
const column = z.array(z.number().nullable());

/** The columns as documented, with the units that were asked for: another unit is another meaning, so it is refused. */
const Shape = z.object({
  hourly_units: z.object({
    temperature_2m: z.literal('°C'), dew_point_2m: z.literal('°C'), relative_humidity_2m: z.literal('%'), precipitation: z.literal('mm'),
    wind_speed_10m: z.literal('m/s'),
  }),
  hourly: z.object({
    time: z.array(z.string().regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d$/)), temperature_2m: column, dew_point_2m: column, relative_humidity_2m: column,
    precipitation_probability: column, precipitation: column, wind_speed_10m: column, wind_gusts_10m: column,
  }),
});

/** Open-Meteo: hourly columns, up to 16 days, free for non-commercial use, data CC BY 4.0. Times are asked for in UTC. */
export const openMeteo: Provider = {
  name: 'open-meteo',
  credit: 'Weather data by Open-Meteo.com (CC BY 4.0)',
  async get({ latitude, longitude }, fetch) {
    const url = new URL('https://api.open-meteo.com/v1/forecast');
    url.search = new URLSearchParams({
      latitude: String(latitude), longitude: String(longitude), hourly: HOURLY, timezone: 'UTC', forecast_days: '16', wind_speed_unit: 'ms',
    }).toString();
    const answer = await request(url, fetch);
    const read = Shape.safeParse(await answer.json().catch(() => undefined));
    if (!read.success) throw new WeatherTrouble('The weather service answered in a form I do not know; its forecast is not used.');
    return { blocks: blocks(read.data.hourly), freshForMs: 2 * 3_600_000 };
  },
};

/** Hours that lack what every judgement needs are left out rather than filled in. */
function blocks(h: z.infer<typeof Shape>['hourly']): ForecastHour[] {
  return h.time.flatMap((time, i) => {
    const [tempC, dewC, rh, precipMm, windMs] = [h.temperature_2m[i], h.dew_point_2m[i], h.relative_humidity_2m[i], h.precipitation[i], h.wind_speed_10m[i]];
    if (tempC == null || dewC == null || rh == null || precipMm == null || windMs == null) return [];
    return [{ startUtc: `${time}:00Z`, hours: 1, tempC, dewC, rh, popPct: h.precipitation_probability[i] ?? null, precipMm, windMs, gustMs: h.wind_gusts_10m[i] ?? null }];
  });
}
