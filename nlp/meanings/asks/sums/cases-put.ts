import { weighNote } from '../../../likely/net/weigh-note.ts';
import type { Desk } from '../desk.ts';
import type { SumKind } from './kind.ts';
import { type Given, Scope } from './scope.ts';
import { swapped } from './swapped.ts';

/** So strongly the net must speak for a sum where no wording asks for another case of the one before (log odds). */
const SURE = 2;
/** "sorry, that was 68 on the head": a figure put right, and nothing asked. */
const PUT_RIGHT_OF_THAT = /^(?:no,? )?(?:sorry|sry|correction|wait|oops),? (?:that|it|those|they) (?:was|were|is|are)\b/;
/** Whether the net takes the note to ask a sum. */
export const sumAsked = (desk: Desk): boolean => !PUT_RIGHT_OF_THAT.test(desk.text) && (weighNote(desk.sheet)?.asked().find(a => a.kind === 'sum')?.z ?? -Infinity) > SURE;

/** What may turn to another case. */
const TURN = /(?:,? (?:and|an|or|but|then)(?: then)?|[.?!;,]) (?=\S)/g;

/**
 * "three mils on it and then four", "if it were steel and if it were brass": where a note that follows up a sum puts a case of it, and where it turns to
 * the next. One place alone unless every stretch changes the same fields: "18 threads and two flats" are one case.
 */
export function casesPut(desk: Desk, to: number, kind: SumKind, prev: Given): number[] {
  const turns = [0, ...[...desk.text.slice(0, to).matchAll(TURN)].map(m => m.index + m[0].length)], points: number[] = [];
  let fields: string | undefined;
  if (swapped(new Scope(desk, 0, to), prev)) return [0]; // "not forty, call it thirty-five" is one
  for (const [i, at] of turns.entries()) {
    const changed = Object.keys(kind.given(new Scope(desk, at, turns[i + 1] ?? to), prev)).filter(f => !f.endsWith('Unit')).sort().join();
    if (!changed) continue;
    if (fields !== undefined && changed !== fields) return [0];
    fields = changed;
    points.push(points.length ? at : 0);
  }
  return points.length ? points : [0];
}
