import { decodeContainer } from './container.ts';
import { decodeMp3 } from './mp3.ts';
import { decodeOggOpus } from './ogg.ts';
import { sniffSound, type SoundKind } from './sniff.ts';
import { HEARING_RATE, isRate, isRefusal, LONGEST_SECONDS, toMono, type Recording, type Refusal } from './sound.ts';
import { decodeWav } from './wav.ts';

/** Sound made ready for hearing: one channel at 16 kHz. `note` says what was left out, in a sentence. */
export interface Sound {
  samples: Float32Array;
  note?: string;
}

const SEND = 'Please send it as Opus, WAV or MP3.';
const REFUSED: Partial<Record<SoundKind, string>> = {
  'ogg-other': `This Ogg file holds something other than Opus, which I can't decode. ${SEND}`,
  adts: `This recording is AAC, which I can't decode. ${SEND}`,
  flac: `This recording is FLAC, which I can't decode. ${SEND}`,
  amr: `This recording is AMR, which I can't decode. ${SEND}`,
  aiff: `This recording is AIFF, which I can't decode. ${SEND}`,
};

async function open(bytes: Uint8Array, seconds: number): Promise<Recording | Refusal> {
  const kind = sniffSound(bytes);
  switch (kind) {
    case 'ogg-opus': return decodeOggOpus(bytes, seconds);
    case 'matroska':
    case 'mp4': return decodeContainer(bytes, seconds);
    case 'wav': return decodeWav(bytes, seconds);
    case 'mp3': return decodeMp3(bytes, seconds);
    case undefined: return { why: `This is not a sound file that I know. ${SEND}` };
    default: return { why: REFUSED[kind]! };
  }
}

/** Bytes of any kind → sound for hearing, or a sentence why not. Never throws for what a file holds. */
export async function decodeSound(bytes: Uint8Array, seconds = LONGEST_SECONDS): Promise<Sound | Refusal> {
  if (bytes.length === 0) return { why: 'The recording is empty.' };
  const recording = await open(bytes, seconds);
  if (isRefusal(recording)) return recording;
  const mono = toMono(recording.channels);
  if (mono.length === 0) return { why: isRate(recording.rate || HEARING_RATE) ? 'There is no sound in the recording.' : `This file says ${recording.rate} samples a second, which can't be right.` };
  return recording.more ? { samples: mono, note: `The recording is longer than ${Math.round(seconds / 60)} minutes: I heard the first ${Math.round(seconds / 60)}.` } : { samples: mono };
}
