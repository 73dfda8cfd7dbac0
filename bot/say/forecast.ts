import { DateTime } from 'luxon';
import type { ForecastAnswer, ForecastWindow, PictureAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, plural, stop } from './words.ts';

const clock = (iso: string): string => (iso.length > 10 ? iso.slice(11, 16) : '');

/** "tomorrow 10:00–15:00", "Sat 9 May 20:00 to Sun 10 May 06:00", "Sat 9 May to Mon 11 May". Midnight at the end is the end of the day before. */
function span({ from, to }: ForecastWindow, { at }: Saying): string {
  const start = `${day(from, at)} ${clock(from)}`.trim();
  const midnight = to.length > 10 && clock(to) === '00:00';
  if (midnight ? dayBefore(to) === from.slice(0, 10) : to.slice(0, 10) === from.slice(0, 10)) return to.length > 10 ? `${start}–${midnight ? '24:00' : clock(to)}` : start;
  return `${start} to ${day(to, at)} ${clock(to)}`.trim();
}
const dayBefore = (iso: string): string => DateTime.fromISO(iso.slice(0, 10), { zone: 'utc' }).minus({ days: 1 }).toISODate()!;

const line = (w: ForecastWindow, saying: Saying, verdict: string): string => `${span(w, saying)}: ${[verdict, ...w.why].filter(Boolean).join(', ')}`;

/** More windows than this and only the fit ones are listed: the others are what lies between them. */
const ALL_LISTED = 6;

/**
 * Says what the person's words or the service allow, and whose data that is. It is only the forecast that allows: before a coat the surface
 * is to be measured, and the usual caution stands beside it.
 */
export function sayForecast(a: ForecastAnswer, saying: Saying): Spoken {
  if (!a.windows.length) return { say: 'I know nothing of the weather for then. Say what you expect, or set up a forecast ("we\'re at 52.35, -7.70" and "fetch the forecast").' };
  const listed = a.windows.length > ALL_LISTED && a.windows.some(w => w.fit) ? a.windows.filter(w => w.fit) : a.windows;
  const verdict = (w: ForecastWindow): string => (a.for ? (w.fit ? 'fit' : 'not fit') : '');
  return {
    say: [headline(a, saying), basis(a), ...(a.coat ? [surface(a, saying)] : []), ...(a.caution ? [a.caution] : [])].map(stop).join(' '),
    list: a.windows.length > 1 ? listed.map(w => line(w, saying, verdict(w))) : undefined,
  };
}

function headline(a: ForecastAnswer, saying: Saying): string {
  const good = a.windows.find(w => w.fit);
  if (!a.for) return capital(line(a.windows[0]!, saying, ''));
  return good ? `The forecast lets you ${a.for}: ${line(good, saying, '')}` : `Not fit to ${a.for}: ${line(a.windows[0]!, saying, '')}`;
}

const basis = (a: ForecastAnswer): string => (a.basis === 'said' ? 'By your own words' : `${capital(a.basis)}${a.age ? `, ${a.age}` : ''}`);

/** What was measured today, else the asking for it. */
function surface({ measured: m }: ForecastAnswer, { at }: Saying): string {
  if (!m) return 'Measure the surface before you start and say it: it must be 3 °C over the dew point';
  const said = `Surface measured ${m.surfaceC} °C${m.at.slice(0, 10) === at.slice(0, 10) ? ` at ${clock(m.at)}` : ''}`;
  if (m.margin === undefined) return `${said}; say the dew point too, it must be 3 °C under that`;
  return `${said}, ${m.margin} °C over the dew point${m.fit ? '; measure again before you spray' : ': not enough, wait or warm it'}`;
}

export function sayPicture(a: PictureAnswer): Spoken {
  return { say: a.files.length ? `${plural(a.files.length, 'picture')} of the ${a.part}.` : `No pictures of the ${a.part} kept.` };
}
