import type { DueAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day } from './words.ts';

const when = (w: string, { at }: Saying): string => (/^\d{4}-\d\d-\d\d$/.test(w) ? day(w, at) : w);

export function sayDue(a: DueAnswer, saying: Saying): Spoken {
  if (!a.items.length) return { say: 'Nothing is due to be looked at again.' };
  const lines = a.items.map(i => `${capital(i.do)}${i.part ? ` the ${i.part}` : ''}: ${when(i.when, saying)}${i.overdue ? ', due now' : ''}`);
  const now = a.items.filter(i => i.overdue).length;
  return { say: now ? `${now} due now${a.items.length > now ? `, ${a.items.length - now} to come` : ''}:` : 'None due yet; to come:', list: lines };
}
