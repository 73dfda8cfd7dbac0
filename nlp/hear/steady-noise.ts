import type { Powers } from './features.ts';

/** A band's quiet and loud moments: the tenth part of its frames that is quietest, and the tenth that is loudest. */
const QUIET = 0.1;
const LOUD = 0.9;
/**
 * A voice in a room stands this far above the room (log10 of power, over all bands), else a machine runs. Measured: people and
 * voices without noise 34–47 dB, workshop noise at 20 dB under the voice 19–25, at 10 dB 15–18, at 5 dB 14–15.
 */
const NOISY = 2.6;
/** The quietest moments of a noise lie under its mean; this much (1.5 dB) is made up for, with care. */
const UNDER_MEAN = 0.15;
/** No band and moment is taken down by more than 10 dB: what is cut out altogether leaves chirps that are heard as words. */
const LEAST_GAIN = 0.1;

const bandsOf = ({ logs, frames }: Powers) => logs.length / frames;

/** Levels of a band in the order of their loudness. */
const sortedBand = ({ logs, frames, sounding }: Powers, band: number) => logs.slice(band * frames, band * frames + sounding).sort();
const share = (sorted: Float32Array, part: number) => sorted[Math.floor(part * sorted.length)] ?? 0;

/** True when something runs under the voice. */
export function isNoisy(powers: Powers): boolean {
  const bands = bandsOf(powers);
  let apart = 0;
  for (let b = 0; b < bands; b++) {
    const sorted = sortedBand(powers, b);
    apart += share(sorted, LOUD) - share(sorted, QUIET);
  }
  return powers.sounding > 0 && apart / bands < NOISY;
}

/**
 * The same sound with what is always there taken down: from each band its steady level, known from its quiet moments, is subtracted
 * (spectral subtraction, Boll 1979, with the noise estimated by quantiles, Stahl and others 2000). More than this spoils more than
 * it mends, for the recogniser learnt from noisy sound.
 */
export function withoutSteadyNoise(powers: Powers): Powers {
  const { frames, sounding } = powers;
  const logs = powers.logs.slice();
  const gains = new Float32Array(sounding);
  for (let b = 0; b < bandsOf(powers); b++) {
    const noise = share(sortedBand(powers, b), QUIET) + UNDER_MEAN;
    for (let f = 0; f < sounding; f++) gains[f] = Math.max(LEAST_GAIN, 1 - 10 ** (noise - logs[b * frames + f]!));
    for (let f = 0; f < sounding; f++) logs[b * frames + f]! += Math.log10(aroundMean(gains, f));
  }
  return { ...powers, logs };
}

/** Mean of a frame's gain and its neighbours': single frames that stick out are the chirps of this method. */
function aroundMean(gains: Float32Array, at: number): number {
  const around = gains.subarray(Math.max(0, at - 1), at + 2);
  let sum = 0;
  for (const gain of around) sum += gain;
  return sum / around.length;
}
