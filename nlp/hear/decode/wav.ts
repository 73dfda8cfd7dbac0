import { Gathered } from './gather.ts';
import type { Recording, Refusal } from './sound.ts';

interface Format {
  code: number;
  channels: number;
  rate: number;
  bits: number;
}

/** Frames taken at once. */
const PIECE = 64 * 1024;

type ReadSample = (view: DataView, at: number) => number;

/** Integer samples of 8 (unsigned), 16, 24, 32 bits (code 1), floats of 32, 64 bits (code 3). */
function sampleReader({ code, bits }: Format): ReadSample | undefined {
  if (code === 1 && bits === 8) return (view, at) => (view.getUint8(at) - 128) / 128;
  if (code === 1 && bits === 16) return (view, at) => view.getInt16(at, true) / 32_768;
  if (code === 1 && bits === 24) return (view, at) => (view.getInt8(at + 2) * 65_536 + view.getUint16(at, true)) / 8_388_608;
  if (code === 1 && bits === 32) return (view, at) => view.getInt32(at, true) / 2_147_483_648;
  if (code === 3 && bits === 32) return (view, at) => finite(view.getFloat32(at, true));
  if (code === 3 && bits === 64) return (view, at) => finite(view.getFloat64(at, true));
  return undefined;
}

const finite = (value: number) => (Number.isFinite(value) ? Math.max(-1, Math.min(1, value)) : 0);

/** `fmt ` chunk; 0xFFFE ("extensible") names the real code in the first two bytes of its sub-format. */
function readFormat(view: DataView, at: number, size: number): Format | undefined {
  if (size < 16 || at + size > view.byteLength) return undefined;
  const code = view.getUint16(at, true);
  return {
    code: code === 0xfffe && size >= 26 ? view.getUint16(at + 24, true) : code,
    channels: view.getUint16(at + 2, true),
    rate: view.getUint32(at + 4, true),
    bits: view.getUint16(at + 14, true),
  };
}

/** Where format and samples lie. A data size of 0 or past the end (a recorder that was cut off) means: to the end. */
function findChunks(view: DataView): { format?: Format; from?: number; to?: number } {
  const found: { format?: Format; from?: number; to?: number } = {};
  for (let at = 12; at + 8 <= view.byteLength; ) {
    const name = view.getUint32(at, false);
    const size = view.getUint32(at + 4, true);
    if (name === 0x666d7420) found.format = readFormat(view, at + 8, size);
    if (name === 0x64617461) {
      found.from = at + 8;
      found.to = size === 0 ? view.byteLength : Math.min(view.byteLength, at + 8 + size);
      break;
    }
    at += 8 + size + (size % 2);
  }
  return found;
}

/** Reads RIFF/WAVE ("Multimedia Programming Interface and Data Specifications 1.0", 1991), up to `seconds`. */
export function decodeWav(bytes: Uint8Array, seconds: number): Recording | Refusal {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { format, from, to } = findChunks(view);
  if (!format || from === undefined || to === undefined) return { why: 'This WAV file is damaged: its header is incomplete.' };
  const read = sampleReader(format);
  if (!read || format.channels < 1 || format.channels > 16) {
    return { why: `This WAV file holds a form of sound I can't read (code ${format.code}, ${format.bits} bits, ${format.channels} channels).` };
  }
  const width = format.bits / 8;
  const frames = Math.floor((to - from) / (width * format.channels));
  const sound = new Gathered(seconds);
  for (let first = 0, at = from, more = true; first < frames && more; first += PIECE) {
    const channels = Array.from({ length: format.channels }, () => new Float32Array(Math.min(PIECE, frames - first)));
    for (let i = 0; i < channels[0]!.length; i++) {
      for (let c = 0; c < format.channels; c++, at += width) channels[c]![i] = read(view, at);
    }
    more = sound.add(channels, format.rate);
  }
  return sound.end();
}
