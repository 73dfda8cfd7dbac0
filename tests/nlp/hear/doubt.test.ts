import { expect, test } from 'vitest';
import { endsInLoop, poorWords, trust, unsureWords, wordsOf } from '../../../nlp/hear/doubt.ts';
import { cutSegments } from '../../../nlp/hear/segments.ts';
import { buildWordTree, expect as step } from '../../../nlp/hear/word-tree.ts';
import { promptText } from '../../../nlp/hear/prompt.ts';

test.each([
  [[1, 2, 3, 4], false], [[7, 7, 7], false], [[7, 7, 7, 7], true], [[1, 5, 6, 5, 6, 5, 6, 5, 6], true],
  [[1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6], false], [[9, 1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6], true],
])('%j runs in a circle: %s', (pieces, loops) => {
  expect(endsInLoop(pieces)).toBe(loops);
});

test.each([
  ['the clutch is out', [-0.1, -0.2, -0.1], 0.01, 'good'],
  ['the clutch is out', [-0.5, -0.9, -0.6], 0.01, 'doubtful'],
  ['the clutch is out', [-1.2, -1.4, -1.1], 0.01, 'nothing'],
  ['the clutch is out', [-0.5, -0.9, -0.6], 0.9, 'nothing'],
  ['Thank you.', [-0.1], 0.01, 'doubtful'],
  ['Thank you.', [-0.1], 0.8, 'nothing'],
  ["I'm sorry.", [-0.7], 0.1, 'nothing'],
  ['. . .', [-0.1], 0, 'nothing'],
])('%s with %j and %d is %s', (text, scores, noSpeech, want) => {
  expect(trust(text, scores, noSpeech)).toBe(want);
});

test('a word is as unsure as its worst piece; marks count for nothing', () => {
  expect(unsureWords(wordsOf([' The', ' king', 'pin', ',', ' out'], [-0.1, -0.2, -2, -5, -0.1]))).toEqual(['kingpin']);
});

test('a point inside a figure stays, and is no word of its own', () => {
  const words = wordsOf([' about', ' 4', '.', '2', ' ohms', '.'], [-0.1, -0.2, -3, -0.9, -0.1, -4]);
  expect(words).toEqual([{ word: 'about', score: -0.1 }, { word: '4.2', score: -0.9 }, { word: 'ohms', score: -0.1 }]);
  expect(unsureWords(words)).toEqual(['4.2']);
  expect(poorWords(words)).toEqual([]);
});

test('pieces for the recogniser are under 30 s, hold every stretch, and leave long pauses out', () => {
  const second = 16_000;
  const samples = Float32Array.from({ length: 100 * second }, (_, i) => Math.floor(i / second));
  const segments = cutSegments(samples, [{ from: 0, to: 20 * second }, { from: 30 * second, to: 33 * second }, { from: 35 * second, to: 95 * second }]);
  for (const segment of segments) expect(segment.length).toBeLessThan(30 * second);
  const heard = new Set(segments.flatMap((segment) => [...segment]));
  for (const t of [0, 10, 19, 31, 36, 60, 94]) expect(heard.has(t), `second ${t}`).toBe(true);
  for (const t of [22, 27, 98]) expect(heard.has(t), `second ${t}`).toBe(false);
});

test('an expected word earns its bonus piece by piece and pays it back when it breaks off', () => {
  const encode = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
  const root = buildWordTree(['ab'], encode);
  const walk = (text: string) => encode(text).reduce((at, piece) => {
    const next = step(at, root, piece, 1);
    return { ...next, sum: at.sum + next.gain };
  }, { node: root, lent: 0, sum: 0 });
  expect(walk(' ab').sum).toBe(3);
  expect(walk(' ab!').sum).toBe(3);
  expect(walk(' a!').sum).toBe(0);
  expect(walk('xyz').sum).toBe(0);
});

test('of more names than fit the first given are kept, nearest to the words', () => {
  const names = Array.from({ length: 300 }, (_, i) => `part number ${i}`);
  const text = promptText(names, (name) => name.split(/\s+/).filter(Boolean).map(() => 0));
  expect(text).toMatch(/part number 1, part number 0\.$/);
  expect(text).not.toContain('part number 299');
});
