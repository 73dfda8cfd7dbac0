/** The containers that are told apart by their first bytes; a file's name and declared type are not believed. */
export type SoundKind = 'ogg-opus' | 'ogg-other' | 'matroska' | 'wav' | 'mp3' | 'mp4' | 'adts' | 'flac' | 'amr' | 'aiff';

const ascii = (bytes: Uint8Array, from: number, to: number) => String.fromCharCode(...bytes.subarray(from, to));

/**
 * Says what a file is by its magic bytes (RFC 3533 Ogg, RFC 7845 Opus in Ogg, RFC 8794 EBML, RIFF/WAVE, ISO/IEC 14496-12
 * `ftyp`, ISO/IEC 11172-3 frame header, RFC 9639 FLAC, RFC 4867 AMR). `undefined`: none of these.
 */
export function sniffSound(bytes: Uint8Array): SoundKind | undefined {
  const head = ascii(bytes, 0, 12);
  if (head.startsWith('OggS')) return ascii(bytes, 0, 128).includes('OpusHead') ? 'ogg-opus' : 'ogg-other';
  if (bytes[0] === 0x1a && bytes[1] === 0x45 && bytes[2] === 0xdf && bytes[3] === 0xa3) return 'matroska';
  if (head.startsWith('RIFF') && head.endsWith('WAVE')) return 'wav';
  if (head.startsWith('fLaC')) return 'flac';
  if (head.startsWith('#!AMR')) return 'amr';
  if (head.startsWith('FORM') && ascii(bytes, 8, 11) === 'AIF') return 'aiff';
  if (head.slice(4, 8) === 'ftyp') return 'mp4';
  if (head.startsWith('ID3')) return 'mp3';
  // 11 bits of sync, then version and layer: layer 00 is not MPEG audio but AAC in ADTS.
  if (bytes[0] === 0xff && (bytes[1]! & 0xe0) === 0xe0) return (bytes[1]! & 0x06) === 0 ? 'adts' : 'mp3';
  return undefined;
}
