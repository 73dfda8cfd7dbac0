import type { Ask } from '../../domain/model/ask.ts';
import type { Answer } from '../../domain/model/answer.ts';
import type { ReadContext, Reading } from '../../domain/model/reading.ts';
import type { Log } from '../../domain/log/keeper.ts';
import type { ShopWeather } from '../weather/shop-weather.ts';

/** What a turn works with; everything else it needs comes in with the message. */
export interface Deps {
  log: Log;
  /** The shop's zone by its IANA name. */
  zone: string;
  read: (text: string, ctx: ReadContext) => Reading;
  /** Asks that take longer than a breath: they are handed out, and their answer leaves when it is done. */
  handsOut?: (ask: Ask) => boolean;
  /** The forecast, where the person chose to have one fetched. */
  weather?: ShopWeather;
  /** Answers that need more than the log. Undefined: not mine. */
  elsewhere?: (ask: Ask, at: string) => Answer | undefined;
  /** The speech models, where the program that hears is this one. `setByHand`: the environment says which to use. */
  models?: { setByHand: boolean; isHere(model: string): boolean };
  /** Told of broken machinery in reading; the note is kept all the same. */
  onFault?: (error: unknown) => void;
}
