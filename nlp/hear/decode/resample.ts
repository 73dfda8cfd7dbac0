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
 * Changes the sampling rate by a polyphase windowed-sinc filter: linear phase, no delay, unit gain at 0 Hz.
 * `from` and `to` are whole Hz. Gives round(length · to / from) samples.
 */
export function resample(samples: Float32Array, from: number, to: number): Float32Array {
  if (from === to) return samples;
  const divisor = greatestCommonDivisor(from, to);
  const up = to / divisor;
  const down = from / divisor;
  const half = 2 * Math.ceil((HALF_TAPS * Math.max(1, from / to)) / 2);
  const cutoff = CUTOFF * Math.min(1, to / from);
  const phases = Math.min(up, MOST_PHASES);
  const rows = new Array<Float64Array | undefined>(phases + 1);
  const out = new Float32Array(Math.round((samples.length * to) / from));
  for (let n = 0; n < out.length; n++) {
    const centre = Math.floor((n * down) / up);
    const phase = Math.round((((n * down) % up) / up) * phases);
    const row = (rows[phase] ??= taps(phase / phases, half, cutoff));
    const inside = centre >= half && centre + half < samples.length;
    out[n] = inside && phase === 0 ? foldedAt(samples, centre, row, half) : filteredAt(samples, centre, row, half);
  }
  return out;
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
