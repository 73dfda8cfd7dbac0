import type { DueAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, dayOrWords } from './words.ts';

/** So many of the usual looks are named at once. */
const FEW = 3;

/** Looks that are due or to come; under them a few that the trade takes after such parts went on (`domain/lore/rechecks.ts` says whence). */
export function sayDue(a: DueAnswer, { at }: Saying): Spoken {
  const usual = a.usual.slice(0, FEW).map(u => `Usual, not asked for: ${u.do} the ${u.part} after ${u.after} ${u.unit}${u.unit === 'hours' ? ' running' : ''} (${u.why})`);
  const closing = usual.length ? [...usual, `Say "recheck the ${a.usual[0]!.part} after ${a.usual[0]!.after} ${a.usual[0]!.unit}" to be reminded; the machine's manual comes first.`] : [];
  if (!a.items.length) return closing.length ? { say: 'Nothing is due to be looked at again.', list: closing } : { say: 'Nothing is due to be looked at again.' };
  const lines = a.items.map(i => `${capital(i.do)}${i.part ? ` the ${i.part}` : ''}: ${dayOrWords(i.when, at)}${i.overdue ? ', due now' : ''}`);
  const now = a.items.filter(i => i.overdue).length;
  return { say: now ? `${now} due now${a.items.length > now ? `, ${a.items.length - now} to come` : ''}:` : 'None due yet; to come:', list: [...lines, ...closing] };
}
