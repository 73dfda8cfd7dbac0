import type { ProvisionalAnswer } from '../../domain/model/answer.ts';
import { STATE } from './entry.ts';
import type { Saying, Spoken } from './spoken.ts';
import { day, plural, the } from './words.ts';

export function sayProvisional(a: ProvisionalAnswer, { at }: Saying): Spoken {
  const on = a.part ? ` on ${the(a.part)}` : '';
  if (!a.items.length) return { say: `Nothing${on} is only on for now.` };
  return {
    say: `${plural(a.items.length, 'thing')}${on} not on for good:`,
    list: a.items.map(i => `${i.part}: ${i.state === 'tried' ? STATE.tried : 'temporary'}${i.with ? `, ${i.with}` : ''}, since ${day(i.since, at)}`),
  };
}
