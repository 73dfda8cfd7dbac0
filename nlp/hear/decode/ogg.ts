import { OggOpusDecoder } from 'ogg-opus-decoder';
import { joinPieces, type Recording, type Refusal } from './sound.ts';

const OPUS_RATE = 48_000;
/** Bytes handed over at once: small enough that a very long file can be left off soon after the limit. */
const PIECE = 64 * 1024;

/** Opus in Ogg (RFC 7845), as chats send voice notes, up to `seconds`. A file that is cut short gives what is there. */
export async function decodeOggOpus(bytes: Uint8Array, seconds: number): Promise<Recording | Refusal> {
  const decoder = new OggOpusDecoder();
  const most = seconds * OPUS_RATE;
  const pieces: Float32Array[][] = [];
  let got = 0;
  const keep = (channels: Float32Array[]) => {
    if (!channels[0]?.length) return;
    pieces.push(channels);
    got += channels[0].length;
  };
  try {
    await decoder.ready;
    for (let at = 0; at < bytes.length && got <= most; at += PIECE) {
      keep((await decoder.decode(bytes.subarray(at, at + PIECE))).channelData);
    }
    keep((await decoder.flush()).channelData);
  } catch {
    if (got === 0) return { why: 'This voice note is damaged and I could not open it.' };
  } finally {
    decoder.free();
  }
  return { channels: joinPieces(pieces, most), rate: OPUS_RATE, more: got > most };
}
