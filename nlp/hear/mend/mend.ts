import { mendBeside } from './beside.ts';
import type { Mended } from './change.ts';
import { mendCompounds, mendJoined } from './compounds.ts';
import { mendMarks } from './marks.ts';
import { mendWords, type WordSense } from './names.ts';
import { mendNumbers } from './numbers.ts';
import { mendParticiples, mendPast } from './past.ts';
import { mendSmallWords } from './small-words.ts';

/**
 * Repairs what recognisers do to the trade's words and numbers, only where it is plain what was said.
 * `names`: machines, parts, places of the shop; `sense`: which words were scored low and which are common; left out, every word counts as common.
 * The changes say what was done, for the trace; the recogniser's own words are kept beside the result.
 */
export function mendHeard(text: string, names: string[], sense: Partial<WordSense> = {}): Mended {
  const unsure = sense.unsure ?? [];
  const figures = mendMarks(mendNumbers({ text, changes: [] }));
  const words = mendWords(mendCompounds(mendJoined(mendBeside(figures), names), unsure, names), names, { unsure, isCommon: sense.isCommon ?? (() => true) });
  // Tenses are told from the words around them, so those come first.
  return mendPast(mendParticiples(mendSmallWords(words)));
}
