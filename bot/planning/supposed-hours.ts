import type { Supposed } from '../../domain/answers/what-if.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import type { ReadContext } from '../../domain/model/reading.ts';
import { readAway } from '../../nlp/settings/away.ts';
import { clockAt } from '../../nlp/settings/clock-time.ts';
import { readHours } from '../../nlp/settings/hours.ts';
import { openSheet } from '../../nlp/sheet.ts';
import { withHours } from './hours-kept.ts';
import type { SaidHours } from './settings.ts';

type Week = Pick<SaidHours, 'weekly' | 'exceptions'>;
type Hours = Extract<Supposed, { kind: 'hours' }>;

const WORK_HOURS = /^(?:i|we)\s*(?:'d|could|can|would|were to|was to)?\s*(?:work(?:ed|ing)?|had|have|got|get|put in|did|do|manage[d]?|spend|spent)\b\s*(.+)$/i;
const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const DAY_WORDS = /\b(?:(weekends?)|(weekdays?)|(mon|tue|wed|thu|fri|sat|sun)\w*)\b/gi;
const weekdaysIn = (text: string): number[] => [...new Set([...text.matchAll(DAY_WORDS)].flatMap(m => (m[1] ? [6, 7] : m[2] ? [1, 2, 3, 4, 5] : [WEEKDAYS.indexOf(m[3]!.toLowerCase()) + 1])))];
const SPANS: Record<string, number> = { a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, six: 6, 'a couple of': 2 };

/** Days more, fewer or none: "I work Sundays too", "I only work weekends", "I take two weeks off in June". */
export function daysOf(rest: string, now: Week, ctx: ReadContext): Hours | undefined {
  const off = /^(?:i|we)(?:'d|'ll| could| can)? (?:take|took|have|had|get|got|need|needed) (?:(?:(an?|one|two|three|four|six|a couple of|\d+) (weeks?|days?|months?))|(.+?)) off\b(.*)$/i.exec(rest);
  if (off) {
    const days = off[2] ? (SPANS[off[1]!.toLowerCase()] ?? Number(off[1])) * (/^w/i.test(off[2]) ? 7 : /^m/i.test(off[2]) ? 30 : 1) : undefined;
    const when = openSheet((off[3] ?? off[4] ?? '').trim(), { at: ctx.at }).found.find(f => f.dim === 'when');
    const named = when?.dim === 'when' ? when.value : undefined;
    if (days === undefined && !named) return undefined;
    const today = dayOf(ctx.at);
    const from = [named?.from ?? named?.to ?? addDays(today, 1), today].sort().at(-1)!;
    return { kind: 'hours', hours: without(now, from, days === undefined ? named!.to ?? from : addDays(from, days - 1)) };
  }
  const away = readAway(rest.replace(/^(i|we) (?:am|were|was|go|went) (?:away|gone|on holiday)/i, "i'm away"), ctx.at);
  if (away) return { kind: 'hours', hours: without(now, away.from, away.to) };
  const m = /^(?:i|we)(?:'d|'ll| could| can)? ?(only|just)? ?(?:(?:do|did|have|had) )?(work|worked|don't work|didn't work|skip|skipped)(?: in the shop)? (?:on )?(only |just |the )?(.+?)( too| as well| also| instead)?$/i.exec(rest);
  const days = m ? weekdaysIn(m[4]!) : [];
  if (!m || !days.length || m[4]!.replace(DAY_WORDS, '').replace(/\b(?:and|or|on|the|every|all|evenings?|mornings?|days?|off)\b|[,& ]/gi, '') !== '') return undefined;
  const usual = now.weekly.toSorted((a, b) => minutesOf(b) - minutesOf(a))[0] ?? { from: '09:00', to: '13:00' };
  const some = (keep: (d: number) => boolean) => now.weekly.filter(w => keep(w.weekday));
  const added = days.filter(d => !now.weekly.some(w => w.weekday === d)).map(weekday => ({ weekday, from: usual.from, to: usual.to }));
  if (/^(?:don't|didn't|skip)/i.test(m[2]!)) return { kind: 'hours', hours: { weekly: some(d => !days.includes(d)), exceptions: now.exceptions } };
  const weekly = m[1] || /only|just/i.test(m[3] ?? '') || / instead/.test(m[5] ?? '') ? [...some(d => days.includes(d)), ...added] : [...now.weekly, ...added];
  return { kind: 'hours', hours: { weekly: weekly.sort((a, b) => a.weekday - b.weekday), exceptions: now.exceptions } };
}

const minutes = (t: string): number => Number(t.slice(0, 2)) * 60 + Number(t.slice(3));
const minutesOf = ({ from, to }: { from: string; to: string }): number => minutes(to) - minutes(from);

/** The same week with no hours from one day to another, both included. */
function without({ weekly, exceptions }: Week, from: string, to: string): Week {
  const away: SaidHours['exceptions'] = [];
  for (let d = from; d <= to && away.length < 366; d = addDays(d, 1)) away.push({ date: d, stretches: [] });
  return { weekly, exceptions: [...exceptions.filter(e => e.date < from || e.date > to), ...away] };
}

/** Other hours, or longer ones: "another hour every evening". */
export function hoursOf(rest: string, now: Week): Hours | undefined {
  const m = WORK_HOURS.exec(rest);
  const more = m && /\b(?:another|an extra|one more|extra|more)\b/.test(m[1]!) ? readHours(m[1]!.replace(/\banother\b|\ban extra\b|\bone more\b/, 'an').replace(/\b(?:extra|more)\b/, '').replace(/\s+/g, ' ')) : undefined;
  if (more) return { kind: 'hours', hours: longer(now, more.weekly) };
  const read = m ? readHours(m[1]!.replace(/\binstead\b/, '').trim()) : readHours(rest);
  return read && { kind: 'hours', hours: withHours(now, read) };
}

/** The same week with so much more on those of its days; a day without hours gets them. */
function longer(now: Week, more: SaidHours['weekly']): Week {
  const added = new Map(more.map(w => [w.weekday, w]));
  const stretched = now.weekly.map(w => { const a = added.get(w.weekday); return a ? { ...w, to: clockAt(Math.min(1440, minutes(w.to) + minutes(a.to) - minutes(a.from))) } : w; });
  return { weekly: [...stretched, ...more.filter(w => !now.weekly.some(x => x.weekday === w.weekday))], exceptions: now.exceptions };
}
