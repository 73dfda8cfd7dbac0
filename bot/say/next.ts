import type { NextAnswer, NextJob } from '../../domain/model/answer.ts';
import type { Spoken } from './spoken.ts';
import { capital } from './words.ts';

/** "Paint the hood", "put the hood on for good". */
export function actWords({ do: verb, part }: Pick<NextJob, 'do' | 'part'>): string {
  if (!part || verb.toLowerCase().includes(part.toLowerCase())) return verb;
  const apart = /^(put|take) (on.*|off)$/.exec(verb);
  return apart ? `${apart[1]} the ${part} ${apart[2]}` : `${verb} the ${part}`;
}

/** The same with its reasons. */
export const jobWords = (j: NextJob): string => `${actWords(j)}${j.why.length ? ` (${j.why.join(', ')})` : ''}`;

export function sayNext(a: NextAnswer): Spoken {
  if (!a.jobs.length) {
    const where = a.place ? ` ${a.place}` : '';
    const time = a.minutes ? ` in ${a.minutes} minutes` : '';
    return { say: `I know of nothing ready to do${where}${time}. Say what must be done and I'll keep it.` };
  }
  const lines = a.jobs.slice(0, 3).map(j => capital(jobWords(j)));
  return lines.length === 1 ? { say: `${lines[0]}.` } : { say: 'Next:', list: lines };
}
