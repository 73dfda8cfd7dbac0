import type { Ask } from '../../../domain/model/ask.ts';
import { charOf, type Line, lineOf, pastOf } from '../../dimensions/line.ts';
import { longhand } from '../../dimensions/shorthand.ts';
import { dayOf, isoOf, monday } from '../../dimensions/when/days.ts';
import { daysIn } from '../../dimensions/when/rules.ts';
import type { Direction } from '../../dimensions/when/simple.ts';
import { sentences } from '../../text/sentences.ts';
import type { Found, Sheet } from '../../types.ts';

/** A question found: characters [start, end) of the line. `weight` settles which of two that begin together is meant. */
export interface Hit { start: number; end: number; asks: Ask[]; rule: string; weight: number; used?: [number, number][] }

/** A thing named in the note, up to token `to`. */
export interface Named { name: string; to: number; known: boolean }

/** A thing that was asked about, up to that character. `counted`: what was counted of it, which "they" may be ("how many shims under the cap and where are they"). */
export interface Spoken { name: string; end: number; counted?: string }

/** What the rules of questions look at: the line, its sentences, and how to read a name or a day at a place of it. */
export interface Desk {
  sheet: Sheet;
  line: Line;
  text: string;
  /** Sentences as characters [start, end), with their closing mark. */
  sentences: { start: number; end: number; asked: boolean }[];
  /** Names of parts and machines asked about so far, for "it" and "both of them". */
  spoken: Spoken[];
  /** Everything named in the note, found when first needed. */
  named?: Named[];
}

export function openDesk(sheet: Sheet): Desk {
  const line = lineOf(sheet.tokens);
  const cuts = sentences(marked(sheet.tokens), sheet.text).map(s => ({ start: charOf(line, s.from), end: charOf(line, s.to), asked: s.mark === '?' }));
  return { sheet, line, text: line.text, sentences: cuts, spoken: [] };
}

/** The tokens with the marks that a wire writes out ("STOP", "QUERY") as marks. */
const marked = (tokens: Sheet['tokens']): Sheet['tokens'] => tokens.some(t => t.low === 'query' || t.text === 'STOP')
  ? tokens.map((t, i) => { const low = longhand(tokens, i); return low === '?' || low === '.' ? { ...t, low } : t; }) : tokens;

export const sentenceAt = (desk: Desk, at: number): { start: number; end: number; asked: boolean } =>
  desk.sentences.find(s => at >= s.start && at < s.end) ?? { start: 0, end: desk.text.length, asked: false };

/** "over Easter, Friday the third to Monday the sixth": the days said once more, and closer. */
const SAID_AGAIN = /^,? ?(?:like|i mean|say|thats|that is|namely)?,? ?$/;

/** Days named within the characters [start, end), as the fields of a question. */
export function daysOf(desk: Desk, start: number, end: number, dir: Direction): { from?: string; to?: string } {
  const all = daysIn(desk.line, desk.sheet.ctx.at, dir).filter(x => x.start >= start - 8 && x.end <= end + 1 && x.end > start);
  const d = all.find((x, i) => !(all[i + 1] && SAID_AGAIN.test(desk.text.slice(x.end, all[i + 1]!.start)) && all[i + 1]!.from !== all[i + 1]!.to));
  if (d && d.from === d.to && /\bweek (?:of|beginning|starting|commencing|from) (?:the )?(?:[a-z]+ )?$/.test(desk.text.slice(Math.max(0, d.start - 40), d.start))) return { from: isoOf(monday(d.from)), to: isoOf(monday(d.from) + 6) };
  if (!d) return {};
  const lead = desk.text.slice(Math.max(0, d.start - 40), d.start);
  // "since the start of June" and "this month" so far have no end but now.
  const running = dir === 'past' && (/\bsince (?:about |around |the |start |beginning |of |[a-z]+ [a-z]+,? say )*$/.test(lead) || /^ (?:so far|to date|up to now)\b/.test(desk.text.slice(d.end)) && d.to >= dayOf(desk.sheet.ctx.at) || /^(?:this|the) (?:month|week|year)\b/.test(desk.text.slice(d.start)) && d.to >= dayOf(desk.sheet.ctx.at));
  return { from: isoOf(d.from), ...(d.open || running ? {} : { to: isoOf(d.to) }) };
}

/** "since Monday, how many hours": days that stand before the question with nothing else. */
export function frontedDays(desk: Desk, at: number): { from?: string; to?: string } {
  const from = sentenceAt(desk, at).start, text = desk.text.slice(from, at);
  return text.length < 28 && !/\b(?:what|how|where|when|who|did|do|is|was)\b/.test(text) ? daysOf(desk, from, at, 'past') : {};
}

/** What the dimensions found within the characters [start, end). */
export function foundIn(desk: Desk, start: number, end: number): (Found & { start: number; end: number })[] {
  return desk.sheet.found.map(f => ({ ...f, start: charOf(desk.line, f.from), end: pastOf(desk.line, f.to) })).filter(f => f.start >= start && f.end <= end);
}
