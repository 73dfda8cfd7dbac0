import { CONDITION } from '../../words/conditions.ts';
import { EVERYDAY } from '../../words/everyday.ts';
import { ADVERB, AUX_BE, AUX_DO, AUX_HAVE, CONJ, DET, DISCOURSE, FILLER, MODAL, NEGATIVE, PARTICLE, PREP, PRONOUN, SUBORD, WH } from '../../words/grammar.ts';
import { isTradeWord } from '../../words/nouns.ts';
import { SIDES } from '../../words/sides.ts';
import { isShopVerb } from '../../words/verbs.ts';
import { isNumberWord } from '../../text/number-words.ts';

const CLOSED = [DET, PRONOUN, PREP, PARTICLE, AUX_BE, AUX_HAVE, AUX_DO, MODAL, NEGATIVE, CONJ, SUBORD, WH, ADVERB, FILLER, DISCOURSE, SIDES];

/** Words that hold a sentence together, sides and numbers: they are never a mishearing of a part. */
export function isFrameWord(word: string): boolean {
  const low = word.toLowerCase().replace(/’/g, "'");
  return /\d/.test(low) || isNumberWord(low) || CLOSED.some((list) => list.has(low)) || /'(s|re|ll|ve|d|m)$/.test(low) && CLOSED.some((list) => list.has(low.replace(/'.*/, '')));
}

/** Words that make sense in a note as they stand. */
export function isPlainWord(word: string): boolean {
  const low = word.toLowerCase().replace(/['’]s?$/, '');
  return isFrameWord(word) || EVERYDAY.has(low) || CONDITION.has(low) || isTradeWord(low) || isShopVerb(low);
}
