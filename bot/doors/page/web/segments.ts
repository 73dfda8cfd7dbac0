import { joined } from './wav.ts';

/** How speech is cut out of what the microphone hears, in milliseconds. A recogniser hears at most 30 s at a time, so a piece ends before that. */
const STARTS_AT = 0.5;
const STOPS_AT = 0.35;
const BEFORE = 500;
const PAUSE = 900;
/** Once a piece is this long, a short breath is a good place to cut. */
const LONG = 18_000;
const BREATH = 250;
const LONGEST = 28_000;
const LEAST_SPEECH = 250;

interface Segments {
  /** True while a piece is being gathered. */
  readonly speaking: boolean;
  /** Takes the next frame and how likely it is speech (0 to 1). Gives the piece that ended with it, if one did. */
  frame(samples: Float32Array, likely: number): Float32Array | undefined;
  /** Ends the piece at hand. */
  end(): Float32Array | undefined;
}

/** Cuts a run of frames into pieces of speech of under 30 s, at pauses where there are any. `rate`: samples a second. */
export function segments(rate: number): Segments {
  let lead: Float32Array[] = [];
  let piece: Float32Array[] | undefined;
  let length = 0, voiced = 0, quiet = 0;
  const begin = (frames: Float32Array[]) => { piece = frames; length = frames.reduce((n, f) => n + f.length, 0); voiced = 0; quiet = 0; };
  const ms = (samples: number) => (samples / rate) * 1000;
  const finish = () => {
    const done = piece && ms(voiced) >= LEAST_SPEECH ? joined(piece) : undefined;
    piece = undefined;
    return done;
  };
  return {
    get speaking() { return piece !== undefined; },
    frame(samples, likely) {
      if (!piece) {
        lead.push(samples);
        while (ms(lead.reduce((n, f) => n + f.length, 0)) > BEFORE) lead.shift();
        if (likely < STARTS_AT) return undefined;
        begin(lead);
        lead = [];
      } else {
        piece.push(samples);
        length += samples.length;
      }
      if (likely >= STARTS_AT) voiced += samples.length;
      if (likely < STOPS_AT) quiet += samples.length; else quiet = 0;
      if (ms(length) >= LONGEST) { const done = finish(); begin([]); return done; }
      return ms(quiet) >= (ms(length) >= LONG ? BREATH : PAUSE) ? finish() : undefined;
    },
    end: finish,
  };
}
