import { z } from 'zod';
import { amount, measure } from './given.ts';
import { pair, risePair, round } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { convert } from './units.ts';

/** Magnus form over water and over ice, °C. WMO-No. 8, annex 4.B. */
const WATER = { a: 17.62, b: 243.12 };
const ICE = { a: 22.46, b: 272.62 };
/** Steel is painted when it is this much over the dew point. ISO 8502-4: 3 °C (5 °F). */
const MARGIN_C = 3;

const vapour = (celsius: number, { a, b }: typeof WATER): number => 6.112 * Math.exp((a * celsius) / (b + celsius));
const inverse = (hectopascals: number, { a, b }: typeof WATER): number => {
  const y = Math.log(hectopascals / 6.112);
  return (b * y) / (a - y);
};

/** Dew point over water, °C. */
export const dewPointOf = (celsius: number, humidity: number): number => inverse((vapour(celsius, WATER) * humidity) / 100, WATER);

/** Temperature at which the same air puts frost on a surface, °C; only meant under freezing. */
const frostPointOf = (celsius: number, humidity: number): number => inverse((vapour(celsius, WATER) * humidity) / 100, ICE);

export const dewPoint = defineSum({
  of: 'dewPoint',
  answers: 'The dew point, and how warm steel must be to paint it.',
  fields: {
    temp: 'of the air, °F or °C',
    humidity: 'relative, percent',
    surface: 'temperature of the steel (how far over the dew point it is)',
  },
  given: z.object({
    ...measure('temp', 'temperature', 'any'),
    ...measure('surface', 'temperature', 'any'),
    humidity: amount().max(100, { error: 'cannot be over 100 percent' }).optional(),
  }),
  work(given) {
    if (given.temp === undefined) return ask('temp', 'What is the air temperature?');
    if (given.humidity === undefined) return ask('humidity', 'What is the humidity, in percent?');
    const unit = given.tempUnit ?? '°F';
    const celsius = convert(given.temp, unit, '°C');
    if (celsius < -45 || celsius > 60) return refuse('The sum holds from -45 to 60 °C (-49 to 140 °F).');
    const dew = dewPointOf(celsius, given.humidity);
    const metric = unit === '°C' || unit === 'K';
    const shown = (name: string, value: number, note?: string) =>
      metric ? pair(name, value, '°C', 1, 1, note) : pair(name, convert(value, '°C', '°F'), '°F', 1, 1, note);
    const margin =
      given.surface === undefined
        ? []
        : risePair(
            'margin',
            (convert(given.surface, given.surfaceUnit ?? unit, '°C') - dew) * (metric ? 1 : 1.8),
            metric ? '°C' : '°F',
            1,
            'steel over the dew point',
          );
    return {
      results: [
        ...shown('dewPoint', dew),
        ...(dew < 0 ? shown('frostPoint', frostPointOf(celsius, given.humidity)) : []),
        ...shown('surfaceMin', dew + MARGIN_C, 'coldest steel to paint'),
        ...margin,
      ],
      basis: `air at ${round(given.temp, 1)} ${unit} and ${given.humidity} %, over water; paint at 3 °C (5 °F) over it or more`,
      assumed: given.tempUnit ? [] : ['degrees Fahrenheit; say Celsius if not'],
      caution: "Steel can be colder than the air, in the morning above all: measure the steel. The paint's data sheet beats this.",
      source: 'Magnus form of WMO-No. 8; margin of ISO 8502-4',
    };
  },
});
