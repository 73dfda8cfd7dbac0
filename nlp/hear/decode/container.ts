import { ALL_FORMATS, BufferSource, EncodedPacketSink, Input, type InputAudioTrack } from 'mediabunny';
import { OpusDecoder } from 'opus-decoder';
import { joinPieces, type Recording, type Refusal } from './sound.ts';

const OPUS_RATE = 48_000;

/** Decodes the packets of one Opus track until there are more than `most` samples. */
async function decodePackets(track: InputAudioTrack, most: number): Promise<{ pieces: Float32Array[][]; got: number }> {
  const decoder = new OpusDecoder();
  const pieces: Float32Array[][] = [];
  let got = 0;
  try {
    await decoder.ready;
    for await (const packet of new EncodedPacketSink(track).packets()) {
      const { channelData, samplesDecoded } = decoder.decodeFrame(packet.data);
      if (samplesDecoded === 0) continue;
      pieces.push(channelData);
      got += samplesDecoded;
      if (got > most) break;
    }
  } catch (error) {
    // A page that was closed while it recorded leaves a last packet cut off: what came before it is good.
    if (got === 0) throw error;
  } finally {
    decoder.free();
  }
  return { pieces, got };
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
    const most = seconds * OPUS_RATE;
    const { pieces, got } = await decodePackets(track, most);
    return { channels: joinPieces(pieces, most), rate: OPUS_RATE, more: got > most };
  } catch {
    return { why: 'This recording is damaged and I could not open it.' };
  } finally {
    input.dispose();
  }
}
