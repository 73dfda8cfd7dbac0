import { MPEGDecoder } from 'mpg123-decoder';
import { Gathered } from './gather.ts';
import type { Recording, Refusal } from './sound.ts';

/** Bytes handed over at once, so that a very long file can be left off soon after the limit. */
const PIECE = 64 * 1024;

/** MPEG-1/2 layer III (ISO/IEC 11172-3), up to `seconds`. */
export async function decodeMp3(bytes: Uint8Array, seconds: number): Promise<Recording | Refusal> {
  const decoder = new MPEGDecoder();
  const sound = new Gathered(seconds);
  try {
    await decoder.ready;
    for (let at = 0, more = true; at < bytes.length && more; at += PIECE) {
      const { channelData, sampleRate } = decoder.decode(bytes.subarray(at, at + PIECE));
      more = sound.add(channelData, sampleRate);
    }
  } catch {
    if (sound.empty) return { why: 'This MP3 file is damaged and I could not open it.' };
  } finally {
    decoder.free();
  }
  if (sound.empty) return { why: 'I found no sound in this MP3 file.' };
  return sound.end();
}
