import type { ForecastAnswer, ForecastWindow } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { addDays, dayOf } from '../log/days.ts';
import { readPhrase } from '../log/phrase.ts';
import { emptyMachine, type Shop } from '../log/shop.ts';
import type { More, Now } from './answer.ts';
import { hereOf } from './find.ts';
import { some } from './supply.ts';
import { saidOf, skyFits } from './weather.ts';

/** How far ahead an open question looks, and the longest stretch one is answered for, in days. */
const WEEK = 7;
const LONGEST = 31;

/** Whether the weather is fit for a work, from the person's own words; a day that nothing was said of is left out. */
export function forecast(shop: Shop, ask: AskOf<'forecast'>, now: Now, more: More): ForecastAnswer {
  const from = ask.from ?? dayOf(now.at);
  const to = ask.to ?? (ask.from ?? addDays(from, WEEK - 1));
  const verb = ask.for === undefined ? undefined : readPhrase(hereOf(shop, more.machine) ?? emptyMachine('', ''), ask.for).verb;
  const windows: ForecastWindow[] = [];
  for (let day = from, n = 0; day <= to && n < LONGEST; day = addDays(day, 1), n++) {
    const said = saidOf(shop, day);
    if (said) add(windows, day, skyFits(said.sky, verb), said.sky);
  }
  return { kind: 'forecast', ...some({ for: ask.for }), windows, basis: 'said' };
}

/** Days on end with the same sky are one window. */
function add(windows: ForecastWindow[], day: string, fit: boolean, sky: string): void {
  const last = windows.at(-1);
  if (last && last.fit === fit && last.why[0] === sky && addDays(last.to, 1) === day) last.to = day;
  else windows.push({ from: day, to: day, fit, why: [sky] });
}
