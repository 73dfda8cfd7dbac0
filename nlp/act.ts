import type { Ask } from '../domain/model/ask.ts';
import type { Entry } from '../domain/model/entry.ts';
import type { Reading } from '../domain/model/reading.ts';
import type { Sheet } from './types.ts';

const ACTS: readonly (readonly [RegExp, NonNullable<Reading['act']>])[] = [
  [/^(more|show more|next page|next|go on|carry on|and the rest|the rest|what else|keep going)$/, 'more'],
  [/^(longer|in full|tell me more|more detail|details|the long version|say more|why)$/, 'longer'],
  [/^(undo|scratch that|strike that|undo that|delete that|forget that|scrap that|cancel that|take that back|never mind that)$/, 'undo'],
  [/^(yes|yeah|yep|yup|aye|correct|that's right|right|sure|ok|okay)$/, 'yes'],
  [/^(no|nope|nah|neither|none)$/, 'no'],
  [/^(keep that|keep it|keep|leave it|that's fine|it's fine|keep it anyway|log it anyway|yes keep it)$/, 'keep'],
  [/^(help|what can you do|what can i say|how does this work|commands)$/, 'help'],
];

/** An act on the conversation itself, where the whole note is one: "more", "scratch that", a bare yes or no. */
export function actOf(sheet: Sheet, entries: readonly Entry[], asks: readonly Ask[]): Reading['act'] | undefined {
  if (asks.length || entries.some(e => e.kind !== 'amend' && e.kind !== 'remark')) return undefined;
  const words = sheet.text.toLowerCase().replace(/[’‘]/g, "'").replace(/^(?:no|oh|sorry|please|okay|ok),? (?=\w)/, m => (/^(no|ok|okay)/.test(m) ? m : '')).replace(/[.!?,]+/g, '').replace(/\bplease\b/g, '').trim();
  return ACTS.find(([re]) => re.test(words))?.[1];
}
