import type { Entry } from '../../../domain/model/entry.ts';
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
  if (!/\bdegrees? before\b/.test(text) && /\b(was|were|had|stood|sat|ran|read|measured|showed|came)\b.* (before|previously|beforehand|originally|to (begin|start) with|at (the )?first)$/.test(text)) return true;
  if (t.clauses.slice(t.at + 1, t.at + 3).some(x => x.sub === 'before' && (x as Placed).sentence === place && takesOn(x))) return true;
  const opener = t.clauses[t.at - 1];
  if (c.join === 'and' && /\b(was|were|had)\b/.test(text) && opener?.sub && !opener.asks && (opener as Placed).sentence === place && AS_WAS.test(opened(t, opener))) return true; // "had three liners when I opened it, and the clearance was…"
  const then = t.clauses[t.at + 1];
  if (/\b(was|were)\b/.test(text) && then && (then as Placed).sentence === place && /\bnow\b/.test(opened(t, then)) && then.items.some(x => x.f && x.f.dim !== 'when')) return true; // "were 8 psi and 14, both at 12 now"
  const after = t.clauses[t.at + 1], beyond = t.clauses[t.at + 2];
  if ([after, beyond].some(x => x?.sub !== undefined && !x.asks && (x as Placed).sentence === place && AS_WAS.test(opened(t, x)))) return true;
  return t.clauses.some((x, k) => x !== c && !x.asks && Math.abs(k - t.at) <= 3 && Math.abs((x as Placed).sentence - place) <= 1 && ((x as Placed).sentence === place || remarkOnly(t, x)) && NEAR.test(opened(t, x)));
}
/** "before I unscrewed them", "before I did the brushes": what the speaker then did to it changed it. */
const takesOn = (x: Clause): boolean => /^(i|we|he|they)$/.test(x.who ?? '') && x.verb?.form === 'past' && x.pred === 'verb' && !x.neg && x.reality === 'deed' && !/^(give|quit|stop|leave|go|come|run|lose|notice|know|realise|realize|think|get|finish|fall|die|need|call|pack|knock|have|see|hear|find)$/.test(x.verb.base ?? '') && (x.obj.length > 0 || x.prt.length > 0);

/** "Plug gap 30 thou, was 18", "lifts to thirty-one, used to be forty": the figure that the one just told stands against. */
export function wasBefore(t: Telling, now: Entry, last: Entry | undefined): boolean {
  if (now.kind !== 'reading' || last?.kind !== 'reading' || last.asWas || now.part !== last.part || now.unit !== last.unit || now.what.split(' ')[0] !== last.what.split(' ')[0]) return false;
  const text = opened(t, t.clause), told = lowText(t, t.told.at(-1)!.clause);
  return /\b(was|were|wasn't|weren't|used to|had been|before|previously|originally)\b/.test(text) && !/\bnow\b/.test(text) && (!/\b(was|were)\b/.test(told) || /\bbefore\b/.test(text));
}
/** The words of a clause with the one that opens it ("when", "before", "as"), which its own stretch leaves out. */
const opened = (t: Telling, c: Clause): string => `${c.sub ? `${c.sub} ` : ''}${lowText(t, c)}`;
/** "shims as found.", "that's how it came apart": a sentence that only says when the figures beside it were so. */
const remarkOnly = (t: Telling, c: Clause): boolean => !/\d|\b(one|two|three|four|five|six|seven|eight|nine|ten)\b/.test(lowText(t, c));
