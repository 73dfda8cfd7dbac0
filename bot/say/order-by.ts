import type { OrderByAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day } from './words.ts';

/** The soonest are said; the rest can wait longer than any of these. */
const MOST = 6;

/** The last days to order, soonest first. */
export function sayOrderBy({ items, why }: OrderByAnswer, { at }: Saying): Spoken {
  const [first] = items;
  if (!first) return { say: why ?? 'Nothing is left to order.' };
  const line = ({ item, by, late }: OrderByAnswer['items'][number]): string => `${capital(item)}: ${late ? 'now; it moves the end even so' : day(by, at)}`;
  if (items.length > 1) {
    const rest = items.slice(MOST);
    return { say: ['To keep the end where it is, order by:', ...items.slice(0, MOST).map(i => `• ${line(i)}`), ...(rest.length ? [`… and ${rest.length} more, later.`] : [])].join('\n') };
  }
  return { say: first.late ? `Order the ${first.item} now: it moves the end even so.` : `Order the ${first.item} by ${day(first.by, at)}; later than that it moves the end.` };
}
