import { DateTime } from 'luxon';
import { forecastAt, isWet, type Weather } from '../../domain/plan/forecast.ts';

/** Hours of rain or snow on end (ms UTC); `said`: by the person's word. */
interface Spell { from: number; to: number; said: boolean }

const HOUR = 3_600_000;

/** What an hour will be, by the person's word about its day first; undefined: nothing is known of it. Frost, wind and heat leave the rain to the forecast. */
export function skyAt(weather: Weather, zone: string): (at: number) => 'wet' | 'dry' | undefined {
  const said = new Map((weather.said ?? []).map(s => [s.date, s.sky]));
  const lookup = forecastAt(weather.forecast ?? []);
  return at => {
    const sky = said.get(DateTime.fromMillis(at, { zone }).toISODate()!);
    if (sky === 'rain' || sky === 'snow') return 'wet';
    if (sky === 'dry') return 'dry';
    const block = lookup(at);
    return block && (isWet(block) ? 'wet' : 'dry');
  };
}

/** The wet spells that touch a stretch of time, cut to it. */
export function wetSpells(weather: Weather, from: number, to: number, zone: string): Spell[] {
  const sky = skyAt(weather, zone);
  const saidOn = new Map((weather.said ?? []).map(s => [s.date, s.sky]));
  const spells: Spell[] = [];
  for (let at = from; at < to; at = Math.floor(at / HOUR) * HOUR + HOUR) {
    if (sky(at) !== 'wet') continue;
    const end = Math.min(to, Math.floor(at / HOUR) * HOUR + HOUR);
    const last = spells.at(-1);
    if (last?.to === at) last.to = end;
    else spells.push({ from: at, to: end, said: saidOn.has(DateTime.fromMillis(at, { zone }).toISODate()!) });
  }
  return spells;
}
