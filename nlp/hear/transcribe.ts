import { HEARING_RATE } from './decode/sound.ts';
import { poorWords, trust, unsureWords, wordsOf, type HeardWord, type Trust } from './doubt.ts';
import { SAID_FORMS } from './expected-words.ts';
import type { Powers } from './features.ts';
import type { Whisper } from './model.ts';
import { promptText } from './prompt.ts';
import { search, type Found } from './search.ts';
import { surerOf } from './second-hearing.ts';
import { isNoisy, withoutSteadyNoise } from './steady-noise.ts';
import { buildWordTree, type WordNode } from './word-tree.ts';

/** Words written down for one stretch of sound, and how far to trust them. */
export interface Transcript {
  text: string;
  trust: Trust;
  unsure: string[];
  /** Those of them that were scored so low that they may give way in mending. */
  poor: string[];
  /** Every word with its score. */
  words: HeardWord[];
  /** The same over a running machine, which may have drowned some; none in quiet. */
  overNoise: HeardWord[];
  /** Mean log-probability a word piece. */
  score: number;
}

/** Readings followed at once, and the bonus an expected word gets for each of its pieces (measured: see the hearing bench). */
const READINGS = 3;
const BONUS = 1;

/** Fast talk is 7 pieces a second; a few more let a short note end. */
const mostPieces = (seconds: number) => Math.ceil(7 * seconds) + 12;
/** Nobody who talks for `SLOW_FROM` seconds says less than this many pieces a second: the recogniser skipped something. */
const FEWEST_A_SECOND = 1.3;
const SLOW_FROM = 5;
/** Mean log-probability a piece under which hardly a word was heard: talk in the worst noise −0.6, noise alone −1.4 (measured). */
const GARBLED = -0.8;

/** What one shop expects to hear: its names, worked out once for all the stretches of a note. */
interface Expected {
  prompt: number[];
  words: WordNode;
}

/** `names`: machines, parts and places of the shop, the most recent first. All lend their words a bonus; as many as fit are shown before. */
export function expectNames(whisper: Whisper, names: string[]): Expected {
  const wordsOfNames = names.flatMap((name) => [name, ...name.split(/\s+/)]);
  return {
    prompt: whisper.encode(` ${promptText(names, whisper.encode)}`),
    words: buildWordTree([...wordsOfNames, ...SAID_FORMS], whisper.encode),
  };
}

/** Hears one stretch of at most 30 s (16 kHz); where a machine runs under the voice, twice. */
export async function transcribe(whisper: Whisper, samples: Float32Array, expected: Expected): Promise<Transcript> {
  const powers = whisper.features.measure(samples);
  const seconds = samples.length / HEARING_RATE;
  const first = await hearPowers(whisper, powers, seconds, expected);
  if (!isNoisy(powers)) return first;
  return surerOf(first, await hearPowers(whisper, withoutSteadyNoise(powers), seconds, expected));
}

async function hearPowers(whisper: Whisper, powers: Powers, seconds: number, expected: Expected): Promise<Transcript> {
  const sound = await whisper.hearSound(powers);
  const listen = (before: number[]) =>
    search(whisper, sound, [...before, whisper.ids.start, ...whisper.ids.after], { readings: READINGS, bonus: BONUS, expected: expected.words, most: mostPieces(seconds) });
  const found = await listen([whisper.ids.before, ...expected.prompt]);
  const skipped = seconds >= SLOW_FROM && found.pieces.length <= FEWEST_A_SECOND * seconds;
  if (!skipped && meanScore(found) > GARBLED) return judge(whisper, found);
  // A fore-run that sounds like the note makes the recogniser go on after it instead of beginning, or say its names over and over: hear again without.
  const again = await listen([]);
  const better = skipped ? again.pieces.length > found.pieces.length : meanScore(again) > meanScore(found);
  return judge(whisper, better ? again : found);
}

const meanScore = ({ scores }: Found) => scores.reduce((a, b) => a + b, 0) / Math.max(1, scores.length);

function judge(whisper: Whisper, found: Found): Transcript {
  const said = found.pieces.filter((piece) => piece < whisper.ids.end);
  const scores = found.scores.slice(0, said.length);
  const text = whisper.text(said).trim();
  const words = wordsOf(said.map((piece) => whisper.text([piece])), scores);
  return {
    text,
    trust: trust(text, found.scores, found.noSpeech),
    unsure: unsureWords(words),
    poor: poorWords(words),
    words,
    overNoise: [],
    score: meanScore(found),
  };
}
