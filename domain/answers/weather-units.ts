import type { Shop } from '../log/shop.ts';

/** How temperatures, wind and rain are told: in the person's own units. Reckoning is in °C, m/s and mm throughout. */
export type WeatherUnits = 'metric' | 'imperial';

/** Zones of the United States that do not begin with US/: where nothing was measured yet, their people are taken to read °F. */
const FAHRENHEIT = /^(?:US\/|America\/(?:New_York|Detroit|Chicago|Menominee|Denver|Boise|Phoenix|Los_Angeles|Anchorage|Juneau|Sitka|Metlakatla|Yakutat|Nome|Adak|Indiana\/|Kentucky\/|North_Dakota\/)|Pacific\/Honolulu)/;

/** The units of the last temperature that the person noted, else those usual in the zone. */
export function weatherUnits(shop: Shop, zone: string): WeatherUnits {
  let last: { id: number; unit: string } | undefined;
  for (const machine of shop.machines.values())
    for (const thing of machine.things.values())
      for (const r of [...thing.asWas.values(), ...thing.asLeft.values()])
        if ((r.unit === '°C' || r.unit === '°F') && r.id > (last?.id ?? -1)) last = { id: r.id, unit: r.unit };
  return (last ? last.unit === '°F' : FAHRENHEIT.test(zone)) ? 'imperial' : 'metric';
}

const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;

/** A temperature to the degree, without its sign of degrees, for ranges. */
export const degrees = (celsius: number, units: WeatherUnits): number => Math.round(units === 'imperial' ? fahrenheit(celsius) : celsius);
export const sign = (units: WeatherUnits): '°C' | '°F' => (units === 'imperial' ? '°F' : '°C');
export const temperature = (celsius: number, units: WeatherUnits): string => `${degrees(celsius, units)} ${sign(units)}`;
/** A difference of temperatures, to a tenth: 3 °C are 5.4 °F. */
export const rise = (kelvin: number, units: WeatherUnits): string => `${(units === 'imperial' ? kelvin * 1.8 : kelvin).toFixed(1).replace(/\.0$/, '')} ${sign(units)}`;
/** The margin over the dew point as the practice has it in either unit: 3 °C or 5 °F. */
export const margin = (units: WeatherUnits): string => (units === 'imperial' ? '5 °F' : '3 °C');
export const wind = (ms: number, units: WeatherUnits): string => (units === 'imperial' ? `${Math.round(ms * 2.23694)} mph` : `${Math.round(ms)} m/s`);
export const rainRate = (mmPerHour: number, units: WeatherUnits): string => (units === 'imperial' ? `${(mmPerHour / 25.4).toFixed(2)} in an hour` : `${mmPerHour.toFixed(1)} mm an hour`);
