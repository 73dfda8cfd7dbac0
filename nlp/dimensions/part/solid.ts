import { nameKey } from '../../../domain/model/names.ts';
import type { ReadContext } from '../../../domain/model/reading.ts';
import type { Token } from '../../types.ts';
import { nounClasses } from '../../words/nouns.ts';
import { knownNames } from './known.ts';

const NONE: readonly string[] = [];

/** Tokens that stand inside a name of several words that the shop or the trade has ("hit and miss engine", "take off shaft"): nouns, whatever each word is alone. */
export function solidTokens(tokens: readonly Token[], ctx: ReadContext): Set<number> {
  const out = new Set<number>();
  const parts = knownNames(ctx.parts ?? NONE), machines = knownNames(ctx.machines ?? NONE);
  for (let i = 0; i < tokens.length; i++) {
    for (let n = Math.min(5, tokens.length - i); n >= 1; n--) {
      const lows = tokens.slice(i, i + n).map(t => t.low);
      if (lows.some(l => /^[^\p{L}\p{N}]/u.test(l))) continue;
      if (/^(the|a|an|my|his|her|its|our|that|this|of|some)$/.test(lows[0]!) || n > 1 && /^(the|a|an|of|one|that|this|these|those|my|his|her|its|our|some)$/.test(lows[n - 1]!)) continue;
      const said = lows.join(' ');
      const known = parts.exact(nameKey(said)) ?? machines.exact(nameKey(said));
      if (!known && !(n > 1 && nounClasses(said).size)) continue;
      if (n === 1 && !known) continue;
      for (let k = i; k < i + n; k++) out.add(k);
      i += n - 1;
      break;
    }
  }
  return out;
}
