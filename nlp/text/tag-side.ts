import type { Tag, Token } from '../types.ts';
import * as g from '../words/grammar.ts';
import { nounClasses } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import { lowAt, nominal } from './nominal.ts';

/** "left", "right", "back", "front", "top"…: an adjective before a noun or "one", else a particle, verb or adverb. */
export function sideTag(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag {
  const low = tokens[i]!.low, next = lowAt(tokens, i + 1), prev = tags[i - 1];
  if (low === 'left' && (prev === 'pron' && lowAt(tokens, i - 1) !== 'ones' || g.ARTICLE.has(next) || /^(it|them|him)$/.test(next) || prev === 'have' && next !== 'one')) return 'verb';
  if (low === 'left' && (prev === 'noun' || prev === 'pron' || prev === 'adv') && /^(for|this|today|yesterday|on)$/.test(next)) return 'verb';
  if (low === 'left' && prev === 'be' && !next) return 'adj';
  if (low === 'right' && (g.PREP.has(next) && next !== 'side' || /^(angry|away|now|round|so|then)$/.test(next))) return 'adv';
  if (low === 'back' && /^(one|ones|left|right|axle|wheel)$/.test(next) && (prev === undefined || prev === 'mark' || prev === 'cc' || prev === 'adj')) return 'adj';
  if (low === 'back' && prev !== 'det' && prev !== 'poss' && prev !== 'adj' && !((prev === undefined || prev === 'mark' || prev === 'cc') && nominal(tokens, i + 1, solid)) && !(nounClasses(`back ${next}`).size)) return 'prt';
  if (nominal(tokens, i + 1, solid) || SIDES.has(next) || /^(one|ones|side|hand|end|two|three|four)$/.test(next)) return 'adj';
  if (low === 'right' && lowAt(tokens, i - 1) === 'all') return 'adj'; // "seems all right"
  return prev === 'det' || prev === 'adj' || prev === 'poss' ? 'noun' : /^(front|rear|top|bottom|inside|outside)$/.test(low) && prev !== 'prep' ? 'adj' : low === 'left' || low === 'right' ? 'adj' : 'noun';
}
