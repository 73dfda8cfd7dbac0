import type { Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import * as g from '../words/grammar.ts';
import { isTradeWord, nounClasses } from '../words/nouns.ts';
import { verbForms } from '../words/verbs.ts';
import { isNumberWord } from './number-words.ts';

/** The word at a place, in low case; empty past either end. */
export const lowAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? '';

/** Whether a noun can begin here: a trade word, or an unknown word that no closed class or verb claims. */
export function nominal(tokens: readonly Token[], i: number, solid: ReadonlySet<number>): boolean {
  const low = lowAt(tokens, i);
  if (!low || !/\p{L}/u.test(low)) return false;
  if (/^(first|second|last|next)$/.test(low) && !solid.has(i) && (isClosed(lowAt(tokens, i + 1)) || !/\p{L}/u.test(lowAt(tokens, i + 1)))) return false; // "key first, then…"
  if (/^(in|on|off|out|up|down|over|of|with|and|for|to|at|by|from|through)$/.test(low)) return solid.has(i); // "straighten that in the vice", whatever names hold them ("cut in")
  if (solid.has(i) || nounClasses(low).size || isTradeWord(low)) return true;
  return !isClosed(low) && verbForms(low).length === 0 && !CONDITION.has(low) && !/ly$/.test(low);
}

/** Whether a word belongs to a closed class, so that it never names a part. */
export const isClosed = (low: string): boolean => g.DET.has(low) || g.PRONOUN.has(low) || g.PREP.has(low) || g.AUX_BE.has(low) || g.AUX_HAVE.has(low) || g.AUX_DO.has(low)
  || g.MODAL.has(low) || g.NEGATIVE.has(low) || g.CONJ.has(low) || g.SUBORD.has(low) || g.WH.has(low) || g.ADVERB.has(low) || g.FILLER.has(low) || isNumberWord(low) || g.CALENDAR.has(low);
