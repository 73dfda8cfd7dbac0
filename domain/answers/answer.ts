import type { Answer } from '../model/answer.ts';
import type { Ask } from '../model/ask.ts';
import type { Past } from '../log/past.ts';
import type { Shop } from '../log/shop.ts';

/** The moment of the question: ISO with offset, and the person's zone by its IANA name. */
export interface Now { at: string; zone: string }

/** What an answer may need beside the state: the chat's current machine, what was said word for word, money a mile driven costs. */
export interface More { past: Past; machine?: string; mileRate?: number }

/** The asks answered from the log; sums are worked out elsewhere. */
export type LogAsk = Exclude<Ask, { kind: 'sum' }>;

export function answer(_shop: Shop, ask: LogAsk, _now: Now, _more: More): Answer {
  throw new Error(`no answer yet to ${ask.kind}`);
}
