import { PowerSpectrum } from './fft.ts';

/** What the model's own feature extractor works with: its window and its mel filters [band][frequency bin]. */
interface FeatureSetting {
  window: ArrayLike<number>;
  filters: ArrayLike<number>[];
  hop: number;
  /** Frames that the encoder takes, whatever the length of the sound (3000 = 30 s). */
  frames: number;
}

/** One filter without its zeros: a band covers only a few of the 201 bins. */
interface Band {
  from: number;
  weights: Float64Array;
}

/** Log10 of the power in each band and frame, band by band. Frames from `sounding` on are the padding. */
export interface Powers {
  logs: Float32Array;
  frames: number;
  sounding: number;
}

const FLOOR = 1e-10;

function trim(filter: ArrayLike<number>): Band {
  const weights = Array.from(filter);
  const from = Math.max(0, weights.findIndex((w) => w !== 0));
  const to = weights.findLastIndex((w) => w !== 0);
  // The library multiplies in 32-bit floats; the same rounding of the weights keeps both alike.
  return { from, weights: Float64Array.from(weights.slice(from, to + 1), Math.fround) };
}

/**
 * Log-mel features exactly as the speech library makes them, but only over the sound that is there. The library pads the
 * sound with zeros to 30 s and transforms them too; what comes out of silence is one known number, so it is written
 * down instead of worked out. A test holds both equal.
 */
export class LogMel {
  private readonly bands: Band[];
  private readonly spectrum: PowerSpectrum;

  constructor(private readonly setting: FeatureSetting) {
    this.bands = setting.filters.map(trim);
    this.spectrum = new PowerSpectrum(setting.window.length);
  }

  /** `samples`: 16 kHz, at most 30 s. */
  measure(samples: Float32Array): Powers {
    const { hop, frames, window } = this.setting;
    const margin = window.length / 2;
    const sounding = Math.min(frames, Math.ceil((samples.length + margin) / hop));
    const logs = new Float32Array(this.bands.length * frames).fill(Math.log10(FLOOR));
    const frame = new Float64Array(window.length);
    const power = new Float64Array(window.length / 2 + 1);
    for (let f = 0; f < sounding; f++) {
      this.cut(samples, f * hop - margin, frame);
      this.spectrum.compute(frame, power);
      for (let b = 0; b < this.bands.length; b++) logs[b * frames + f] = Math.log10(Math.max(FLOOR, weigh(this.bands[b]!, power)));
    }
    return { logs, frames, sounding };
  }

  /** Copies one windowed frame; past the sound it is zero, and both ends of the 30 s are mirrored. */
  private cut(samples: Float32Array, start: number, frame: Float64Array): void {
    const { window, hop, frames } = this.setting;
    const last = hop * frames - 1;
    for (let i = 0; i < frame.length; i++) frame[i] = (samples[last - Math.abs(last - Math.abs(start + i))] ?? 0) * window[i]!;
  }
}

/** Powers as the model wants them: nothing further than 80 dB under the loudest. */
export function asFeatures({ logs }: Powers): Float32Array {
  let loudest = -Infinity;
  for (let i = 0; i < logs.length; i++) if (logs[i]! > loudest) loudest = logs[i]!;
  return logs.map((x) => (Math.max(x, loudest - 8) + 4) / 4);
}

function weigh({ from, weights }: Band, power: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i]! * power[from + i]!;
  return sum;
}
