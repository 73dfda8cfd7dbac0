import { week } from '../../domain/answers/basis.ts';
import { readHours } from '../../nlp/settings/hours.ts';
import { compose } from '../say/reply.ts';
import type { Turn, TurnOut } from '../turn.ts';
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
