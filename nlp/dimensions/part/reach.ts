import type { Token } from '../../types.ts';
import { longestFrom } from '../../words/nouns.ts';
import type { KnownNames } from './known.ts';

/** More words than this for one name are none. */
const LONGEST = 5;

/** The most tokens from `at` that may be one name of the shop's or the trade's: none of more need be looked up. */
export function nameReach(tokens: readonly Token[], at: number, parts: KnownNames, machines: KnownNames): number {
  const most = Math.min(LONGEST, tokens.length - at);
  const known = (names: KnownNames): number => { let n = 0; while (n < most && names.mayHold(tokens[at + n]!.low)) n++; return n; };
  return Math.max(known(parts), known(machines), Math.min(most, longestFrom(tokens[at]!.low)));
}
