import type { WhereAnswer } from '../../domain/model/answer.ts';
import { STATE } from './entry.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, the } from './words.ts';

export function sayWhere(a: WhereAnswer, { at }: Saying): Spoken {
  const since = a.since ? ` since ${day(a.since, at)}` : '';
  if (a.out) return { say: `${capital(a.part)}: out at ${a.out.where ?? 'a shop'}${a.out.until ? `, back ${day(a.out.until, at)}` : ''}.` };
  // A part on the machine is where it belongs.
  if (a.where === null && a.fit && a.fit !== 'off') return { say: `${capital(a.part)}: on the machine, ${STATE[a.fit]}.` };
  if (a.where === null) return { say: `You haven't said where ${the(a.part)} is.` };
  return { say: `${capital(a.part)}: ${a.where}${since}.` };
}
