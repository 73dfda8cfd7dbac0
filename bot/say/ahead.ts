import type { AheadAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, listed } from './words.ts';

/** The days with their work, as a list; one day in a line. */
export function sayAhead({ from, to, days, stuck, why }: AheadAnswer, { at }: Saying): Spoken {
  if (why) return { say: why };
  const none = stuck.length ? ` No day for: ${listed(stuck.slice(0, 3))}${stuck.length > 3 ? ` and ${stuck.length - 3} more` : ''}.` : '';
  const asked = from === undefined ? 'the days ahead' : to === undefined ? `from ${day(from, at)} on` : from === to ? day(from, at) : `${day(from, at)} to ${day(to, at)}`;
  if (!days.length) return { say: `Nothing is planned for ${asked}.${none}` };
  const line = (d: AheadAnswer['days'][number]): string => `${capital(day(d.day, at))}: ${d.works.join(', ')}`;
  return days.length === 1 ? { say: `${line(days[0]!)}.${none}` } : { say: `As things stand, with middling luck:${none}`, list: days.map(line) };
}
