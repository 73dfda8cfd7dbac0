import type { Clause } from '../../clauses/clause.ts';
import type { Telling } from '../telling.ts';

/** Index of the last clause after this one, without a gap, that `goesOn` says belongs to it; those clauses are marked as read. */
export function spanForward(t: Telling, goesOn: (c: Clause) => boolean, most = 3): number {
  let end = t.at;
  while (end + 1 < t.clauses.length && end - t.at < most && goesOn(t.clauses[end + 1]!)) { end++; (t.clauses[end] as Clause & { spoken?: boolean }).spoken = true; }
  return end;
}
export const isSpoken = (c: Clause): boolean => (c as Clause & { spoken?: boolean }).spoken === true;

export const tailText = (text: string): boolean => /^(and |plus )?(free |no )?(shipping|postage|post|carriage|delivery)\b/.test(text);
