import { type Desk, type Hit, sentenceAt } from '../desk.ts';
import { asking, everyMatch, global } from '../rule.ts';
import { slateOf } from '../../../dimensions/rule.ts';
import { mayMatch } from '../../../text/pattern-index.ts';
import { byCase } from './by-case.ts';
import { byHeading } from './by-heading.ts';
import { byName } from './by-name.ts';
import { byNet } from './by-net.ts';
import type { SumKind } from './kind.ts';
import { SUM_KINDS } from './kinds.ts';
import { VARIED } from './follow-points.ts';
import { type Given, Scope } from './scope.ts';

/** A place of the note where a sum's question stands, and how well the figures about it suit that sum. `asked`: where its name ends, when all of the sentence is the question. */
export interface Candidate { kind: SumKind; start: number; end: number; score: number; asked?: number }

/** Every wording of a sum's question. */
const ASKS = SUM_KINDS.flatMap(kind => kind.ask.map(ask => ({ kind, ask: global(ask) })));

/** The questions of sums in the note, one a place: where two sums fit the words, the one that the figures suit. `learned`: whether the net has a say. */
export function candidates(desk: Desk, plain: readonly Hit[], learned: boolean): Candidate[] {
  const { mask } = slateOf(desk.line, desk.sheet.ctx.at);
  const all: Candidate[] = [];
  for (const { kind, ask } of mayMatch(ASKS, a => a.ask, mask)) {
    for (const m of everyMatch(ask, mask)) {
      if (m[0].trim() === '') continue;
      const start = m.index + (/^[.?!;, ]+/.exec(m[0])?.[0].length ?? 0), end = m.index + m[0].trimEnd().length;
      const c = { kind, start, end, score: 0 };
      if (possible(desk, c)) all.push({ ...c, score: scored(desk, c, plain) });
    }
  }
  all.push(...byCase(desk, plain, all));
  all.push(...byFigures(desk, plain, all));
  all.push(...byName(desk, plain, all));
  all.push(...byHeading(desk, plain, all));
  if (learned) all.push(...byNet(desk, plain, all));
  const likely = all.filter(c => c.score > 0);
  return settle(desk, likely.filter(c => !followsUp(desk, c, likely)));
}

/** Where another question begins. */
const OTHER = /(?:,? (?:and|or|also)|,) (?=(?:whats?|how|where|wheres|when|whens|who|is|can)\b)|,? (?:and|an|then) (?=(?:the |what )?belt (?:length|size)\b)|,? (?:no|scra(?:p|tch) that|never mind),? (?=(?:how|whats?|which)\b)/;

/** A sentence that follows up the sum before it is no sum of its own. */
const AGAIN = /^(?:and|or|but|what if|what about|how b?about|how bout|what would|same|if|for|at|with|now|suppose|supposing)\b/;

/** A question without words of its own for a sum, whose figures leave no doubt which it is. */
function byFigures(desk: Desk, plain: readonly Hit[], have: readonly Candidate[]): Candidate[] {
  const out: Candidate[] = [];
  for (const s of desk.sentences) {
    const m = /\b(?:what(?:s|ll|d|re)?|how|which)\b(?: [a-z]+)?|\?/.exec(desk.text.slice(s.start, s.end));
    if (!m || !/\b(?:what(?:s|ll|d|re)?|how|which)\b/.test(desk.text.slice(s.start, s.end)) && !s.asked || !s.asked && /^which\b/.test(m[0]) && /, $/.test(desk.text.slice(0, s.start + m.index))) continue; // "…, which settles it"
    const start = s.start + m.index, end = start + m[0].length;
    if (plain.some(p => p.start < s.end && s.start < p.end) || have.some(c => c.start < s.end && s.start < c.end && c.score > 0)) continue;
    if (AGAIN.test(desk.text.slice(s.start, s.end)) && [...have, ...out].some(c => c.end <= s.start && c.score > 0)) continue;
    for (const kind of SUM_KINDS) {
      if (!kind.telling || kind.word && !kind.word.test(desk.text.slice(Math.max(0, s.start - 120), s.end)) || kind.unless?.test(desk.text.slice(s.start, s.end))) continue;
      const floor = Math.max(0, ...plain.filter(p => p.end <= s.start).map(p => p.end), ...[...have, ...out].filter(c => c.end <= s.start && c.score > 0).map(c => c.end));
      const whole = (from: number): readonly string[] | undefined => { const given = kind.given(new Scope(desk, from, s.end, start)); return kind.telling!.find(t => t.every(f => given[f] !== undefined)); };
      const again = /^\?/.test(m[0]) && AGAIN.test(desk.text.slice(s.start, s.end)); // "… two legs at 60. And at 45?" asks for both
      const set = whole(s.start) ?? (s.end - s.start < 70 && !again ? whole(floor) : undefined);
      if (set) out.push({ kind, start, end, score: 1 + set.length });
    }
  }
  return out;
}

