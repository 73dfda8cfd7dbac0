import { isKnownPart } from '../../dimensions/part/known.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { singular } from '../../words/nouns.ts';
import { NAMED } from '../../words/quantities.ts';
import { lowText, type Telling } from '../telling.ts';
import { labelOf } from './label.ts';
import { measurable, spokenOf } from './measurable.ts';

/** What is known of a figure from what was said before it. */
export interface State { part?: string; what?: string; unit?: string; /** The figure before was less than a tenth of an inch. */ small?: boolean; /** What the set is that its own ones are told from: the tappets, of inlet and exhaust. */ of?: string; /** The quantity stood in a headline of its own. */ headed?: boolean; /** What was counted in the figure before: turns, threads showing. */ counted?: string; /** Where on the part the figure before was taken. */ where?: string }

/** What is known before the first figure: the heading ("Spindle runout:"), or the reading that the clause goes on from. */
export function opening(t: Telling, c: Clause): State {
  const before = spokenBefore(t), last = t.told.at(-1);
  if (before && c.join === ':' && !before.asks && before.sub === undefined) {
    const h = labelOf(t.sheet, before.from, before.to), heading = t.clauses[t.at - 2];
    const above = !h.part && heading && (heading as Placed).sentence === (c as Placed).sentence ? labelOf(t.sheet, heading.from, heading.to) : undefined;
    return { part: h.part ?? above?.part ?? (ownPart(before.subj.find(s => !s.machine)?.name ?? '', t.sheet.ctx.parts) || undefined), what: h.what ?? above?.what, headed: (h.what ?? above?.what) !== undefined };
  }
  const spoken = before && headline(t, before, c);
  if (spoken) return spoken;
  const near = last?.entry.kind === 'reading' && before && (last.clause === before || t.told.at(-2)?.clause === before) && !before.asks && Math.abs((before as Placed).sentence - (c as Placed).sentence) <= 1 ? last.entry : undefined;
  const subj = c.subj.filter(s => !s.machine && partLike(t.sheet, s.name) && !/^(hot|cold|top|bottom|middle)$/.test(s.name) && (NAMED.test(s.name.split(' ').at(-1)!) || measurable(t.sheet, s.name))).map(s => ownPart(s.name, t.sheet.ctx.parts)).find(Boolean);
  const topic = subj ?? spokenOf(t)?.name;
  return near ? { part: near.part, what: near.what?.replace(/ (at|with|on|in|over) .*| (hot|cold|warm|cranking|resting|idling|running|charging)$/, ''), unit: near.unit, small: (near.value ?? 1) < 0.1 } : { part: topic };
}

/** The clause before, past those that only take a figure back ("no, tell a lie,"). */
function spokenBefore(t: Telling): Clause | undefined {
  let k = t.at - 1;
  while (k > 0 && TAKES_BACK.test(lowText(t, t.clauses[k]!))) k--;
  return t.clauses[k];
}
/** What is said where a figure is taken back. */
export const TAKES_BACK = /^[ ,]*(?:(?:no|nope|sorry|wait|hang on|hold on|i?'?ll? ?tell a lie|i tell a lie|tell a lie|correction|scratch that|strike that|my mistake|let me (?:see|look|check)|what am i saying|hang about|beg pardon|oops|whoops|actually|wrong|read it wrong|i read (?:it|that) wrong)[ ,]*)+$/;

/** "Runout on the shaft." with "I get seven thou." after it: a headline, and no state of the shaft. */
export function headsFigure(t: Telling): boolean {
  const c = t.clause, next = t.clauses[t.at + 1];
  return c.pred === 'none' && NAMED.test(c.items.find(i => i.np)?.np?.said ?? '') && next !== undefined && dims(next.items, 'measure').length > 0 && !next.items.some(i => i.np);
}

/** "Valve guide clearance, I make it five thou…", "Runout on the shaft. I get seven thou.": a quantity named on its own just before the figure. */
function headline(t: Telling, before: Clause, c: Clause): State | undefined {
  if (before.asks || before.neg || before.reality !== 'deed' || before.sub !== undefined || t.told.some(x => x.clause === before) || before.items.some(i => i.f || i.np?.count !== undefined) || (c as Placed).sentence - (before as Placed).sentence > 1) return undefined;
  if (c.subj.some(s => !s.carried && s.from >= c.from)) return undefined;
  const h = labelOf(t.sheet, before.from, before.to);
  if (before.pred !== 'none' && (h.what === undefined || c.items.some(i => i.np || i.t === 'verb' || i.t === 'be'))) return undefined; // "the lash is where I want it, seven thou"
  return h.what && h.part ? { part: h.part, what: h.what, headed: true } : undefined;
}

/** The part in "number one bore", "clutch pedal free play"; empty for a quantity alone. */
const ownPart = (name: string, known: readonly string[] | undefined): string => { if (isKnownPart(known, name) || name === 'bores') return name; const w = name.split(' '); for (let k = 0; k < w.length; k++) if (NAMED.test(w.slice(k).join(' ')) || NAMED.test(w.slice(k).map(singular).join(' '))) return w.slice(0, k).join(' '); return name; };

