import { decodeSound } from './decode/decode.ts';
import { HEARING_RATE, isRefusal } from './decode/sound.ts';
import type { HeardWord } from './doubt.ts';
import { mendHeard } from './mend/mend.ts';
import type { ModelChoice } from './model-files.ts';
import { Whisper } from './model.ts';
import { cutSegments } from './segments.ts';
import { SpeechDetector } from './speech.ts';
import { expectNames, transcribe, type Transcript } from './transcribe.ts';

/** What was heard in one recording. */
export interface Hearing {
  /** The transcript, mended where it is plain what was meant. */
  text: string;
  /** The recogniser's own words. */
  raw: string;
  /** Length of the recording. */
  seconds: number;
  /** Time that hearing took, ms. */
  tookMs: number;
  /** Somebody talked. */
  speech: boolean;
  /** Ask before anything of it is written down. */
  doubtful: boolean;
  /** Words that may be wrong. */
  unsure: string[];
  /** The words that were heard over a running machine, with their scores; none in quiet. */
  overNoise: HeardWord[];
  /** A sentence for the person: why nothing could be heard, or what was left out. */
  why?: string;
  /** There was nothing to hear with: it is to be heard again when there is. */
  unheard?: true;
}

/** Milliseconds by stage, for the bench. */
export interface StageTimes {
  decode: number;
  detect: number;
  transcribe: number;
  mend: number;
}

/** How much is done, 0…1, of how many seconds of talk. */
export type Progress = (share: number, of: number) => void;

const NO_SPEECH = 'I heard no speech.';

/** One recording from bytes to words. Holds the loaded networks; use one at a time. */
export class Listener {
  /** How long the last recording spent where. */
  times: StageTimes = { decode: 0, detect: 0, transcribe: 0, mend: 0 };

  private constructor(private readonly detector: SpeechDetector, private readonly whisper: Whisper) {}

  static async load(choice: ModelChoice): Promise<Listener> {
    return new Listener(await SpeechDetector.load(), await Whisper.load(choice));
  }

  /** Never throws for what the bytes hold; `names`: see `expectNames`. */
  async listen(bytes: Uint8Array, names: string[], onProgress: Progress = () => {}): Promise<Hearing> {
    const begun = performance.now();
    this.times = { decode: 0, detect: 0, transcribe: 0, mend: 0 };
    const done = (rest: Partial<Hearing>): Hearing =>
      ({ text: '', raw: '', seconds: 0, speech: false, doubtful: false, unsure: [], overNoise: [], ...rest, tookMs: Math.round(performance.now() - begun) });
    const sound = await this.timed('decode', () => decodeSound(bytes));
    if (isRefusal(sound)) return done({ why: sound.why });
    const seconds = Math.round((sound.samples.length / HEARING_RATE) * 100) / 100;
    const { stretches } = await this.timed('detect', () => this.detector.detect(sound.samples));
    const segments = cutSegments(sound.samples, stretches);
    if (segments.length === 0) return done({ seconds, why: NO_SPEECH });
    const heard = await this.timed('transcribe', () => this.hearAll(segments, names, onProgress));
    if (heard.length === 0) return done({ seconds, why: NO_SPEECH });
    const raw = heard.map(({ text }) => text).join(' ');
    const unsure = heard.flatMap((part) => part.unsure);
    const overNoise = heard.flatMap((part) => part.overNoise);
    const mended = await this.timed('mend', async () => mendHeard(raw, names, { unsure: heard.flatMap((part) => part.poor), isCommon: this.whisper.isCommon }));
    return done({ text: mended.text, raw, seconds, speech: true, doubtful: heard.some((part) => part.trust === 'doubtful'), unsure, overNoise, why: sound.note });
  }

  async close(): Promise<void> {
    await Promise.all([this.detector.close(), this.whisper.close()]);
  }

  private async hearAll(segments: Float32Array[], names: string[], onProgress: Progress): Promise<Transcript[]> {
    const expected = expectNames(this.whisper, names);
    const heard: Transcript[] = [];
    const samples = segments.reduce((sum, { length }) => sum + length, 0);
    let done = 0;
    for (const segment of segments) {
      onProgress(done / samples, samples / HEARING_RATE);
      heard.push(await transcribe(this.whisper, segment, expected));
      done += segment.length;
    }
    onProgress(1, samples / HEARING_RATE);
    return heard.filter((part) => part.trust !== 'nothing');
  }

  private async timed<T>(stage: keyof StageTimes, act: () => Promise<T>): Promise<T> {
    const begun = performance.now();
    try {
      return await act();
    } finally {
      this.times[stage] += performance.now() - begun;
    }
  }
}
