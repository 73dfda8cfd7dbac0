import { HEARING_RATE } from './decode/sound.ts';
import type { Stretch } from './speech.ts';

/** The recogniser takes 30 s at once; the cut leaves a little room. */
const LONGEST = 28 * HEARING_RATE;
/** Sound kept around a stretch of speech: soft beginnings and ends of words. */
const MARGIN = Math.round(0.3 * HEARING_RATE);

/**
 * Cuts a recording into pieces for the recogniser: each shorter than 30 s, cut at pauses, with long pauses between
 * stretches taken out (what is not speech only invites it to invent).
 */
export function cutSegments(samples: Float32Array, stretches: Stretch[]): Float32Array[] {
  const segments: Stretch[][] = [];
  let size = 0;
  for (const stretch of widen(stretches.flatMap(halve), samples.length)) {
    const length = stretch.to - stretch.from;
    if (segments.length === 0 || size + length > LONGEST) {
      segments.push([]);
      size = 0;
    }
    segments.at(-1)!.push(stretch);
    size += length;
  }
  return segments.map((parts) => joinParts(samples, parts));
}

/** Somebody who talks for half a minute without a pause is cut all the same. */
function halve(stretch: Stretch): Stretch[] {
  const count = Math.ceil((stretch.to - stretch.from) / (LONGEST - 2 * MARGIN));
  const step = Math.ceil((stretch.to - stretch.from) / count);
  return Array.from({ length: count }, (_, i) => ({ from: stretch.from + i * step, to: Math.min(stretch.to, stretch.from + (i + 1) * step) }));
}

/** Adds the margins; neighbours that then touch become one, unless that made them too long. */
function widen(stretches: Stretch[], length: number): Stretch[] {
  const wide: Stretch[] = [];
  for (const { from, to } of stretches) {
    const next = { from: Math.max(0, from - MARGIN), to: Math.min(length, to + MARGIN) };
    const last = wide.at(-1);
    if (last && next.from <= last.to && next.to - last.from <= LONGEST) last.to = next.to;
    else wide.push(last ? { ...next, from: Math.max(next.from, last.to) } : next);
  }
  return wide;
}

function joinParts(samples: Float32Array, parts: Stretch[]): Float32Array {
  const joined = new Float32Array(parts.reduce((sum, { from, to }) => sum + to - from, 0));
  let at = 0;
  for (const { from, to } of parts) {
    joined.set(samples.subarray(from, to), at);
    at += to - from;
  }
  return joined;
}
