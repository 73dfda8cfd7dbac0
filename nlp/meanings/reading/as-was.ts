import type { Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import { lowText, type Telling } from '../telling.ts';

const NEAR = /\b(came apart|how it (was|came|sat|went)|write that down|as (found|removed|it was|they were|it came|received|bought)|when (i|it) (pulled|took|came|stripped)|before (i|we) (took|pulled|had|stripped|touched))\b/;
const AS_WAS = /\bas (removed|received|bought)\b|\bbefore (i |we )?(teardown|strip|stripping|strip-down|dismantl\w+|stripped|i stripped)\b|\b(when (it|i|they|that|she) (came|pulled|took|had|was)|before (i|it|we|they) (took|pulled|came|had|stripped|tore|split|touched|opened|started|dismantled|got into)|when (i|we) (opened|stripped|split|dismantled|got it|got this)|when it was (dismantled|opened|stripped|taken)|came apart|as it came|as found|how it (was|came|sat|went)|originally|was (set|shimmed)|used to|as-was|before (strip|teardown|dismantling|disassembly|taking|pulling)\w*|on strip ?down|when .{0,20} apart|had .* (under|behind|in|on) (it|them)|write that down|(there )?(was|were) \w+ .{0,30}(under|behind|between)|as it was|as they were|off the old)\b/;

/** Whether a clause says how things were before they came apart: by its own words, by those that go on from it, or by a heading or a "that's how it came apart" beside it. */
export function asWas(t: Telling, c: Clause): boolean {
  const text = opened(t, c), place = (c as Placed).sentence;
  if (/\bnow\b/.test(text)) return false;
  if (AS_WAS.test(text)) return true;
  const after = t.clauses[t.at + 1], beyond = t.clauses[t.at + 2];
  if ([after, beyond].some(x => x?.sub !== undefined && !x.asks && (x as Placed).sentence === place && AS_WAS.test(opened(t, x)))) return true;
  return t.clauses.some((x, k) => x !== c && !x.asks && Math.abs(k - t.at) <= 3 && Math.abs((x as Placed).sentence - place) <= 1 && ((x as Placed).sentence === place || remarkOnly(t, x)) && NEAR.test(opened(t, x)));
}
/** The words of a clause with the one that opens it ("when", "before", "as"), which its own stretch leaves out. */
const opened = (t: Telling, c: Clause): string => `${c.sub ? `${c.sub} ` : ''}${lowText(t, c)}`;
/** "shims as found.", "that's how it came apart": a sentence that only says when the figures beside it were so. */
const remarkOnly = (t: Telling, c: Clause): boolean => !/\d|\b(one|two|three|four|five|six|seven|eight|nine|ten)\b/.test(lowText(t, c));
