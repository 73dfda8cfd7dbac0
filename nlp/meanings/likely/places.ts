import type { Entry } from '../../../domain/model/entry.ts';
import { placeFrom, trim } from '../lib/fields.ts';
import { dayIn } from '../lib/day.ts';
import { spanForward } from '../lib/reach.ts';
import { dated } from '../out.ts';
import { target } from '../out/place.ts';
import { purpose } from '../out/purpose.ts';
import { tells } from '../out/tells.ts';
import type { Telling } from '../telling.ts';
import { about } from './about.ts';

/** Where a part was put: the last place that the clause names. */
export function put(t: Telling): Entry[] {
  const c = t.clause, place = placeFrom(t.sheet, c.items, Math.max(c.vi, 0));
  const where = place?.where.replace(/^(?:back|up|down|out|away|over)\s+(?=(?:in|on|into|onto|under|behind|at|by|beside|above|over)\b)/i, '').replace(/^(in|on)to\b/i, '$1');
  return where ? about(t, true).filter(p => !where.toLowerCase().endsWith(p.name)).map(p => ({ kind: 'stow', part: p.name, where }) as Entry) : [];
}

/** A part gone out for work, with what the clauses after say of it. */
export function gone(t: Telling): Entry[] {
  const parts = about(t, true);
  if (!parts.length) return [];
  const reach = t.clauses.slice(t.at, spanForward(t, n => tells(t, n), 3) + 1);
  const until = reach.map((r, n) => (n === 0 && dated(t, r) ? undefined : dayIn(t, r, true))).find(Boolean), act = reach.map(purpose).find(Boolean);
  return parts.map(p => trim({ kind: 'out', part: p.name, where: target(t, t.clause), until, do: act }) as Entry);
}
