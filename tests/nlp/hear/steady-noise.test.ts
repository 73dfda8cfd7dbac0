import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { decodeSound, type Sound } from '../../../nlp/hear/decode/decode.ts';
import type { Powers } from '../../../nlp/hear/features.ts';
import { BUILT_IN } from '../../../nlp/hear/model-files.ts';
import { Whisper } from '../../../nlp/hear/model.ts';
import { surerOf } from '../../../nlp/hear/second-hearing.ts';
import { isNoisy, withoutSteadyNoise } from '../../../nlp/hear/steady-noise.ts';
import { expectNames, transcribe, type Transcript } from '../../../nlp/hear/transcribe.ts';
import { wordErrors } from './human-clips.ts';
import { withNoise, type NoiseKind } from './shop-noise.ts';

const CLIPS = ['heron-where.ogg', 'heron-radiator.ogg', 'heron-water-pump.ogg'];
const clip = async (name: string) => (await decodeSound(readFileSync(new URL(`../../../fixtures/clips/${name}`, import.meta.url))) as Sound).samples;

let whisper: Whisper;
beforeAll(async () => { whisper = await Whisper.load(BUILT_IN); });
afterAll(() => whisper.close());

test.each(CLIPS)('%s is not noisy by itself, and is with a machine under it', async (name) => {
  const samples = await clip(name);
  const noisy = (sound: Float32Array) => isNoisy(whisper.features.measure(sound));
  expect(noisy(samples)).toBe(false);
  for (const kind of ['shop', 'hiss', 'grinder', 'compressor'] satisfies NoiseKind[]) expect(noisy(withNoise(samples, 10, 1, kind)), kind).toBe(true);
});

test('what is always there is taken down by 10 dB, what stands out of it stays, and silence is no noise', () => {
  // Two bands: a level of −2 with one moment of 0, and one that is −4 throughout.
  const frames = 50;
  const logs = new Float32Array(2 * frames).fill(-2, 0, frames).fill(-4, frames);
  logs[25] = 0;
  const quiet = withoutSteadyNoise({ logs, frames, sounding: frames });
  expect(quiet.logs[10]).toBeCloseTo(-3, 5);
  expect(quiet.logs[frames + 10]).toBeCloseTo(-5, 5);
  expect(quiet.logs[25]).toBeGreaterThan(-0.45);
  expect(logs[10]).toBe(-2);
  const nothing: Powers = { logs: new Float32Array(2 * frames).fill(-10), frames, sounding: 0 };
  expect(isNoisy(nothing)).toBe(false);
  expect(withoutSteadyNoise(nothing).logs).toEqual(nothing.logs);
});

const heard = (text: string, score: number, rest: Partial<Transcript> = {}): Transcript => ({ text, score, trust: 'good', unsure: [], poor: [], words: [], overNoise: [], ...rest });

test.each([
  // First hearing, second hearing, what is kept, what is unsure of it, and how far it is trusted.
  [heard('The hub is hot.', -0.2), heard('the hub is hot', -0.3), 'The hub is hot.', [], 'good'],
  [heard('The hub is heart.', -0.4), heard('The hub is hot.', -0.3), 'The hub is hot.', ['hot'], 'good'],
  [heard('Four bolts, lock washers', -0.2, { unsure: ['lock'] }), heard('Four bolts and moth washers', -0.3), 'Four bolts, lock washers', ['lock'], 'good'],
  [heard('The seat is on with lock washers', -0.2), heard('The sheet is on with moth washers', -0.3), 'The seat is on with lock washers', ['seat', 'lock'], 'doubtful'],
  [heard('It is 40 thou', -0.2), heard('It is four tea thou now', -0.3), 'It is 40 thou', ['40'], 'doubtful'],
] as const)('two hearings %#: the surer is kept, what they differ in is unsure', (first, second, text, unsure, trust) => {
  expect(surerOf(first, second)).toMatchObject({ text, unsure, trust });
});

test('over a machine every word is told with its score, and what is heard in two ways once more with the worst there is', () => {
  const first = heard('The hub is heart.', -0.4);
  const second = heard('hub hot', -0.3, { words: [{ word: 'hub', score: -0.2 }, { word: 'hot', score: -0.1 }] });
  expect(surerOf(first, second).overNoise).toEqual([...second.words, { word: 'hot', score: -10 }]);
});

test('heard once and once not is doubtful; not heard at all is nothing', () => {
  const nothing = heard('Thank you.', -0.1, { trust: 'nothing' });
  const hub = heard('The hub is hot.', -0.2, { words: [{ word: 'hub', score: -0.2 }] });
  expect(surerOf(hub, nothing)).toMatchObject({ text: 'The hub is hot.', trust: 'doubtful', overNoise: hub.words });
  expect(surerOf(nothing, hub)).toMatchObject({ text: 'The hub is hot.', trust: 'doubtful' });
  expect(surerOf(nothing, nothing).trust).toBe('nothing');
});

test('in quiet no word is over noise', async () => {
  const { words, overNoise } = await transcribe(whisper, await clip('heron-radiator.ogg'), expectNames(whisper, []));
  expect(words.length).toBeGreaterThan(8);
  expect(overNoise).toEqual([]);
});

test('a voice over a machine is heard', async () => {
  const { text } = await transcribe(whisper, withNoise(await clip('heron-radiator.ogg'), 10, 3), expectNames(whisper, ['Heron', 'radiator hose']));
  expect(wordErrors('i need two radiator hoses and a tin of paint for the heron', text), text).toBeLessThanOrEqual(3);
});
