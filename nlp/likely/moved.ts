import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import type { Weighed } from './net/weighed.ts';

/** How strongly the net must take the whole note for a correction (log odds). */
const CORRECTS = 1;
/** The field of an entry that holds the day that is awaited. */
const DAY: Partial<Record<Entry['kind'], string>> = { order: 'expected', out: 'until', wait: 'until', recheck: 'due', hands: 'when' };

/**
 * The day that a note sets anew for what the notes before set one for ("no link till the sixth, courier lost it"), where the net takes the note on the whole for a correction, its only day to
 * come is that one, and nothing else was read from it.
 */
export function moved(sheet: Sheet, clauses: readonly Clause[], prior: readonly Entry[], net: Weighed): Told | undefined {
  if ((net.told(0, sheet.text.length)?.get('amend') ?? -Infinity) <= CORRECTS) return undefined;
  const awaited = prior.findLast(e => DAY[e.kind] !== undefined);
  const days = sheet.found.flatMap(f => (f.dim === 'when' && !f.value.vague && f.value.from !== undefined && f.value.from > sheet.ctx.at.slice(0, 10) ? [{ day: f.value.from, at: f.from }] : []));
  const clause = clauses.find(c => days[0] && c.from <= days[0].at && days[0].at < c.to);
  if (!awaited || !clause || clause.asks || new Set(days.map(d => d.day)).size !== 1) return undefined;
  return { entry: { kind: 'amend', field: DAY[awaited.kind]!, value: days[0]!.day } as Entry, clause, rule: 'likely' };
}
