import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { toWav } from './shop-noise.ts';

/** Where Debian's `pocketsphinx-testdata` puts recordings of people with transcripts (BSD-2; the readings from LibriVox). */
export const HUMAN = '/usr/share/pocketsphinx/test/data';

export interface HumanClip {
  name: string;
  bytes: Uint8Array;
  said: string;
}

/** Raw 16-bit samples at 16 kHz, put into a WAV. */
function fromRaw(file: string): Uint8Array {
  const bytes = readFileSync(file);
  return toWav(Float32Array.from({ length: bytes.length / 2 }, (_, i) => bytes.readInt16LE(2 * i) / 32_768));
}

/** Lines like `<s> ten of clubs </s> (001)`. */
function transcribed(folder: string, file: string): HumanClip[] {
  return readFileSync(join(HUMAN, folder, file), 'utf8').split('\n').flatMap((line) => {
    const [, said, name] = /^<s> (.*?) *<\/s> \((.*)\)/.exec(line) ?? [];
    return said && name ? [{ name, said, bytes: readFileSync(join(HUMAN, folder, `${name}.wav`)) }] : [];
  });
}

/** The twelve clips that come with a transcript or say it in their name; none when the package isn't installed. */
export function humanClips(): HumanClip[] {
  if (!existsSync(HUMAN)) return [];
  return [
    ...transcribed('librivox', 'transcription'),
    ...transcribed('cards', 'cards.transcription'),
    { name: 'goforward', said: 'go forward ten meters', bytes: fromRaw(join(HUMAN, 'goforward.raw')) },
    { name: 'dhd.2934z', said: 'two nine three four zero', bytes: fromRaw(join(HUMAN, 'tidigits/dhd.2934z.raw')) },
  ];
}

const SMALL = 'zero one two three four five six seven eight nine ten'.split(' ');

/** Words alone: digits spelled out (longer numbers digit by digit), "Mr" in full. */
function wordsOf(text: string): string[] {
  return text.toLowerCase().replace(/\d+/g, (digits) => ` ${digits === '10' ? 'ten' : [...digits].map((d) => SMALL[Number(d)]).join(' ')} `)
    .replace(/\bmr\b\.?/g, 'mister').replace(/[^a-z' ]/g, ' ').split(/\s+/).filter(Boolean);
}

/** Words that must be put in, taken out or changed to make one text of the other (Levenshtein over words). */
export function wordErrors(said: string, heard: string): number {
  const [a, b] = [wordsOf(said), wordsOf(heard)];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (const [i, word] of a.entries()) {
    const next = [i + 1];
    for (const [j, other] of b.entries()) next.push(Math.min(row[j + 1]! + 1, next[j]! + 1, row[j]! + (word === other ? 0 : 1)));
    row = next;
  }
  return row[b.length]!;
}
