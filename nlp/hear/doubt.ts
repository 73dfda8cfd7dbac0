/** The longest run that is looked for: a sentence that the recogniser says over and over. */
const LONGEST_PERIOD = 24;
/** A short run may come three times in talk ("no, no, no"); a phrase of five pieces and more does not. */
const repeatsOf = (period: number) => (period < 5 ? 4 : 3);

/** True when the pieces end in the same run over and over ("2.0.0.0.0", or a whole sentence again and again). */
export function endsInLoop(pieces: number[]): boolean {
  for (let period = 1; period <= LONGEST_PERIOD && period * repeatsOf(period) <= pieces.length; period++) {
    const from = pieces.length - period * repeatsOf(period);
    let same = true;
    for (let i = from + period; i < pieces.length && same; i++) same = pieces[i] === pieces[i - period];
    if (same) return true;
  }
  return false;
}

/** Log-probability of its worst piece under which a word is unsure: one chance in two. What leans on it is asked before it is written down. */
const UNSURE = -0.7;
/** Under this, one chance in three, a word that makes sense may give way to one of the shop's that sounds like it. */
const POOR = -1.1;
/** Mean log-probability a piece: clean talk −0.10 to −0.27, a garbled note −0.53, noise alone −1.41 (measured). */
const DOUBTFUL = -0.5;
const NOTHING = -1.05;

/** A word of the transcript with the log-probability of its worst piece. */
export interface HeardWord {
  word: string;
  score: number;
}

/** Joins word pieces into words: a piece that begins with a space begins a word. */
export function wordsOf(pieces: string[], scores: number[]): HeardWord[] {
  const words: HeardWord[] = [];
  for (const [i, piece] of pieces.entries()) {
    const last = words.at(-1);
    if (!last || piece.startsWith(' ')) words.push({ word: piece.trim(), score: scores[i]! });
    // A mark belongs to its word ("4.2", "mock-up"), but how sure it was says nothing of the word.
    else words[words.length - 1] = { word: last.word + piece, score: /[\p{L}\p{N}]/u.test(piece) ? Math.min(last.score, scores[i]!) : last.score };
  }
  return words.map(({ word, score }) => ({ word: bare(word), score })).filter(({ word }) => word !== '');
}

/** A word without the marks around it. */
const bare = (word: string) => word.replace(/^[^\p{L}\p{N}$]+|[^\p{L}\p{N}%]+$/gu, '');

/** The words of a transcript, as `wordsOf` names them. */
export const bareWords = (text: string): string[] => text.split(/\s+/).map(bare).filter(Boolean);

/**
 * What recognisers of this family write where nobody spoke, as whole transcripts. Known from public reports of the model
 * on silence and noise; kept short, because a person may well say them.
 */
const STOCK = /^(you|thank you( so much| very much)?( for (watching|listening))?|thanks for (watching|listening)|bye( bye)?|i'?m sorry|i don'?t know( what you'?re (going to|gonna) do)?|please subscribe|so|oh|okay|hmm|the end|music|applause|silence|subtitles? by.*|i'?m (not sure if i'?m )?going to.{0,60})[.!,\s]*$/i;

export type Trust = 'good' | 'doubtful' | 'nothing';

/** How far a stretch of transcript can be trusted, from its scores and words. `noSpeech` is the model's own word on it, 0…1. */
export function trust(text: string, scores: number[], noSpeech: number): Trust {
  if (!/[\p{L}\p{N}]/u.test(text) || scores.length === 0) return 'nothing';
  const mean = scores.reduce((a, b) => a + b, 0) / scores.length;
  const stock = STOCK.test(text.trim());
  if (mean < NOTHING || (stock && (mean < DOUBTFUL || noSpeech > 0.5))) return 'nothing';
  if (noSpeech > 0.6 && mean < DOUBTFUL) return 'nothing';
  return mean < DOUBTFUL || stock ? 'doubtful' : 'good';
}

/** The words that what is written down must not lean on unasked. */
export const unsureWords = (words: HeardWord[]): string[] => below(words, UNSURE);

/** The words that mending may take for others. */
export const poorWords = (words: HeardWord[]): string[] => below(words, POOR);

const below = (words: HeardWord[], least: number): string[] => words.filter(({ score }) => score < least).map(({ word }) => word);
