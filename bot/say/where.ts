import type { WhereAnswer } from '../../domain/model/answer.ts';
import { STATE } from './entry.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, the } from './words.ts';

/** Where a part is that is away for work, and when it is to be back. */
export const outWords = ({ where, until }: { where?: string; until?: string }, { at }: Saying): string => `out at ${where ?? 'a shop'}${until ? `, back ${day(until, at)}` : ''}`;

export function sayWhere(a: WhereAnswer, saying: Saying): Spoken {
  const since = a.since ? ` since ${day(a.since, saying.at)}` : '';
  if (a.out) return { say: `${capital(a.part)}: ${outWords(a.out, saying)}.` };
  // A part on the machine is where it belongs.
  if (a.where === null && a.fit && a.fit !== 'off') return { say: `${capital(a.part)}: on the machine, ${STATE[a.fit]}.` };
  if (a.where === null) return { say: `You haven't said where ${the(a.part)} went.` };
  return { say: `${capital(a.part)}: ${a.where}${since}.` };
}
