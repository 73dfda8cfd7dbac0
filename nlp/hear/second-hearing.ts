import { isNumberWord } from '../text/number-words.ts';
import { bareWords } from './doubt.ts';
import { isFrameWord } from './mend/plain-words.ts';
import type { Transcript } from './transcribe.ts';

/** So much that is heard in two ways makes the whole doubtful: two words of sense, or one figure. */
const DOUBTFUL = 2;
/** What is heard in two ways is as unlikely as what is scored worst. */
const TWO_WAYS = -10;
const isFigure = (word: string) => /\d/.test(word) || isNumberWord(word.toLowerCase());
const weight = (word: string) => (isFigure(word) ? DOUBTFUL : isFrameWord(word) ? 0 : 1);

/**
 * One transcript of two hearings of the same sound, with and without the noise under it: the one that the recogniser is surer of.
 * Where they differ the words are unsure, however well each was scored: what was really said is mostly heard the same twice.
 */
export function surerOf(first: Transcript, second: Transcript): Transcript {
  if (first.trust === 'nothing' || second.trust === 'nothing') {
    const heard = first.trust === 'nothing' ? second : first;
    return heard.trust === 'nothing' ? heard : { ...heard, trust: 'doubtful', overNoise: heard.words };
  }
  const [chosen, other] = second.score > first.score ? [second, first] : [first, second];
  const differ = notIn(bareWords(chosen.text), bareWords(other.text));
  const doubtful = differ.reduce((sum, word) => sum + weight(word), 0) >= DOUBTFUL;
  return { ...chosen, trust: doubtful ? 'doubtful' : chosen.trust, unsure: [...new Set([...chosen.unsure, ...differ])], overNoise: [...chosen.words, ...differ.map((word) => ({ word, score: TWO_WAYS }))] };
}

/** The words that are left when the longest run of words which both have in order is taken out. */
function notIn(words: string[], others: string[]): string[] {
  const [a, b] = [words, others].map((list) => list.map((word) => word.toLowerCase())) as [string[], string[]];
  // common[i][j]: how many words the rest from a[i] and from b[j] share.
  const common = Array.from({ length: a.length + 1 }, () => new Uint16Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      common[i]![j] = a[i] === b[j] ? common[i + 1]![j + 1]! + 1 : Math.max(common[i + 1]![j]!, common[i]![j + 1]!);
    }
  }
  const left: string[] = [];
  for (let i = 0, j = 0; i < a.length;) {
    if (a[i] === b[j]) [i, j] = [i + 1, j + 1];
    else if (j < b.length && common[i]![j + 1]! > common[i + 1]![j]!) j++;
    else left.push(words[i++]!);
  }
  return left;
}
