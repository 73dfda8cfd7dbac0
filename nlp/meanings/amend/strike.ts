import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import type { Telling } from '../telling.ts';
import { amount, figures } from './bare.ts';

const STRIKE = /^(?:please |kindly |can you |could you |just )*(take that back|scrap (that|the) (last|note)|scrap that$|scrap that \W|forget (what|that)|delete (that|the)|never (mind|heed) (all )?(that|what)|throw out (that|what)|(don't|do not) use (that|the) (number|figure|reading))\b|^(no |okay |oh |sorry |actually |wait |hang on |hold on |um |well |please |kindly |can you |could you |you can )*(scratch|strike|forget|ignore|undo|delete|cancel|disregard|take back|wipe|drop|scrub|bin|remove|cross out|rub out|erase|withdraw|scrap|away with) (that|it|the last|what i|my last|the previous|all that|the bit|everything i|this|the note|(that|the|this|my) (last )?(note|entry|line|item|bit)|last (note|one|entry|bit)|about|the (one|entry|remark|thing|line|part|bit|item|sentence|note) (about|on|of|with|where|for)|that last|what|my (note|remark|entry|line))\b|^(no |sorry |actually )*(i was wrong about|i take (it|that) back|that('s| was| is) (wrong|not right|a mistake|rubbish)|never mind (all )?(that|what i said|about)|that never happened|belay that|false alarm|as you were$|didn't happen|no ,? ?(it|they|he|she|there|i|we) (didn't|isn't|wasn't|aren't|weren't|haven't|hasn't|doesn't|don't)$|that wasn't (right|me|it)|i got that wrong|ignore me)\b/;
const CROSSED = /\b(cross|take|strike|scratch|knock) (the |those |that |them |it |off )?.{0,30}\boff\b( (the|my) (\S+ )?list)?/;
const GIVEN_UP = /^(?:(?:actually|no|oh|well|okay|so|and|ah) ,? ?)*(?:(?:i|we) )?(?:(?:don't|do not|won't|shan't|no longer|needn't) (?:need|want|be needing|require|buy|get|order|bother with|bother about|worry about)|no (?:need|longer need|more need) (?:for|of)?|never mind|cancel|forget|scratch|strike|skip|leave off|hold off on|call off) (?:the|those|that|any|a|about the|to (?:get|buy|order) the)\b/;

const named = (e: Entry): string => String(('part' in e && e.part) || ('item' in e && e.item) || '');
/** Whether the words name a thing of one of these entries, by a word of more than three letters. */
const names = (entries: readonly Entry[], text: string): boolean => entries.some(e => named(e).split(' ').some(w => w.length > 3 && text.includes(w.replace(/s$/, ''))) || named(e).includes(' ') && text.includes(named(e).toLowerCase()));

/** "strike the 2100", "the 1.8 please delete": a figure taken back, and no other put in its place. */
export function figureStruck(t: Telling): number | undefined {
  const c = t.clause, own = figures(t.sheet).filter(f => f.from >= c.from && f.to <= c.to), f = own[0];
  if (own.length !== 1 || c.neg || c.asks) return undefined;
  const words = (from: number, to: number): string => t.sheet.tokens.slice(from, to).map(x => x.low).join(' ');
  return STRUCK_FIGURE.test(`${words(c.from, f!.from)} # ${words(f!.to, c.to)}`.replace(/[ .,!]+$/, '').trim()) ? amount(f!) : undefined;
}
const STRIKES = '(?:strike|scratch|delete|wipe|erase|cross out|rub out|scrub|forget|ignore|disregard)';
const STRUCK_FIGURE = new RegExp(`^(?:(?:so|and|please|kindly|just) )*${STRIKES} (?:the|that|my) #(?: please)?$|^(?:the|that|my) #,? ?(?:, )?(?:please )?${STRIKES}(?: please)?$`);

/** Whether the clause takes an earlier note back altogether: "scratch that", "strike the line about the beam", "don't need the clamps after all". */
export function struck(t: Telling, text: string): boolean {
  const c = t.clause, gone = t.prior.filter(e => e.kind === 'want' || e.kind === 'order');
  if (STRIKE.test(text) || t.at === 0 && t.prior.length > 0 && /^(no |sorry |oops |ah |och )*(it was |that was |that 's |that's )?(the )?wrong (machine|tractor|trailer|engine|baler|mower|job|notebook|note|shop)$/.test(text) && !(t.clauses[1] && STRIKE.test(t.sheet.tokens.slice(t.clauses[1].from, t.clauses[1].to).map(x => x.low).join(' ')))) return true;
  if (/^(please |kindly )?(forget|ignore|scratch|strike|cancel|disregard|delete|remove|withdraw|never (?:heed|mind))\b/.test(text) && !c.neg && names(t.prior, text)) return true;
  if (t.at === 0 && gone.length && /^(please )?(cross|strike|scratch|take|knock)\b/.test(text) && CROSSED.test(text) && (/\blist\b/.test(text) || /^(cross|strike|scratch)/.test(text)) && (names(gone, text) || /\b(that|it|them|those)\b/.test(text))) return true;
  if (t.at < 2 && /\b(never|didn't|did not|haven't|not) (actually |even |really |ever )?(order(ed)?|buy|bought|do|did|done|fit|fitted|get|got|happen(ed)?|took|take|pay|paid) (it|them|that|those|any|one|for it|for them)\b/.test(text) && /^(?:(?:actually|no|oh|well|sorry|wait|hang on|scrap that|and|but|ah) ,? ?)+/.test(`${t.sheet.tokens.slice(Math.max(0, c.from - 2), c.from).map(x => x.low).join(' ')} ${text}`.trim()) && t.prior.length > 0) return true;
  return t.at === 0 && GIVEN_UP.test(text) && names(gone, text);
}

/** Clauses of the sentence that only go on about the strike are read with it; what is stated anew, with a figure or a place, is read on its own. */
export function quiet(t: Telling): void {
  for (const x of t.clauses) if ((x as Placed).sentence === (t.clause as Placed).sentence && (x === t.clause || !x.items.some(i => i.f) && !/^(in|on|under|at)$/.test(x.rest[0]?.low ?? ''))) (x as Clause & { spoken?: boolean }).spoken = true;
}
