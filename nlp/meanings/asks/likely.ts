import type { Ask } from '../../../domain/model/ask.ts';
import { verbForms } from '../../words/verbs.ts';
import { weighNote } from '../../likely/net/weigh-note.ts';
import { charOf } from '../../dimensions/line.ts';
import { daysOf, type Desk, type Hit, sentenceAt } from './desk.ts';
import { askedName, whatAsked } from './called.ts';
import { fore } from './forecast.ts';
import { before, history, next } from './loose/guesses.ts';
import { about, asking, type Stretch } from './loose/stretch.ts';
import { LATE, ORDERED } from './loose/words.ts';

/** So strongly the net must speak for a question that no rule read, and for one whose words a rule took for another (log odds). */
const SURE = 1.5, CLEAR = 3;

/** Under this the net speaks plainly against a question that a rule read (log odds); under the second where the note opens with it and has no other sentence. */
const AGAINST = -3, AGAINST_ALL = -12.5;
/** A sum is asked by its figures too, so that the net must speak against it more plainly (log odds). */
const AGAINST_SUM = -10;

/** The questions that rules read and the net does not speak plainly against. */
export function unlikelyOut(desk: Desk, hits: Hit[]): Hit[] {
  const net = hits.length ? weighNote(desk.sheet) : undefined;
  if (!net) return hits;
  const z = new Map(net.asked().map(a => [a.kind, a.z]));
  const least = hits.length === 1 && desk.sentences.length === 1 && hits[0]!.start <= 3 ? AGAINST_ALL : AGAINST;
  return hits.filter(h => h.asks.some(a => (z.get(a.kind) ?? 0) > (a.kind === 'sum' ? Math.min(least, AGAINST_SUM) : least)));
}

/** The questions that the net is sure of and no rule read, each in the stretch that says most for it. */
export function likelyHits(desk: Desk, taken: readonly Hit[]): Hit[] {
  const { sheet } = desk, out: Hit[] = [], read = new Set(taken.flatMap(h => h.asks.map(a => a.kind)));
  for (const { kind, z, at } of (weighNote(sheet)?.asked() ?? []).sort((a, b) => b.z - a.z)) {
    if (z < SURE) break;
    if (read.has(kind) || kind === 'sum') continue;
    const token = sheet.tokens.findIndex(t => t.end > at.start);
    if (token < 0) continue;
    const have = [...taken, ...out], place = charOf(desk.line, token), whole = stretchAt(desk, place), free = !overlaps(whole, have), c = free ? whole : from(desk, place, have);
    if (!free && (z < CLEAR || have.some(h => h.start === c.start))) continue;
    const asks = asked(desk, c, kind);
    if (asks.length && !STATED.test(c.text) && !told(c)) out.push({ start: c.start, end: c.end, asks, rule: 'likely', weight: -6 });
  }
  return out;
}

/** Put like a question, but nothing is asked. */
const STATED = /\b(?:i|we) (?:could|can) ?(?:not|n't|nt) (?:say|tell)\b|^(?:so |well |ah )*what can (?:you|we) do\b/;
/** Whether a stretch opens with what was done: "took some pictures of it". */
const told = (c: Stretch): boolean => !c.text.includes('?') && verbForms(/^[a-z]+/.exec(c.text.trim())?.[0] ?? '').some(f => f.form === 'past' && f.base !== 'can');

const overlaps = (c: { start: number; end: number }, have: readonly Hit[]): boolean => have.some(h => h.start < c.end && c.start < h.end);

/** What stands from a place on, up to the next question or the end of its sentence: "what's due and what is only snug", of which a rule took all for one. */
function from(desk: Desk, start: number, have: readonly Hit[]): Stretch {
  const end = Math.min(sentenceAt(desk, start).end, ...have.map(h => h.start).filter(s => s > start));
  return { start, end, text: desk.text.slice(start, end), from: start, sure: true };
}

/** The stretch that asks at a place; all of the sentence where none is known by its words. */
function stretchAt(desk: Desk, at: number): Stretch {
  const asks = asking(desk).find(c => c.start <= at && at < c.end), { start, end } = sentenceAt(desk, at);
  return asks ?? { start, end, text: desk.text.slice(start, end), from: start, sure: true };
}

/** A question of some kind with what the stretch says of it. */
function asked(desk: Desk, c: Stretch, kind: Ask['kind']): Ask[] {
  const part = askedName(desk.sheet, kind) ?? about(desk, c), named = part ? { part } : {};
  switch (kind) {
    case 'due': return [{ kind }];
    case 'next': return next(desk, c);
    case 'history': return history(desk, c);
    case 'wasHow': { const of = askedName(desk.sheet, kind), what = whatAsked(desk, c); return of ? [{ kind, part: of, ...(what ? { what } : {}) }] : before(desk, c) ?? []; }
    case 'finish': return /\b(?:boil|freez|melt|thaw)/.test(c.text) ? [] : [{ kind, ...named }]; // coolant is not finished when it boils
    case 'provisional': case 'spent': return [{ kind, ...named }];
    case 'timeSpent': return [{ kind, ...named, ...daysOf(desk, c.start, c.end, 'past') }];
    case 'buy': return [{ kind, ...(LATE.test(c.text) ? { status: 'late' as const } : ORDERED.test(c.text) ? { status: 'ordered' as const } : { status: 'needed' as const }), ...named }];
    case 'cheapest': return part && !desk.sheet.found.some(f => f.dim === 'money') ? [{ kind, item: part }] : []; // who tells a price does not ask for one
    case 'forecast': return fore({ desk, start: c.from, end: c.from, stop: c.end }) ?? [];
    case 'blocked': case 'where': case 'picture': return part ? [{ kind, part }] : [];
    default: return [];
  }
}
