import { OggOpusDecoder } from 'ogg-opus-decoder';
import { Gathered } from './gather.ts';
import type { Recording, Refusal } from './sound.ts';

const OPUS_RATE = 48_000;
/** Bytes handed over at once: small enough that a very long file can be left off soon after the limit. */
const PIECE = 64 * 1024;

/** Opus in Ogg (RFC 7845), as chats send voice notes, up to `seconds`. A file that is cut short gives what is there. */
export async function decodeOggOpus(bytes: Uint8Array, seconds: number): Promise<Recording | Refusal> {
  const decoder = new OggOpusDecoder();
  const sound = new Gathered(seconds);
  try {
    await decoder.ready;
    let more = true;
    for (let at = 0; at < bytes.length && more; at += PIECE) {
      more = sound.add((await decoder.decode(bytes.subarray(at, at + PIECE))).channelData, OPUS_RATE);
    }
    if (more) sound.add((await decoder.flush()).channelData, OPUS_RATE);
  } catch {
    if (sound.empty) return { why: 'This voice note is damaged and I could not open it.' };
  } finally {
    decoder.free();
  }
  return sound.end();
}
