import { dims, type Clause } from '../../clauses/clause.ts';
import { DateTime } from 'luxon';
import type { Telling } from '../telling.ts';

/** The day a clause names, YYYY-MM-DD. With `spans`, "three weeks" counts from the note ("he says a fortnight"). */
export function dayIn(t: Telling, c: Clause, spans = false): string | undefined {
  const day = whenIn(t, c);
  if (day) return day;
  if (!spans) return undefined;
  const s = dims(c.items, 'span').find(f => /^(days|weeks|months)$/.test(f.value.unit) && !(c.neg && f.value.amount === 1)); // "he would not commit himself to a day"
  return s ? ahead(t, s.value.amount, s.value.unit as 'days' | 'weeks' | 'months') : undefined;
}

/** The last day named in a clause that is not before the note. */
export function whenIn(t: Telling, c: Clause): string | undefined {
  const today = t.sheet.ctx.at.slice(0, 10);
  const found = t.sheet.found.filter(f => f.dim === 'when' && f.from >= c.from && f.to <= c.to).map(f => (f.dim === 'when' && !f.value.vague ? f.value.to ?? f.value.from : undefined)).filter((d): d is string => d !== undefined);
  return found.findLast(d => d > today) ?? undefined;
}

export function ahead(t: Telling, amount: number, unit: 'days' | 'weeks' | 'months'): string | undefined {
  const at = DateTime.fromISO(t.sheet.ctx.at, { setZone: true });
  return at.isValid ? at.plus({ [unit]: amount }).toISODate() ?? undefined : undefined;
}
