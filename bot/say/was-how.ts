import type { WasHowAnswer, WasReading } from '../../domain/model/answer.ts';
import type { Spoken } from './spoken.ts';
import { capital, measure, the } from './words.ts';

const said = (r: WasReading): string => `${r.what} ${measure(r.value, r.unit)}`;

export function sayWasHow(a: WasHowAnswer): Spoken {
  const [was, other] = [a.readings.filter(r => r.asWas), a.readings.filter(r => !r.asWas)];
  if (!a.readings.length && !a.notes.length) return { say: `I have no record of how ${the(a.part)} was.` };
  const parts = [
    was.length ? `as it was, ${was.map(said).join(', ')}` : '',
    other.length ? `measured, ${other.map(said).join(', ')}` : '',
  ].filter(Boolean).join('; ');
  const [first, ...rest] = a.notes;
  if (!parts) return { say: `${capital(a.part)}, in your words: "${first}"`, list: rest.length ? rest : undefined };
  return { say: `${capital(a.part)}: ${parts}.`, list: a.notes.length ? a.notes.map(n => `"${n}"`) : undefined };
}
