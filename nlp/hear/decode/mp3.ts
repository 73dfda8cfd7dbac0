import { MPEGDecoder } from 'mpg123-decoder';
import { joinPieces, type Recording, type Refusal } from './sound.ts';

/** Bytes handed over at once, so that a very long file can be left off soon after the limit. */
const PIECE = 64 * 1024;

/** MPEG-1/2 layer III (ISO/IEC 11172-3), up to `seconds`. */
export async function decodeMp3(bytes: Uint8Array, seconds: number): Promise<Recording | Refusal> {
  const decoder = new MPEGDecoder();
  const pieces: Float32Array[][] = [];
  let got = 0;
  let rate = 0;
  try {
    await decoder.ready;
    for (let at = 0; at < bytes.length && (rate === 0 || got <= seconds * rate); at += PIECE) {
      const part = decoder.decode(bytes.subarray(at, at + PIECE));
      if (part.samplesDecoded === 0) continue;
      rate = part.sampleRate;
      pieces.push(part.channelData);
      got += part.samplesDecoded;
    }
  } catch {
    if (got === 0) return { why: 'This MP3 file is damaged and I could not open it.' };
  } finally {
    decoder.free();
  }
  if (got === 0) return { why: 'I found no sound in this MP3 file.' };
  return { channels: joinPieces(pieces, Math.floor(seconds * rate)), rate, more: got > seconds * rate };
}
