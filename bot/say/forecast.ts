import { DateTime } from 'luxon';
import type { ForecastAnswer, ForecastWindow, PictureAnswer } from '../../domain/model/answer.ts';
import { margin, rise, temperature, type WeatherUnits } from '../../domain/answers/weather-units.ts';
import { USUAL_COAT } from '../../domain/plan/windows.ts';
import { isVerb } from '../../domain/log/verbs.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, plural, stop, the } from './words.ts';

const clock = (iso: string): string => (iso.length > 10 ? iso.slice(11, 16) : '');

/** "tomorrow 10:00–15:00", "Sat 9 May 20:00 to Sun 10 May 06:00", "Sat 9 May to Mon 11 May". Midnight at the end is 24:00 of the day before. */
function span({ from, to }: ForecastWindow, { at }: Saying): string {
  const start = `${day(from, at)} ${clock(from)}`.trim();
  const [endDay, end] = clock(to) === '00:00' ? [dayBefore(to), '24:00'] : [to.slice(0, 10), clock(to)];
  if (endDay === from.slice(0, 10)) return end ? `${start}–${end}` : start;
  return `${start} to ${day(endDay, at)} ${end}`.trim();
}
const dayBefore = (iso: string): string => DateTime.fromISO(iso.slice(0, 10), { zone: 'utc' }).minus({ days: 1 }).toISODate()!;

const line = (w: ForecastWindow, saying: Saying, verdict: string): string => `${span(w, saying)}: ${[verdict, ...w.why].filter(Boolean).join(', ')}`;

/** With more windows than this only the fit ones are listed: the others are what lies between them. */
const ALL_LISTED = 6;

/**
 * Says what the person's words or the service allow, and whose data that is. It is only the forecast that allows: before a coat the surface
 * is to be measured, and the usual caution stands beside it.
 */
export function sayForecast(a: ForecastAnswer, saying: Saying): Spoken {
  if (!a.windows.length && a.measured) return { say: [surface(a), ...(a.caution ? [a.caution] : [])].map(stop).join('\n') };
  if (!a.windows.length && a.basis !== 'said') return { say: 'The forecast does not reach that far, and you said nothing of it.' };
  if (!a.windows.length) return { say: 'I know nothing of the weather for then. Say what you expect, or set up a forecast ("we\'re at 52.35, -7.70" and "fetch the forecast").' };
  const head = a.windows.find(w => w.fit && a.for) ?? a.windows[0]!;
  const others = a.windows.filter(w => w !== head);
  const listed = others.length >= ALL_LISTED && head.fit ? others.filter(w => w.fit) : others;
  const tooCold = a.coat && a.measured?.fit === false;
  const verdict = (w: ForecastWindow): string => (a.for ? (w.fit ? 'fit' : 'not fit') : '');
  return {
    // A surface that is too cold now comes before what the sky allows.
    say: [...(tooCold ? [[surface(a)]] : []), [headline(a, head, saying), basis(a)], [...(a.coat && !tooCold ? [surface(a)] : []), ...(a.caution ? [a.caution] : [])]].map(l => l.map(stop).join(' ')).filter(Boolean).join('\n'),
    list: listed.length ? listed.map(w => line(w, saying, verdict(w))) : undefined,
  };
}

function headline(a: ForecastAnswer, head: ForecastWindow, saying: Saying): string {
  const said = line(head, saying, '');
  if (!a.for) return capital(said);
  return head.fit ? `${a.basis === 'said' ? 'Your words let' : 'The forecast lets'} you ${work(a.for)}: ${said}` : `Not fit to ${work(a.for)}: ${said}`;
}

/** "paint hood" as it is said: "paint the hood". */
const work = (phrase: string): string => phrase.replace(/^(\S+) (?=\S)(?!(?:the|a|an|my|his|her|its|it|them|outside|outdoors|off|on|in|up|down|out)\b)/, (whole, verb: string) => (isVerb(verb) ? `${verb} the ` : whole));

const basis = ({ basis: from, age }: ForecastAnswer): string => {
  if (from === 'said') return 'By your own words';
  const service = from.replace(/^said; /, '');
  return `${service === from ? service : `By your own words, and ${service}`}${age ? `, ${age}` : ''}`;
};

/** What was measured today, else the asking for it. */
function surface({ measured: m, ...a }: ForecastAnswer): string {
  const units: WeatherUnits = a.units ?? 'metric';
  if (!m) return `Measure the surface before you start and say it: it must be ${margin(units)} over the dew point`;
  const said = `Surface measured ${temperature(m.surfaceC, units)} at ${clock(m.at)}`;
  if (m.margin === undefined) return `${said}; say the dew point too, it must be ${margin(units)} under that`;
  return `${said}, ${rise(m.margin, units)} over the dew point${m.fit ? '; measure again before you spray' : m.margin < USUAL_COAT.dewMargin! ? ': not enough, wait or warm it' : `, but most paints want ${temperature(USUAL_COAT.minTempC!, units)}: wait or warm it`}`;
}

export function sayPicture(a: PictureAnswer): Spoken {
  return { say: a.files.length ? `${plural(a.files.length, 'picture')} of ${the(a.part)}.` : `No pictures of ${the(a.part)} kept.` };
}
