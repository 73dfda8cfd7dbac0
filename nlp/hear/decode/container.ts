import { ALL_FORMATS, BufferSource, EncodedPacketSink, Input, type InputAudioTrack } from 'mediabunny';
import { OpusDecoder } from 'opus-decoder';
import { Gathered } from './gather.ts';
import type { Recording, Refusal } from './sound.ts';

const OPUS_RATE = 48_000;

/** Decodes the packets of one Opus track, up to `seconds`. */
async function decodePackets(track: InputAudioTrack, seconds: number): Promise<Recording | Refusal> {
  const decoder = new OpusDecoder();
  const sound = new Gathered(seconds);
  try {
    await decoder.ready;
    for await (const packet of new EncodedPacketSink(track).packets()) {
      if (!sound.add(decoder.decodeFrame(packet.data).channelData, OPUS_RATE)) break;
    }
  } catch (error) {
    // A page that was closed while it recorded leaves a last packet cut off: what came before it is good.
    if (sound.empty) throw error;
  } finally {
    decoder.free();
  }
  // A file that is cut off inside its only cluster opens, but gives no packet.
  return sound.empty ? { why: 'This recording is cut off or damaged: I could not get any sound out of it.' } : sound.end();
}

/** Opus in WebM/Matroska or MP4, as browsers record it, up to `seconds`. Other codecs are refused by name. */
export async function decodeContainer(bytes: Uint8Array, seconds: number): Promise<Recording | Refusal> {
  const input = new Input({ formats: ALL_FORMATS, source: new BufferSource(bytes) });
  try {
    const track = await input.getPrimaryAudioTrack();
    if (!track) return { why: 'There is no sound in this recording.' };
    if (track.codec !== 'opus') {
      return { why: `This recording is ${(track.codec ?? 'in a form I don\'t know').toUpperCase()}, which I can't decode. Please send it as Opus, WAV or MP3.` };
    }
    return await decodePackets(track, seconds);
  } catch {
    return { why: 'This recording is damaged and I could not open it.' };
  } finally {
    input.dispose();
  }
}
