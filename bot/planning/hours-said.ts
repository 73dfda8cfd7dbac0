import { week } from '../../domain/answers/basis.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import { readAway } from '../../nlp/settings/away.ts';
import { readHours } from '../../nlp/settings/hours.ts';
import { day } from '../say/words.ts';
import { compose } from '../say/reply.ts';
import type { Turn, TurnOut } from '../turn/types.ts';
import { withHours } from './hours-kept.ts';
import { hoursSaid as keptHours, keepHours } from './settings.ts';

/** "Two hours most evenings, Saturdays till noon": kept, and said back as it was understood. Undefined: not about the person's hours. */
export function hoursSaid(turn: Turn): TurnOut | undefined {
  const { incoming: { at, text }, deps: { log }, note } = turn;
  const read = readHours(text.trim().replace(/[.!]+$/, ''));
  if (!read) return undefined;
  const hours = withHours(keptHours(log), read);
  keepHours(log, hours);
  return { reply: compose({ note: note.id, at, lines: [`I'll plan with ${week(hours.weekly)}. Say your hours again to change them.`] }) };
}

/** "I'm away next week": those days have no hours. Undefined: no days away. */
export function awaySaid(turn: Turn): TurnOut | undefined {
  const { incoming: { at, text }, deps: { log }, note } = turn;
  const read = readAway(text, at);
  if (!read) return undefined;
  const now = keptHours(log) ?? { weekly: [], exceptions: [] };
  const away = new Set<string>();
  for (let d = read.from; d <= read.to && away.size < 366; d = addDays(d, 1)) away.add(d);
  // Days that are past are nobody's business any more.
  const rest = now.exceptions.filter(e => e.date >= dayOf(at) && !away.has(e.date));
  keepHours(log, { weekly: now.weekly, exceptions: [...rest, ...[...away].map(date => ({ date, stretches: [] }))].sort((a, b) => (a.date < b.date ? -1 : 1)) });
  const days = read.from === read.to ? day(read.from, at) : `${day(read.from, at)} to ${day(read.to, at)}`;
  return { reply: compose({ note: note.id, at, lines: [`I'll plan nothing for ${days}.`] }) };
}
