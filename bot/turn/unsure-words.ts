import { bareWords } from '../../nlp/hear/doubt.ts';
import { isFrameWord } from '../../nlp/hear/mend/plain-words.ts';

/** More would be a second text to read. */
const MOST = 5;

/**
 * The words of a hearing that the person is asked to look at, as they stand in it: those that what it says leans on, then others that were
 * poorly heard. Little words, and words that mending has taken out, would only distract.
 */
export function unsureWords(text: string, leans: readonly string[], unsure: readonly string[]): string[] {
  const standing = bareWords(text);
  const whole = (word: string) => standing.find(said => said.toLowerCase() === word.toLowerCase());
  // A figure is leaned on without what it is written together with: "86" of "$86", "20" of "20-foot".
  const partly = (word: string) => standing.find(said => said.toLowerCase().split(/[^a-z0-9.]+/).includes(word));
  const others = unsure.filter(word => !isFrameWord(word) || /\d/.test(word)).flatMap(word => whole(word) ?? []);
  return [...new Set([...leans.map(word => whole(word) ?? partly(word) ?? word), ...others])].slice(0, MOST);
}
