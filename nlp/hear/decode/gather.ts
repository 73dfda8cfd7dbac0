import { Resampler } from './resample.ts';
import { HEARING_RATE, isRate, type Recording } from './sound.ts';

/**
 * Takes sound as a decoder gives it, piece by piece, and keeps it at the hearing rate alone: a quarter of an hour in stereo at 48 kHz would
 * take 350 MB.
 */
export class Gathered {
  private readonly lanes: Resampler[] = [];
  private rate = 0;
  private got = 0;

  /** `seconds`: no more than this is kept. */
  constructor(private readonly seconds: number) {}

  /** One piece, channel by channel. False when there is enough. */
  add(channels: Float32Array[], rate: number): boolean {
    const length = channels[0]?.length ?? 0;
    if (length === 0) return true;
    this.rate ||= rate;
    if (!isRate(this.rate)) return false;
    if (this.lanes.length === 0) this.lanes.push(...channels.map(() => new Resampler(this.rate, HEARING_RATE)));
    const most = Math.floor(this.seconds * this.rate);
    const left = Math.max(0, most - this.got);
    for (const [i, lane] of this.lanes.entries()) lane.add((channels[i] ?? channels[0]!).subarray(0, left));
    this.got += length;
    return this.got <= most;
  }

  /** Nothing was decoded yet. */
  get empty(): boolean {
    return this.got === 0 && this.rate === 0;
  }

  end(): Recording {
    return { channels: this.lanes.map((lane) => lane.end()), rate: this.rate, more: this.got > Math.floor(this.seconds * this.rate) };
  }
}
