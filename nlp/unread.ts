import type { Clause } from './clauses/clause.ts';
import { opening } from './tell.ts';
import type { Sheet } from './types.ts';

/** The stretches of the note that no entry and no question covers, word for word; marks, greetings and dropped words are not stretches. */
export function unreadOf(sheet: Sheet, covered: readonly Clause[], asks: readonly { from: number; to: number; used: [number, number][] }[], cut?: [number, number]): string[] {
  const { tokens, tags, text } = sheet;
  const read = new Set<number>();
  const mark = (from: number, to: number): void => { for (let k = from; k < to; k++) read.add(k); };
  for (const c of covered) mark(opening(sheet, c), c.to);
  for (const a of asks) { mark(a.from, a.to); for (const [f, to] of a.used) mark(f, to); }
  if (cut) mark(cut[0], cut[1]);
  const out: string[] = [];
  let from = -1;
  const close = (to: number): void => {
    if (from < 0) return;
    const says = tokens.slice(from, to).some((t, k) => /[\p{L}\p{N}]/u.test(t.low) && !['intj', 'cc'].includes(tags[from + k]!));
    if (says) out.push(text.slice(tokens[from]!.start, tokens[to - 1]!.end).replace(/^[\s,;:.!?]+|[\s,;:]+$/g, ''));
    from = -1;
  };
  for (let k = 0; k < tokens.length; k++) {
    if (read.has(k)) close(k);
    else { if (from < 0) from = k; if (/^[.?!]$/.test(tokens[k]!.low)) close(k + 1); }
  }
  close(tokens.length);
  return out.filter(s => /[\p{L}\p{N}]/u.test(s));
}
