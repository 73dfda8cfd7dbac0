import { DateTime } from 'luxon';
import type { Facts } from '../reminders/occasion.ts';
import { causeLine } from './blocked.ts';
import { actWords, jobWords } from './next.ts';
import type { Saying } from './spoken.ts';
import { capital, day, dayOrWords, listed, stop, the } from './words.ts';

/** What a word unasked needs to know to be said: the moment, and the zone that its hours are told in. */
export interface UnaskedSaying extends Saying { zone: string }

/** Once in a while a person has to be told how to answer. */
export const HOW_TO_ANSWER = 'Say "later", "more" or "stop telling me that"; "no morning word" and "no reminders" end these.';
const LIFT = 'Lifting: rated gear, blocked and chocked, nobody under a load; follow the machine\'s manual.';
const COAT = 'Spray paint: breathing gear that suits it, air moving, no flame; the sheet decides.';

const clock = (at: number, { zone }: UnaskedSaying): string => DateTime.fromMillis(at, { zone }).toFormat('HH:mm');
/** "15:00", "tomorrow 09:00", "Sat 9 May 09:00". */
export function moment(at: number, saying: UnaskedSaying): string {
  const local = DateTime.fromMillis(at, { zone: saying.zone }).toISODate()!;
  const said = day(local, saying.at);
  return said === 'today' ? clock(at, saying) : `${said} ${clock(at, saying)}`;
}

/** An occasion in one line. */
export function occasionLine(o: Facts, saying: UnaskedSaying): string {
  const { at } = saying;
  switch (o.topic) {
    case 'morning': {
      const jobs = o.jobs.map((j, i) => (i === 0 ? jobWords(j) : actWords(j))).join('; ');
      if (o.sky?.is === 'wet') return stop(`Rain from ${moment(o.sky.from, saying)} to ${moment(o.sky.to, saying)}, in your hours. Indoors: ${jobs}`);
      return stop(o.sky ? `Dry today, rain from ${moment(o.sky.rain, saying)}. Outdoors first: ${jobs}` : `Next: ${jobs}`);
    }
    case 'rain': {
      const rain = `Rain from ${moment(o.from, saying)}${o.said ? ', you said' : ''}`;
      if (o.coat) return `${rain}: the ${o.coat} on ${the(o.part)} is fresh${o.outside ? ` and it is ${placed(o.outside)}` : '; get it under a roof if it is outside'}.`;
      return `${rain}: ${the(o.part)} is ${placed(o.outside!)}.`;
    }
    case 'recheck': return `Due: ${[o.do, o.part && the(o.part)].filter(Boolean).join(' ')}, ${dayOrWords(o.when, at)}.`;
    case 'late': return `${capital(o.item)}${o.source ? ` from ${o.source}` : ''} was due ${day(o.expected, at)} and isn't here${o.for ? `; it is for the ${o.for}` : ''}.`;
    case 'cured': return o.usual
      ? `The ${o.usual.product} on ${the(o.part)} has had its usual ${o.usual.hours} h; its sheet decides.${o.then ? ` Then: ${o.then} it.` : ''}`
      : `${capital(the(o.part))} was left alone as long as you said.${o.then ? ` Then: ${o.then} it.` : ''}`;
    case 'back': return `${capital(the(o.part))} ${o.until < at.slice(0, 10) ? 'was' : 'is'} due back${o.where ? ` from ${o.where}` : ''} ${day(o.until, at)}.`;
    case 'help': {
      const open = o.open.length ? ` Still in the way: ${listed(o.open.slice(0, 2).map(c => causeLine(c, saying)))}.` : '';
      const also = o.jobs.length ? ` ${o.for ? 'Also for two' : 'For two'}: ${o.jobs.join('; ')}.` : '';
      return `Help ${day(o.day, at)}${o.for ? `: ${o.for}` : ''}.${open}${also}`;
    }
    case 'temporary': return `${capital(the(o.part))} has been ${o.state === 'tried' ? 'only tried on' : 'only on for now'} since ${day(o.since, at)}${o.with ? ` (${o.with})` : ''}.`;
  }
}
const placed = (where: string): string => (/^(?:in|on|at|by|under|outside|out|behind|beside|next)\b/.test(where.toLowerCase()) ? where : `at ${where}`);

/** What "more" or "why" adds to a line. */
export function occasionWhy(o: Facts, saying: UnaskedSaying): string[] {
  switch (o.topic) {
    case 'morning': return [...o.jobs.slice(1).map(j => capital(jobWords(j))), ...(o.source ? [stop(o.source)] : [])];
    case 'rain': return [o.said ? 'You said so of the weather.' : stop(`Ask "what\'s the weather doing" for the hours. ${o.source ?? 'By the forecast'}`)];
    case 'recheck': return [`You asked to be told of ${o.part ? the(o.part) : 'it'} ${/^\d{4}-/.test(o.when) ? `by ${day(o.when, saying.at)}` : `after ${o.when}`}.`];
    case 'late': return [`Its day was ${day(o.expected, saying.at)}; say it is here, or the new day.`];
    case 'cured': return o.usual ? [`${o.usual.hours} h is usual for ${o.usual.product} (common practice, no source); cold and damp make it longer.`] : [];
    case 'back': return o.do ? [`${capital(the(o.part))} is out to ${o.do}.`] : [];
    case 'help': return o.open.flatMap(c => (c.act ? [`${capital(causeLine(c, saying))}: ${c.act}`] : [capital(causeLine(c, saying))]));
    case 'temporary': return ['Say it is on for good when it is.'];
  }
}

/** The usual caution where the work of an occasion can hurt. */
export function occasionCaution(o: Facts): string | undefined {
  if (o.topic === 'help' && o.lifts) return LIFT;
  return o.topic === 'morning' && o.jobs.some(j => /\b(?:paint|spray|prime|varnish)\b/.test(j.do)) ? COAT : undefined;
}
