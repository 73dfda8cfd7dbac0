import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { decodeSound } from '../../../nlp/hear/decode/decode.ts';
import { isRefusal, joinPieces } from '../../../nlp/hear/decode/sound.ts';
import { createHearer, modelsFor } from '../../../nlp/hear/hear.ts';
import { BUILT_IN, MODEL_FILES } from '../../../nlp/hear/model-files.ts';
import { HUMAN, humanClips, wordErrors } from './human-clips.ts';
import { NOISE_KINDS, shopNoise, toWav, withNoise } from './shop-noise.ts';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const clip = (name: string) => readFileSync(join(ROOT, 'fixtures/clips', name));
const NAMES = ['Heron', 'water pump', 'radiator hose', 'crankshaft', 'exhaust manifold', 'clutch plate'];

const hearer = createHearer();
afterAll(() => hearer.close());
const hear = (bytes: Uint8Array, names = NAMES) => hearer.hear(bytes, names);

test.each([
  ['heron-water-pump.ogg', 'the water pump is off the heron and the impeller is badly worn', 1],
  ['heron-radiator.ogg', 'i need two radiator hoses and a tin of paint for the heron', 1],
  ['heron-where.ogg', 'where did i put the exhaust manifold studs', 0],
  ['clutch-8-bit.wav', 'the clutch plate came this morning', 0],
  ['clutch-stereo.mp3', 'the clutch plate came this morning', 0],
  ['clutch.webm', 'the clutch plate came this morning', 0],
])('%s is heard with at most %3$i words wrong', async (name, said, wrong) => {
  const heard = await hear(clip(name));
  expect(heard.speech).toBe(true);
  expect(wordErrors(said, heard.text), heard.text).toBeLessThanOrEqual(wrong);
});

test.each(NOISE_KINDS)('%s gives no words', async (kind) => {
  expect(await hear(toWav(shopNoise(kind, 6, 11, 0.15)))).toMatchObject({ speech: false, raw: '', text: '', why: 'I heard no speech.' });
});

test('speech buried in noise is doubtful, or not heard at all, but never trusted', async () => {
  const loud = withNoise(shopNoise('hum', 3, 1), -10, 2, 'hiss');
  const heard = await hear(toWav(loud));
  expect(heard.speech && !heard.doubtful).toBe(false);
});

test('recordings wait their turn: answers come in the order of the questions', async () => {
  const order: string[] = [];
  const ask = (name: string, bytes: Uint8Array) => hear(bytes).then(() => order.push(name));
  await Promise.all([ask('first', clip('heron-radiator.ogg')), ask('second', new Uint8Array(0)), ask('third', clip('clutch.webm'))]);
  expect(order).toEqual(['first', 'second', 'third']);
});

test('long talk is heard in pieces, whole, and tells how far it is', async () => {
  const parts: Float32Array[] = [];
  for (const name of ['heron-water-pump.ogg', 'heron-where.ogg', 'heron-radiator.ogg', 'heron-crankshaft.ogg']) {
    const sound = await decodeSound(clip(name));
    if (!isRefusal(sound)) parts.push(sound.samples);
  }
  const long = joinPieces([...parts, ...parts, ...parts].map((samples) => [samples]), Infinity)[0]!;
  const shares: number[] = [];
  const heard = await hearer.hear(toWav(long), NAMES, (share) => shares.push(share));
  expect(heard.seconds).toBeGreaterThan(40);
  for (const word of [/impeller/gi, /manifold/gi, /paint/gi]) expect(heard.text.match(word)?.length, heard.text).toBe(3);
  expect(shares).toEqual([0, expect.closeTo(0.5, 1), 1]);
});

test('bytes that are no sound are a sentence', async () => {
  expect(await hear(Buffer.from('a shopping list'))).toMatchObject({ speech: false, text: '', why: expect.stringMatching(/not a sound file/) });
});

test('a model that is not there: the one that comes along is taken', async () => {
  const empty = mkdtempSync(join(tmpdir(), 'models-'));
  expect(modelsFor({ modelsDir: empty, model: 'some/model' })).toEqual([BUILT_IN]);
  expect(modelsFor({ modelsDir: BUILT_IN.modelsDir, model: BUILT_IN.model })).toEqual([BUILT_IN]);
});

test('a chosen model that is whole by its names but damaged: the one that comes along hears', async () => {
  const dir = mkdtempSync(join(tmpdir(), 'models-'));
  for (const file of MODEL_FILES) {
    mkdirSync(dirname(join(dir, 'some/model', file)), { recursive: true });
    writeFileSync(join(dir, 'some/model', file), 'not a model');
  }
  const other = createHearer({ modelsDir: dir, model: 'some/model' });
  expect((await other.hear(clip('heron-radiator.ogg'), NAMES)).text).toMatch(/radiator/i);
  expect(await other.use({})).toBe(BUILT_IN.model);
  expect(await other.use({ modelsDir: dir, model: 'some/model' })).toBe(BUILT_IN.model);
  await other.close();
  rmSync(dir, { recursive: true });
});

test.skipIf(humanClips().length === 0)(`people are heard with at most 12 %% of words wrong (${HUMAN})`, async () => {
  let errors = 0;
  let words = 0;
  for (const { bytes, said } of humanClips()) {
    errors += wordErrors(said, (await hear(bytes, [])).text);
    words += wordErrors(said, '');
  }
  expect(words).toBe(101);
  expect(errors / words).toBeLessThanOrEqual(0.12);
});

test('the command answers one line a file, in order, a wrong file among them', () => {
  const run = (args: string[], input: string) =>
    execFileSync(process.execPath, ['--import', 'tsx', 'bot/commands/hear.ts', ...args], { cwd: ROOT, input, encoding: 'utf8' }).trim().split('\n').map((line) => JSON.parse(line) as object);
  expect(run(['fixtures/clips/clutch.webm', 'none.ogg'], '')).toEqual([
    { file: 'fixtures/clips/clutch.webm', seconds: expect.any(Number), tookMs: expect.any(Number), speech: true, raw: expect.stringMatching(/clutch plate/i), text: expect.stringMatching(/clutch plate/i), doubtful: false, unsure: expect.any(Array) },
    { file: 'none.ogg', error: expect.any(String) },
  ]);
  const line = JSON.stringify({ file: 'fixtures/clips/heron-where.ogg', at: '2026-03-04T15:20:00-05:00', known: { machines: ['Heron'], parts: ['exhaust manifold'] } });
  expect(run(['--jsonl'], `${line}\nnot json\n`)).toMatchObject([{ speech: true, text: expect.stringMatching(/exhaust manifold/i) }, { error: expect.any(String) }]);
});
