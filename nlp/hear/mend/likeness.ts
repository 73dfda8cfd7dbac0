import { doubleMetaphone } from 'double-metaphone';
import { distance } from 'fastest-levenshtein';

const letters = (text: string) => text.toLowerCase().replace(/[^a-z]/g, '');

/**
 * How a word sounds, coarsely (double metaphone, Philips 2000). An R that ends a syllable is dropped: half of the
 * English-speaking world doesn't say it ("arba" for "arbor", "beta" for "beater").
 */
function soundOf(text: string): string {
  const plain = letters(text);
  const silentR = plain.replace(/(?<=[aeiou])r+(?=[^aeiouy]|$)/g, '').replace(/er?$|re$/, '');
  return doubleMetaphone(silentR || plain)[0];
}

/** How alike two words are: steps between their sounds, and the share of letters that differ. */
export function likeness(heard: string, meant: string): { sound: number; spelling: number; length: number } {
  const a = letters(heard);
  const b = letters(meant);
  const [soundA, soundB] = [soundOf(a), soundOf(b)];
  return { sound: distance(soundA, soundB), spelling: distance(a, b) / Math.max(1, a.length, b.length), length: Math.min(soundA.length, soundB.length) };
}
