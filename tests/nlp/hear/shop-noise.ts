import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { HEARING_RATE } from '../../../nlp/hear/decode/sound.ts';

/** Noises of a shop that nobody talks in, made from sums: no recording is needed and every run gives the same. */
export type NoiseKind = 'silence' | 'hiss' | 'compressor' | 'grinder' | 'hammer' | 'hum' | 'shop';

export const NOISE_KINDS: NoiseKind[] = ['silence', 'hiss', 'compressor', 'grinder', 'hammer', 'hum', 'shop'];

type Chance = () => number;

/** −1…1, the same sequence for the same seed. */
function chance(seed: number): Chance {
  const generator = xoroshiro128plus(seed);
  return () => 2 * uniformFloat64(generator) - 1;
}

/** Pink noise by a sum of one-pole filters at octave-spaced corners (Kellet's "economy" weights). */
function pink(next: Chance): Chance {
  let a = 0;
  let b = 0;
  let c = 0;
  return () => {
    const white = next();
    a = 0.99765 * a + white * 0.099046;
    b = 0.963 * b + white * 0.2965164;
    c = 0.57 * c + white * 1.0526913;
    return (a + b + c + white * 0.1848) / 4;
  };
}

const saw = (t: number, hz: number) => 2 * ((t * hz) % 1) - 1;
const sine = (t: number, hz: number) => Math.sin(2 * Math.PI * hz * t);

/** One noise as a function of time in seconds. */
function voice(kind: NoiseKind, seed: number): (t: number) => number {
  const next = chance(seed);
  const soft = pink(next);
  switch (kind) {
    case 'silence': return () => 0;
    case 'hiss': return () => 0.5 * next();
    // A piston pump: eleven strokes a second, each a thud of rumbling air.
    case 'compressor': return (t) => (0.25 + Math.max(0, sine(t, 11)) ** 3) * (soft() + 0.4 * sine(t, 47));
    // A disc at 170 turns a second that bites and lets go.
    case 'grinder': return (t) => (0.6 + 0.4 * sine(t, 0.7)) * (0.3 * saw(t, 170) + 0.2 * saw(t, 1190) + 0.6 * next());
    // Two blows a second on a ringing bar.
    case 'hammer': return (t) => Math.exp(-18 * (t % 0.5)) * (sine(t, 1320) + 0.7 * sine(t, 2875) + 0.8 * next()) + 0.02 * soft();
    case 'hum': return (t) => 0.5 * sine(t, 60) + 0.3 * sine(t, 120) + 0.1 * sine(t, 180) + 0.03 * next();
    case 'shop': return (t) => (1 + 0.5 * sine(t, 3.1)) * soft() + 0.25 * saw(t, 83) + 0.1 * Math.exp(-25 * (t % 0.8)) * next();
  }
}

/** `seconds` of a noise at 16 kHz, scaled to root mean square `level` (full scale 1); silence stays silence. */
export function shopNoise(kind: NoiseKind, seconds: number, seed: number, level = 0.1): Float32Array {
  const sound = voice(kind, seed);
  const out = Float32Array.from({ length: Math.round(seconds * HEARING_RATE) }, (_, i) => sound(i / HEARING_RATE));
  const rms = Math.sqrt(out.reduce((sum, x) => sum + x * x, 0) / out.length);
  return rms === 0 ? out : out.map((x) => Math.max(-1, Math.min(1, (x * level) / rms)));
}

/**
 * Speech with noise under it, at a ratio of their powers over the whole clip, in dB. By the active speech level of ITU-T P.56, which leaves pauses
 * out, the recorded notes would be 1.0 dB louder (at most 1.8): figures here are that much kinder than ones told by it.
 */
export function withNoise(speech: Float32Array, ratio: number, seed: number, kind: NoiseKind = 'shop'): Float32Array {
  const rms = Math.sqrt(speech.reduce((sum, x) => sum + x * x, 0) / speech.length);
  const noise = shopNoise(kind, speech.length / HEARING_RATE, seed, rms / 10 ** (ratio / 20));
  return speech.map((x, i) => Math.max(-1, Math.min(1, x + (noise[i] ?? 0))));
}

/** 16-bit mono WAV of samples at 16 kHz. */
export function toWav(samples: Float32Array, rate = HEARING_RATE): Uint8Array {
  const bytes = Buffer.alloc(44 + samples.length * 2);
  bytes.write('RIFF', 0);
  bytes.writeUInt32LE(36 + samples.length * 2, 4);
  bytes.write('WAVEfmt ', 8);
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(rate, 24);
  bytes.writeUInt32LE(rate * 2, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36);
  bytes.writeUInt32LE(samples.length * 2, 40);
  samples.forEach((x, i) => bytes.writeInt16LE(Math.round(Math.max(-1, Math.min(1, x)) * 32_767), 44 + 2 * i));
  return bytes;
}
