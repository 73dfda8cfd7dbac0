import { remembered } from '../../domain/model/remembered.ts';
import { ENGLISH_ADJECTIVES, ENGLISH_ADVERBS } from '../words/english.ts';
import { CONDITION } from '../words/conditions.ts';
import { COMMON } from '../words/common.ts';
import { EVERYDAY } from '../words/everyday.ts';
import { LOOKALIKES } from '../words/lookalikes.ts';
import { NO_THINGS } from '../words/no-things.ts';
import { PERSONS } from '../words/persons.ts';
import { SIDES } from '../words/sides.ts';
import { isTradeWord, singular, tradeWords } from '../words/nouns.ts';
import { allVerbForms, verbForms } from '../words/verbs.ts';
import { isClosed } from '../text/nominal.ts';

/** Whether a word is one that is meant as it stands: of the language, the trade, or a regular form of such a word. */
export const isWord = remembered((low: string): boolean => {
  if (isClosed(low) || isTradeWord(low) || CONDITION.has(low) || COMMON.has(low) || LOOKALIKES.has(low) || ENGLISH_ADJECTIVES.has(low) || ENGLISH_ADVERBS.has(low) || EVERYDAY.has(low) || NO_THINGS.has(low) || NO_THINGS.has(singular(low)) || SIDES.has(low) || PERSONS.test(low) || verbForms(low).length) return true;
  const stems = [singular(low), low.replace(/^(re|un|over|under|out|pre|mis|de|dis)-?/, ''), low.replace(/^(re|un|over|under|pre|mis|de)-?/, '').replace(/(ed|ing)$/, ''), low.replace(/^(re|un|over|under|pre|mis|de)-?/, '').replace(/(ed|ing)$/, 'e'), low.replace(/(ed|ing|er|est|ly|y|ish|ness|less|ful|able)$/, ''), low.replace(/(ed|ing|er|est)$/, 'e'), low.replace(/i(ed|er|est|ly|ness)$/, 'y'), low.replace(/(.)\1(ed|ing|er|est|y)$/, '$1')];
  return stems.some(s => s !== low && s.length > 2 && (COMMON.has(s) || EVERYDAY.has(s) || verbForms(s).length > 0 || isTradeWord(s) || CONDITION.has(s)));
});

/** Words of the trade by their length, for finding the one that a slip of the thumb was meant to be. */
export const BY_LENGTH: ReadonlyMap<number, readonly string[]> = (() => {
  const out = new Map<number, string[]>();
  const all = new Set<string>([...tradeWords(), ...[...CONDITION].filter(w => !w.includes(' ')), ...allVerbForms(), 'from', 'with', 'before', 'tomorrow', 'yesterday', 'against', 'behind', 'again', 'bottom', 'front', 'right', 'should', 'until', 'finished', 'tightened']);
  for (const w of all) if (/^[a-z]{4,}$/.test(w)) { const list = out.get(w.length); if (list) list.push(w); else out.set(w.length, [w]); }
  return out;
})();
