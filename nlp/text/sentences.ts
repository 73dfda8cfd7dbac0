import type { Token } from '../types.ts';

/** A run of tokens [from, to); `to` is after its closing mark. `mark` is "?" where the note itself says it is a question. */
interface Stretch { from: number; to: number; mark?: string }

/**
 * The sentences of a note: cut after . ! ? ; … and at line breaks. A note without marks is one sentence; its clauses are found later.
 */
export function sentences(tokens: readonly Token[], text: string): Stretch[] {
  const out: Stretch[] = [];
  let from = 0;
  for (let i = 0; i < tokens.length; i++) {
    const low = tokens[i]!.low;
    const next = tokens[i + 1];
    const closes = /^([.?!;]|\.{2,}|…)$/.test(low);
    const breaks = next !== undefined && text.slice(tokens[i]!.end, next.start).includes('\n');
    if (!closes && !breaks) continue;
    if (closes && next && /^[.?!…]/.test(next.low)) continue;
    if (next && /^(\.{2,}|…)$/.test(low) && /^\p{Ll}/u.test(next.text)) continue; // the note trails off and goes on
    if (i + 1 > from) out.push({ from, to: i + 1, ...(closes ? { mark: low } : {}) });
    from = i + 1;
  }
  if (from < tokens.length) out.push({ from, to: tokens.length });
  return out;
}
