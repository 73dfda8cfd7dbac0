import type { Desk, Hit } from '../desk.ts';
import type { Candidate } from './candidates.ts';
import { SUM_KINDS } from './kinds.ts';
import { Scope } from './scope.ts';
import { TOLD } from './told.ts';

/** A sentence that only says which sum is to be done: "Engine lift.", "Shim.", "Sling question." */
const HEADING = /^(?:[a-z]+ ){0,2}(?:lift|sling|shims?|stack|paint|landed|torques?)(?: (?:question|sum|job|estimate))? ?[.:]/;
/** Words that want an answer though they ask nothing: "Newton metres please", "Kindly compute." */
const WANTED = /\b(?:please|kindly|compute|advise|required(?= ?(?:$|[.?]))|give (?:it )?to me)\b|\b(?:forget|never mind)\b[^.?!]*\b(?:use|call it)\b|\b(?:possible|enough) ?\?/;

/** Figures that are whole and of one sum, where the note has no question but says that an answer is wanted. */
export function byHeading(desk: Desk, plain: readonly Hit[], have: readonly Candidate[]): Candidate[] {
  if (have.some(c => c.score > 0)) return [];
  const start = Math.max(0, ...plain.map(p => p.end)), text = desk.text.slice(start);
  const headed = HEADING.test(text);
  if (!headed && (!WANTED.test(text) || TOLD.test(text))) return [];
  const end = start + text.trimEnd().replace(/[ .;,]+$/, '').length;
  const found = SUM_KINDS.flatMap(kind => {
    if (!kind.telling || kind.word && !kind.word.test(text) || kind.unless?.test(text)) return [];
    const given = kind.given(new Scope(desk, start, desk.text.length, start)), set = kind.telling.filter(t => t.every(f => given[f] !== undefined)).sort((a, b) => b.length - a.length)[0];
    return set ? [{ kind, start, end, score: 1 + set.length }] : [];
  });
  return found.sort((a, b) => b.score - a.score).slice(0, 1);
}
