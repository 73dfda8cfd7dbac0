import { joinPieces } from './sound.ts';

/** Half the filter, in samples of the slower of the two rates. Longer is steeper and slower. */
const HALF_TAPS = 32;
/** Kaiser window: 8 keeps what lies past the band about 80 dB down (Kaiser 1974, β = 0.1102 (A − 8.7)). */
const BETA = 8;
/** Centre of the filter's slope, as a share of the slower rate: it starts to fall at 7.1 of 8 kHz and is shut by 8.1. */
const CUTOFF = 0.475;
/** Odd rates would need a table row for every output sample; past this many the nearest row is taken. */
const MOST_PHASES = 1024;

/** Zeroth-order modified Bessel function of the first kind, by its power series. */
function bessel0(x: number): number {
  let sum = 1;
  for (let k = 1, term = 1; term > 1e-12 * sum; k++) {
    term *= (x / 2 / k) ** 2;
    sum += term;
  }
  return sum;
}

/** One row of taps: the windowed sinc seen from an output sample that lies `shift` input samples after an input sample. */
function taps(shift: number, half: number, cutoff: number): Float64Array {
  const row = new Float64Array(2 * half + 1);
  let sum = 0;
  for (let i = -half; i <= half; i++) {
    const t = i - shift;
    const u = t / (half + 1);
    const sinc = t === 0 ? 2 * cutoff : Math.sin(2 * Math.PI * cutoff * t) / (Math.PI * t);
    const value = Math.abs(u) >= 1 ? 0 : (sinc * bessel0(BETA * Math.sqrt(1 - u * u))) / bessel0(BETA);
    row[i + half] = value;
    sum += value;
  }
  return row.map((value) => value / sum);
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/**
 * Changes the sampling rate of sound that comes in pieces, by a polyphase windowed-sinc filter: linear phase, no delay, unit gain at 0 Hz.
 * `from` and `to` are whole Hz. Of `n` samples in all it makes round(n · to / from).
 */
export class Resampler {
  private readonly up: number;
  private readonly down: number;
  private readonly half: number;
  private readonly cutoff: number;
  private readonly rows: (Float64Array | undefined)[];
  private readonly made: Float32Array[][] = [];
  /** Input that later output still looks at, and the number of its first sample. */
  private held: Float32Array = new Float32Array(0);
  private heldFrom = 0;
  private next = 0;

  constructor(private readonly from: number, private readonly to: number) {
    const divisor = greatestCommonDivisor(from, to);
    this.up = to / divisor;
    this.down = from / divisor;
    // Even, since the taps of a side are taken in pairs.
    this.half = 2 * Math.ceil((HALF_TAPS * Math.max(1, from / to)) / 2);
    this.cutoff = CUTOFF * Math.min(1, to / from);
    this.rows = new Array<Float64Array | undefined>(Math.min(this.up, MOST_PHASES) + 1);
  }

  add(piece: Float32Array): void {
    if (this.from === this.to) { this.made.push([piece.slice()]); return; }
    const samples = new Float32Array(this.held.length + piece.length);
    samples.set(this.held);
    samples.set(piece, this.held.length);
    const known = this.heldFrom + samples.length;
    // Every output whose filter ends before what is not known yet.
    this.make(samples, Math.max(this.next, Math.ceil(((known - this.half) * this.up) / this.down)));
    const keep = Math.max(0, Math.min(samples.length, this.centre(this.next) - this.half - this.heldFrom));
    this.held = samples.slice(keep);
    this.heldFrom += keep;
  }

  /** The whole of it; nothing can be added after. */
  end(): Float32Array {
    if (this.from !== this.to) this.make(this.held, Math.round(((this.heldFrom + this.held.length) * this.to) / this.from));
    return joinPieces(this.made, Infinity)[0] ?? new Float32Array(0);
  }

  private centre(n: number): number {
    return Math.floor((n * this.down) / this.up);
  }

  private make(samples: Float32Array, until: number): void {
    const { up, down, half, cutoff, rows } = this;
    const phases = rows.length - 1;
    const out = new Float32Array(Math.max(0, until - this.next));
    for (let i = 0; i < out.length; i++) {
      const n = this.next + i;
      const centre = this.centre(n) - this.heldFrom;
      const phase = Math.round((((n * down) % up) / up) * phases);
      const row = (rows[phase] ??= taps(phase / phases, half, cutoff));
      const inside = centre >= half && centre + half < samples.length;
      out[i] = inside && phase === 0 ? foldedAt(samples, centre, row, half) : filteredAt(samples, centre, row, half);
    }
    this.next += out.length;
    this.made.push([out]);
  }
}

/** A whole recording at once. */
export function resample(samples: Float32Array, from: number, to: number): Float32Array {
  const resampler = new Resampler(from, to);
  resampler.add(samples);
  return resampler.end();
}

/** The filter seen from an input sample is the same to both sides, so each tap is multiplied once for the two (48 → 16 kHz is all of this kind). */
function foldedAt(samples: Float32Array, centre: number, row: Float64Array, half: number): number {
  // Two sums side by side: one alone would wait at every step for its own last addition.
  let odd = 0;
  let even = samples[centre]! * row[half]!;
  for (let k = 1; k < half; k += 2) {
    odd += (samples[centre - k]! + samples[centre + k]!) * row[half + k]!;
    even += (samples[centre - k - 1]! + samples[centre + k + 1]!) * row[half + k + 1]!;
  }
  return odd + even;
}

/** Past both ends of the sound there is silence. */
function filteredAt(samples: Float32Array, centre: number, row: Float64Array, half: number): number {
  const first = Math.max(0, centre - half);
  const last = Math.min(samples.length - 1, centre + half);
  let sum = 0;
  for (let i = first, k = first - centre + half; i <= last; i++, k++) sum += samples[i]! * row[k]!;
  return sum;
}
