import { nameKey } from '../../../domain/model/names.ts';
import type { ReadContext } from '../../../domain/model/reading.ts';
import { isNumberWord } from '../../text/number-words.ts';
import type { Token } from '../../types.ts';
import { CONDITION } from '../../words/conditions.ts';
import { AUX_BE, AUX_HAVE } from '../../words/grammar.ts';
import { nounClasses } from '../../words/nouns.ts';
import { verbForms } from '../../words/verbs.ts';
import { knownNames } from './known.ts';
import { nameReach } from './reach.ts';

const NONE: readonly string[] = [];

/** Tokens that stand inside a name of several words that the shop or the trade has ("hit and miss engine", "take off shaft"): nouns, whatever each word is alone. */
export function solidTokens(tokens: readonly Token[], ctx: ReadContext): Set<number> {
  const out = new Set<number>();
  const parts = knownNames(ctx.parts ?? NONE), machines = knownNames(ctx.machines ?? NONE);
  for (let i = 0; i < tokens.length; i++) {
    for (let n = Math.max(nameReach(tokens, i, parts, machines), DEED.test(tokens[i]!.low) && i + 1 < tokens.length ? 2 : 0); n >= 1; n--) {
      const lows = tokens.slice(i, i + n).map(t => t.low);
      if (lows.some(l => /^[^\p{L}\p{N}]/u.test(l))) continue;
      if (/^(the|a|an|my|his|her|its|our|that|this|of|some)$/.test(lows[0]!) || n > 1 && /^(the|a|an|of|one|that|this|these|those|my|his|her|its|our|some)$/.test(lows[n - 1]!)) continue;
      const said = lows.join(' ');
      const known = parts.exact(nameKey(said)) ?? machines.exact(nameKey(said));
      if (!known && !(n > 1 && nounClasses(said).size) && !(n === 2 && namedByDeed(tokens, i))) continue;
      if (n === 1 && !known) continue;
      if (lows[n - 1] === 'back' && /^(from|home|at|on|in|where|to)$/.test(tokens[i + n]?.low ?? '')) continue; // "knife back from the saw doctor"
      for (let k = i; k < i + n; k++) out.add(k);
      i += n - 1;
      break;
    }
  }
  return out;
}

/**
 * "the take up", "four hold downs", "the cut out relay": a part named by what it does, with its particle. Only after an article or a count, and where
 * no object of the particle follows ("the pull out of the block").
 */
function namedByDeed(tokens: readonly Token[], i: number): boolean {
  const end = /^(end|side)$/.test(tokens[i + 1]!.low) && /^(drive|fan|pulley|gear|motor|pto|gearbox|flywheel|timing|brake|clutch|chain|belt|feed|discharge|intake|delivery|outlet|inlet|blind|plain|free|dead|big|small|business)$/.test(tokens[i]!.low);
  if (end && /^(ones?|of|is|was|'s|bearing|bush|seal|cover|plate|shaft|bracket|.*s)$/.test(tokens[i + 2]?.low ?? '')) return true; // "the drive end bearing"
  if (!DEED.test(tokens[i]!.low) || !/^(up|down|off|out|in|back|over|on|through|away)s?$/.test(tokens[i + 1]!.low)) return false;
  const before = tokens[i - 1]?.low ?? '', after = tokens[i + 2]?.low ?? '', more = tokens[i + 3]?.low ?? '';
  if (!/^(the|a|an|my|his|her|its|our|both|new|old|left|right|front|rear|top|bottom|upper|lower)$/.test(before) && !isNumberWord(before) || /^(it|them|that|this|the|a|an|my|to|of)$/.test(after)) return false;
  return after === '' || /^[.,;:!?]$/.test(after) || AUX_BE.has(after) || AUX_HAVE.has(after) || after === "'s" || nounClasses(after).has('part') || nounClasses(after).has('fastener') || /^(on|for|in)$/.test(after) && more !== '' || CONDITION.has(after) || verbForms(after).some(f => f.form !== 'base');
}
const DEED = /^(take|hold|kick|knock|throw|cut|lay|shut|let|pick|pull|push|draw|fold|blow|break|trip|carry|roll|tip|wind|snap|run|swing|lock|tie|drop|lead|feed|pay|bleed|trap|clip|bolt|screw|plug|stand)$/;
