import type { NextAnswer } from '../../domain/model/answer.ts';
import type { Spoken } from './spoken.ts';
import { capital } from './words.ts';

export function sayNext(a: NextAnswer): Spoken {
  if (!a.jobs.length) {
    const where = a.place ? ` ${a.place}` : '';
    const time = a.minutes ? ` in ${a.minutes} minutes` : '';
    return { say: `I know of nothing ready to do${where}${time}. Say what must be done and I'll keep it.` };
  }
  const lines = a.jobs.slice(0, 3).map(j => {
    const what = j.part && !j.do.toLowerCase().includes(j.part.toLowerCase()) ? `${j.do} the ${j.part}` : j.do;
    return `${capital(what)}${j.why.length ? ` (${j.why.join(', ')})` : ''}`;
  });
  return lines.length === 1 ? { say: `${lines[0]}.` } : { say: 'Next:', list: lines };
}
