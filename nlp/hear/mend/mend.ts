import type { Mended } from './change.ts';
import { mendWords, type WordSense } from './names.ts';
import { mendNumbers } from './numbers.ts';

/**
 * Repairs what recognisers do to the trade's words and numbers, only where it is plain what was said.
 * `names`: machines, parts, places of the shop; `sense`: which words were scored low and which are common; left out, every word counts as common.
 * The changes say what was done, for the trace; the recogniser's own words are kept beside the result.
 */
export function mendHeard(text: string, names: string[], sense: Partial<WordSense> = {}): Mended {
  return mendWords(mendNumbers({ text, changes: [] }), names, { unsure: sense.unsure ?? [], isCommon: sense.isCommon ?? (() => true) });
}
