import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { decodeSound, type Sound } from '../../../nlp/hear/decode/decode.ts';
import { resample } from '../../../nlp/hear/decode/resample.ts';
import { shopNoise, toWav } from './shop-noise.ts';

const clip = (name: string) => fileURLToPath(new URL(`../../../fixtures/clips/${name}`, import.meta.url));
const decodeClip = (name: string) => decodeSound(readFileSync(clip(name)));
const tone = (hz: number, rate: number, seconds = 1) => Float32Array.from({ length: rate * seconds }, (_, i) => 0.5 * Math.sin((2 * Math.PI * hz * i) / rate));
const rms = (x: Float32Array) => Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);
const middle = (x: Float32Array) => x.subarray(x.length / 4, (3 * x.length) / 4);

test.each([['heron-water-pump.ogg', 3.41], ['clutch.webm', 2.22], ['clutch-8-bit.wav', 2.21], ['clutch-stereo.mp3', 2.21]])('%s is decoded whole', async (name, seconds) => {
  const sound = await decodeClip(name) as Sound;
  expect(sound.samples.length / 16_000).toBeCloseTo(seconds, 1);
  expect(rms(sound.samples)).toBeGreaterThan(0.01);
});

// Against opusdec of opus-tools (the codec's own authors), when it is installed.
const opusdec = spawnSync('opusdec', ['--version']).error === undefined;
test.skipIf(!opusdec)('Opus sounds as opusdec decodes it', async () => {
  const file = join(mkdtempSync(join(tmpdir(), 'opus-')), 'theirs.wav');
  spawnSync('opusdec', ['--quiet', '--rate', '48000', '--no-dither', '--float', clip('heron-where.ogg'), file]);
  const wav = await decodeSound(readFileSync(file)) as Sound;
  const ours = await decodeClip('heron-where.ogg') as Sound;
  const n = Math.min(wav.samples.length, ours.samples.length);
  const difference = ours.samples.subarray(0, n).map((x, i) => x - wav.samples[i]!);
  expect(rms(difference)).toBeLessThan(0.01 * rms(ours.samples));
});

test.each([8_000, 11_025, 22_050, 44_100, 48_000, 96_000])('%d Hz → 16 kHz keeps a 1 kHz tone as it is', (rate) => {
  const out = resample(tone(1_000, rate), rate, 16_000);
  const want = tone(1_000, 16_000);
  expect(out.length).toBe(16_000);
  expect(rms(middle(out.map((x, i) => x - want[i]!)))).toBeLessThan(0.001);
});

test('what lies above half the new rate does not come back as another tone: 60 dB down', () => {
  expect(rms(middle(resample(tone(11_000, 48_000), 48_000, 16_000)))).toBeLessThan(0.354 / 1000);
});

/** A WAV of any form, made by hand from RIFF's description. */
function wav(code: number, bits: number, channels: number, frames: number[][], rate = 16_000): Buffer {
  const width = bits / 8;
  const data = Buffer.alloc(frames.length * channels * width);
  frames.flat().forEach((x, i) => {
    if (code === 3) data.writeFloatLE(x, i * width);
    else if (bits === 8) data.writeUInt8(Math.round(128 + x * 127), i);
    else data.writeIntLE(Math.round(x * (2 ** (bits - 1) - 1)), i * width, width);
  });
  const head = Buffer.from(toWav(new Float32Array(0)));
  head.writeUInt16LE(code, 20);
  head.writeUInt16LE(channels, 22);
  head.writeUInt32LE(rate, 24);
  head.writeUInt16LE(bits, 34);
  head.writeUInt32LE(data.length, 40);
  return Buffer.concat([head, data]);
}

test.each([[1, 8, 0.02], [1, 16, 1e-3], [1, 24, 1e-5], [1, 32, 1e-6], [3, 32, 1e-6]])('WAV code %d of %d bits', async (code, bits, close) => {
  const said = [0, 0.5, -0.5, 0.25, -1];
  const { samples } = await decodeSound(wav(code, bits, 1, said.map((x) => [x]))) as Sound;
  samples.forEach((x, i) => expect(Math.abs(x - said[i]!)).toBeLessThan(close));
});

test('stereo becomes one channel; opposite phases do not cancel', async () => {
  const { samples } = await decodeSound(wav(1, 16, 2, [[0.5, 0.25], [0.5, 0.25]])) as Sound;
  expect(samples[0]).toBeCloseTo(0.375, 3);
  const opposite = await decodeSound(wav(1, 16, 2, [...tone(440, 16_000)].map((x) => [x, -x]))) as Sound;
  expect(rms(opposite.samples)).toBeGreaterThan(0.3);
});

const ogg = readFileSync(clip('heron-where.ogg'));
const speech = toWav(shopNoise('hum', 1, 1));

test.each<[string, Uint8Array, RegExp]>([
  ['nothing at all', new Uint8Array(0), /empty/],
  ['text', Buffer.from('this is a letter, not a sound'), /not a sound file/],
  ['AAC in MP4', readFileSync(clip('clutch-aac.m4a')), /AAC/],
  ['Ogg without Opus', Buffer.from('OggS\0\x02 and then \x01vorbis'), /other than Opus/],
  ['a WAV without samples', speech.subarray(0, 30), /header is incomplete/],
  ['a WAV with no rate', wav(1, 16, 1, [[0.1], [0.1]], 0), /can't be right|no sound/],
  ['a WAV with an impossible rate', wav(1, 16, 1, [[0.1], [0.1]], 12), /12 samples a second, which can't be right/],
  ['a WAV whose samples are none', wav(1, 16, 1, []), /no sound in the recording/],
  ['a WebM that is cut off before its sound can be taken', readFileSync(clip('clutch.webm')).subarray(0, 4_000), /cut off/],
  ['a WAV of telephone code', wav(7, 8, 1, [[0.1]]), /can't read/],
  ['a WebM of nonsense', Buffer.concat([Buffer.from([0x1a, 0x45, 0xdf, 0xa3]), Buffer.alloc(200, 7)]), /damaged|no sound/],
  ['an MP3 of nonsense', Buffer.concat([Buffer.from('ID3'), Buffer.alloc(5_000, 9)]), /no sound|damaged/],
  ['an Ogg that ends in its head', ogg.subarray(0, 60), /no sound|damaged/],
])('%s is refused in a sentence', async (_, bytes, why) => {
  expect(await decodeSound(bytes)).toEqual({ why: expect.stringMatching(why) });
});

test('a voice note that is cut short gives what is there', async () => {
  const { samples } = await decodeSound(ogg.subarray(0, 6_000)) as Sound;
  expect(samples.length / 16_000).toBeGreaterThan(0.5);
});

test('a WAV that says it is longer than it is gives what is there', async () => {
  const { samples } = await decodeSound(speech.subarray(0, 16_044)) as Sound;
  expect(samples.length).toBe(8_000);
});

test('what is too long is heard as far as the limit, and it is said', async () => {
  const sound = await decodeSound(toWav(shopNoise('hum', 130, 1)), 120) as Sound;
  expect(sound.samples.length).toBe(120 * 16_000);
  expect(sound.note).toMatch(/longer than 2 minutes/);
});
