import type { HoursRead } from '../../nlp/settings/hours.ts';
import type { SaidHours } from './settings.ts';

/** The week after these words: a new one, or the days said put into the one there is. Days away stay. */
export function withHours(now: SaidHours | undefined, { weekly, never, adds }: HoursRead): SaidHours {
  const said = new Set([...weekly.map(w => w.weekday), ...never]);
  const rest = adds ? (now?.weekly ?? []).filter(w => !said.has(w.weekday)) : [];
  return { weekly: [...rest, ...weekly].sort((a, b) => a.weekday - b.weekday || (a.from < b.from ? -1 : 1)), exceptions: now?.exceptions ?? [] };
}
