import { addDays, dayOf } from '../log/days.ts';
import type { Shop, WeatherSaid } from '../log/shop.ts';
import { verbFamily } from '../log/verbs.ts';

/** The weather as the person said it; the latest word about a day wins. A word with no end holds for a week at most. */
const OPEN_END_DAYS = 6;

export function saidOf(shop: Shop, day: string): WeatherSaid | undefined {
  return shop.weather.findLast(w => {
    const from = w.from ?? (w.to !== undefined && w.to < dayOf(w.at) ? w.to : dayOf(w.at));
    return from <= day && day <= (w.to ?? addDays(from, OPEN_END_DAYS));
  });
}

/** Works that paint, sealer or varnish make, which want it dry and above frost. Common practice, no source. */
const COATING = new Set(['paint', 'prime', 'varnish', 'coat', 'seal', 'finish', 'etch']);
export const isCoating = (verb: string): boolean => COATING.has(verbFamily(verb));

/** Whether a sky is fit for a work: coating wants it dry, still and frost-free; any other work outside only wants no rain or snow. */
export function skyFits(sky: WeatherSaid['sky'], verb: string | undefined): boolean {
  if (sky === 'dry') return true;
  if (sky === 'rain' || sky === 'snow') return false;
  return !(verb && isCoating(verb));
}

/** The first day from `today` on that is not said to be unfit. */
export function fitFrom(shop: Shop, today: string, verb: string): string {
  let day = today;
  for (let i = 0; i < 31; i++, day = addDays(day, 1)) { const said = saidOf(shop, day); if (!said || skyFits(said.sky, verb)) return day; }
  return day;
}
