/** What every decoder gives: channels as they are in the file, samples in −1…1, at `HEARING_RATE`; `rate` is the file's own (Hz). */
export interface Recording {
  channels: Float32Array[];
  rate: number;
  /** True when the file held more than was asked for. */
  more: boolean;
}

/** A recording that can't be used, in a sentence for the person. */
export interface Refusal {
  why: string;
}

/** The rate that the recogniser and the speech detector were made for, Hz. */
export const HEARING_RATE = 16_000;

/** A rate that a recording can have, Hz. */
export const isRate = (rate: number): boolean => rate >= 4_000 && rate <= 384_000;

/** Nobody talks longer into one note; beyond this the decoded sound would fill the memory of a small machine. */
export const LONGEST_SECONDS = 15 * 60;

export function isRefusal(value: object): value is Refusal {
  return 'why' in value;
}

/** One channel out of several. A pair in opposite phase would cancel: then the stronger channel alone is taken. */
export function toMono(channels: Float32Array[]): Float32Array {
  const first = channels[0] ?? new Float32Array(0);
  if (channels.length < 2) return first;
  const mono = new Float32Array(first.length);
  for (const channel of channels) {
    for (let i = 0; i < mono.length; i++) mono[i]! += (channel[i] ?? 0) / channels.length;
  }
  const loudest = channels.reduce((a, b) => (power(b) > power(a) ? b : a));
  return power(mono) < power(loudest) / 20 ? loudest : mono;
}

/** Mean square of the samples; 0 for none. */
function power(samples: Float32Array): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += samples[i]! * samples[i]!;
  return samples.length ? sum / samples.length : 0;
}

/** Joins pieces that a decoder gave one after another, channel by channel, up to `most` samples. */
export function joinPieces(pieces: Float32Array[][], most: number): Float32Array[] {
  const channels = Math.max(0, ...pieces.map((piece) => piece.length));
  const total = Math.min(most, pieces.reduce((sum, piece) => sum + (piece[0]?.length ?? 0), 0));
  return Array.from({ length: channels }, (_, channel) => {
    const joined = new Float32Array(total);
    let at = 0;
    for (const piece of pieces) {
      const samples = (piece[channel] ?? piece[0])!.subarray(0, total - at);
      joined.set(samples, at);
      at += samples.length;
    }
    return joined;
  });
}
