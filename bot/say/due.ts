import type { DueAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, dayOrWords } from './words.ts';

export function sayDue(a: DueAnswer, { at }: Saying): Spoken {
  if (!a.items.length) return { say: 'Nothing is due to be looked at again.' };
  const lines = a.items.map(i => `${capital(i.do)}${i.part ? ` the ${i.part}` : ''}: ${dayOrWords(i.when, at)}${i.overdue ? ', due now' : ''}`);
  const now = a.items.filter(i => i.overdue).length;
  return { say: now ? `${now} due now${a.items.length > now ? `, ${a.items.length - now} to come` : ''}:` : 'None due yet; to come:', list: lines };
}
