import type { HistoryAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { day, plural, the } from './words.ts';

export function sayHistory(a: HistoryAnswer, { at }: Saying): Spoken {
  const of = a.part ? ` on ${the(a.part)}` : '';
  const span = a.from ? (a.to && a.to !== a.from ? ` from ${day(a.from, at)} to ${day(a.to, at)}` : a.to ? ` ${day(a.from, at)}` : ` since ${day(a.from, at)}`) : '';
  if (!a.items.length) return { say: `I have nothing${of}${span}.` };
  return { say: `${plural(a.items.length, 'note')}${of}${span}:`, list: a.items.map(i => `${day(i.at, at)}: ${i.text}`) };
}
