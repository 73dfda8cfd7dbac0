import type { FinishAnswer, ForecastAnswer, ForecastWindow, PictureAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, plural, stop } from './words.ts';

const hour = (iso: string): string => (iso.length > 10 ? ` ${iso.slice(11, 16)}` : '');

function windowLine(w: ForecastWindow, { at }: Saying): string {
  const to = w.to.slice(0, 10) === w.from.slice(0, 10) ? (w.to.length > 10 ? `–${w.to.slice(11, 16)}` : '') : ` to ${day(w.to, at)}${hour(w.to)}`;
  return `${day(w.from, at)}${hour(w.from)}${to}: ${w.fit ? 'fit' : 'not fit'}${w.why.length ? `, ${w.why.join(', ')}` : ''}`;
}

/** Says what the words or the service allow; surface temperature is for the person to measure, so it is asked for whenever work is planned. */
export function sayForecast(a: ForecastAnswer, saying: Saying): Spoken {
  const what = a.for ? ` to ${a.for}` : '';
  if (!a.windows.length) return { say: 'I know nothing of the weather for then. Say what you expect, or set up a forecast.' };
  const basis = a.basis === 'said' ? 'By your own words.' : `${stop(a.basis)}${a.age ? ` ${stop(capital(a.age))}` : ''}`;
  const good = a.windows.find(w => w.fit);
  const spray = a.for && /paint|spray|prime|seal|varnish|coat/.test(a.for) ? ' Measure the surface first: it must be 3 °C over the dew point.' : '';
  const head = good ? `Forecast allows it${what}: ${windowLine(good, saying)}.` : `Not fit${what}: ${windowLine(a.windows[0]!, saying)}.`;
  return { say: `${head} ${basis}${spray}`, list: a.windows.length > 1 ? a.windows.map(w => windowLine(w, saying)) : undefined };
}

export function sayFinish(a: FinishAnswer, { at }: Saying): Spoken {
  const what = a.part ? capital(a.part) : 'All of it';
  if (!a.p50 || !a.p80) return { say: `I can't tell yet when ${a.part ? `the ${a.part}` : 'it'} will be done. ${a.why ?? ''}`.trim() };
  const driver = a.driver ? ` ${capital(a.driver)} decides it.` : '';
  const chance = a.chance === null ? '' : ` ${Math.round(a.chance * 100)} % chance by the day you asked.`;
  return { say: `${what}: as likely as not by ${day(a.p50, at)}, four in five by ${day(a.p80, at)}.${driver}${chance}`, longer: a.why };
}

export function sayPicture(a: PictureAnswer): Spoken {
  return { say: a.files.length ? `${plural(a.files.length, 'picture')} of the ${a.part}.` : `No pictures of the ${a.part} kept.` };
}