/** "and what is it if I put oil on them": it has no figure of its own for its own sum, and one for that before it. */
function followsUp(desk: Desk, c: Candidate, all: readonly Candidate[]): boolean {
  const s = sentenceAt(desk, c.start), again = AGAIN.test(desk.text.slice(s.start, s.end));
  if (!again && !VARIED.test(desk.text.slice(c.start, s.end))) return false;
  const before = all.filter(o => o.kind !== c.kind && o.end <= (again ? s.start : c.start)).sort((a, b) => b.end - a.end)[0];
  if (!before) return false;
  const own = (kind: SumKind, prev?: Given): boolean => Object.keys(kind.given(new Scope(desk, again ? s.start : c.start, s.end, c.start), prev)).length > 0;
  return !own(c.kind) && own(before.kind, before.kind.given(new Scope(desk, 0, before.end, before.start)));
}

function possible(desk: Desk, c: Candidate): boolean {
  const s = sentenceAt(desk, c.start);
  if (!/\b(?:what|whats|whatll|how|which|convert|change)\b/.test(desk.text.slice(c.start, c.end)) && !asking(desk, c.start) && !/\b(?:what|whats|how|which|need|give me)\b[^.?!]{0,24}$/.test(desk.text.slice(s.start, c.start))) return false;
  const before = desk.text.slice(Math.max(s.start, c.start - 40), c.start + 5).split(OTHER).at(-1)!.slice(0, -5);
  const after = desk.text.slice(c.end, Math.min(s.end, c.end + 70)).split(OTHER)[0]!;
  return !c.kind.unless?.test(before + desk.text.slice(c.start, c.end) + after);
}

/** How many of the sum's fields the note gives between the questions on either side of it. */
function scored(desk: Desk, c: Candidate, plain: readonly Hit[]): number {
  const floor = Math.max(0, ...plain.filter(p => p.end <= c.start).map(p => p.end));
  const ceiling = Math.min(desk.text.length, ...plain.filter(p => p.start >= c.end).map(p => p.start));
  const given = c.kind.given(new Scope(desk, floor, ceiling, c.start));
  const fields = Object.keys(given).filter(f => !f.endsWith('Unit'));
  const own = c.kind.given(new Scope(desk, sentenceAt(desk, c.start).start, Math.min(ceiling, sentenceAt(desk, c.start).end), c.start));
  const needs = c.kind.needs;
  const hits = needs ? needs.filter(f => given[f] !== undefined).length : Math.max(1, fields.length);
  if (!hits && !named(c, desk)) return 0;
  const wanted = (c.kind.wants ?? []).filter(f => given[f] !== undefined).length;
  const here = Object.keys(own).filter(f => !f.endsWith('Unit')).length;
  return 1 + hits + wanted + here * 0.5 + (c.kind.weight ?? 0) + (c.end - c.start) / 40;
}

/** Words that name the sum outright ask for it though no figure is given; the sum then asks back. */
const OUTRIGHT = /\b(?:torque|voltage drop|volt drop|dew point|tap drill|tapping (?:drill|size)|clearance (?:hole|drill)|belt length|length of belt|end ?play|shim stack|landed cost|sling load)\b/;
const named = (c: Candidate, desk: Desk): boolean => OUTRIGHT.test(desk.text.slice(c.start, c.end)) && (sentenceAt(desk, c.start).asked || /\b(?:what|whats|how|need|give me|work out|remind me|tell me)\b/.test(desk.text.slice(Math.max(0, c.start - 20), c.end)));

/** Whether a question gives by itself all that its sum needs ("and 210 pounds in kilos"). */
function wholly(desk: Desk, c: Candidate): boolean {
  const own = c.kind.given(new Scope(desk, c.start, sentenceAt(desk, c.start).end, c.start));
  return c.kind.full !== undefined && c.kind.full.every(f => own[f] !== undefined);
}

/** One question a place: the best of those that overlap, and of the same sum asked twice in a clause the first, drawn out. */
function settle(desk: Desk, all: Candidate[]): Candidate[] {
  const kept: Candidate[] = [];
  for (const c of [...all].sort((a, b) => b.score - a.score || a.start - b.start)) {
    if (kept.some(k => c.start < k.end && k.start < c.end)) continue;
    kept.push(c);
  }
  const out: Candidate[] = [];
  for (const c of kept.sort((a, b) => a.start - b.start)) {
    const last = out.at(-1);
    const between = last ? desk.text.slice(last.end, c.start) : '';
    const apart = /[?!]|\b(?:and|or|also|an|then)\b[^.?!]*$|[.] /.test(between) || last !== undefined && (last.kind !== c.kind || wholly(desk, c)) && /^(?:and|also|or|plus)\b/.test(desk.text.slice(c.start));
    const bare = last?.kind === c.kind && !/[?]/.test(between) && !Object.keys(c.kind.given(new Scope(desk, sentenceAt(desk, last.end - 1).end <= c.start ? sentenceAt(desk, c.start).start : c.start, sentenceAt(desk, c.start).end, c.start))).length;
    if (last && bare) last.end = c.end;
    else if (last && !apart) {
      if (c.score > last.score && c.kind !== last.kind) out[out.length - 1] = { ...c, start: last.start };
      else last.end = Math.max(last.end, c.end);
    } else out.push({ ...c });
  }
  return out;
}
