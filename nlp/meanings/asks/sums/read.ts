import type { Ask } from '../../../../domain/model/ask.ts';
import { sheetBefore } from '../../../sheet.ts';
import { type Desk, type Hit, sentenceAt } from '../desk.ts';
import { readAsks } from '../read.ts';
import { type Candidate, candidates } from './candidates.ts';
import { casesBefore } from './cases-before.ts';
import { casesPut, sumAsked } from './cases-put.ts';
import { followPoints } from './follow-points.ts';
import { follow, type SumKind } from './kind.ts';
import { kindOf } from './kinds.ts';
import { putsCase } from './puts-case.ts';
import { type Given, Scope } from './scope.ts';
import { swapped } from './swapped.ts';

interface Sum { kind: SumKind; given: Given }

/** The sums that the note asks for, each with what it was given; a follow-up repeats the whole given with its one thing changed. `learned`: whether the net has a say beside the wordings. */
export function readSums(desk: Desk, plain: readonly Hit[], learned: boolean): Hit[] {
  const found = candidates(desk, plain, learned);
  const hits: Hit[] = [];
  const told = priorSums(desk), before = told[0];
  let last: Sum | undefined;
  const earlier: Sum[] = [];
  if (!found.length) { // of several sums before, the last that the note gives another figure for
    const to = firstAsk(desk, plain, 0), sure = learned && told.length > 0 && sumAsked(desk);
    for (const sum of told) {
      const more = sure ? follows(desk, 0, to, sum, casesPut(desk, to, sum.kind, sum.given), false) : follows(desk, 0, to, sum, [], true);
      if (more.length) return more;
    }
    return [];
  }
  const again = before && FOLLOWS.test(desk.text) ? follows(desk, 0, firstAsk(desk, plain, 0), before, [], true) : [];
  if (again.length && found.every(c => c.kind !== before!.kind && !/\b(?:what|whats|how|which)\b/.test(desk.text.slice(c.start, c.end)))) return again;
  const opening = Math.min(found[0]!.start, firstAsk(desk, plain, 0));
  const own = found[0]!.kind === before?.kind && found[0]!.start < desk.sentences[0]!.end; // "say it's seventy in here, dew point?" asks outright
  if (before && !own && FOLLOWS.test(desk.text)) hits.push(...follows(desk, 0, opening, before, [], true));
  found.forEach((c, i) => {
    const floor = Math.max(0, ...plain.filter(p => p.end <= c.start).map(p => p.end), ...hits.map(h => h.end));
    const reach = Math.min(desk.text.length, found[i + 1]?.start ?? Infinity, firstAsk(desk, plain, c.end)), turns = followPoints(desk, c, floor, reach);
    const ceiling = turns.find(p => leadsTo(desk, p, found[i + 1])) ?? reach, points = turns.filter(p => p < ceiling);
    const stop = points[0] ?? leadOf(desk, c.end, ceiling);
    const read = readOne(desk, c, floor, stop, earlier, before);
    const scope = new Scope(desk, floor, stop, c.start), listed = c.kind.each?.(scope) ?? [], many = listed.length > 1 ? listed : casesBefore(scope, c);
    const first = many.length > 1 ? undefined : righted(desk, c, reach, read.given);
    const sums = (many.length > 1 ? many : [first?.given ?? read.given]).map((given): Sum => ({ kind: c.kind, given }));
    earlier.push(...sums);
    last = sums.at(-1)!;
    hits.push(hit(c.start, first?.end ?? Math.min(c.end, stop), sums, many.length > 1 ? scope.taken : read.used, desk));
    const more = follows(desk, stop, ceiling, last, points, false);
    for (const m of more) { hits.push(m); const a = m.asks[0]!; if (a.kind === 'sum') earlier.push({ kind: c.kind, given: a.given }); }
  });
  return hits;
}

const FOLLOWS = /^(?:and|or|but|so|what about|how b?about|how bout|what if|what|same|suppose|supposing|say|now)\b/;
const firstAsk = (desk: Desk, plain: readonly Hit[], from: number): number => Math.min(desk.text.length, ...plain.filter(p => p.start >= from).map(p => p.start));

/** "And the nut is 20 threads to the inch, what play?": figures before another sum's question in its sentence are that one's. */
const leadsTo = (desk: Desk, at: number, next?: Candidate): boolean => next !== undefined && next.start > at && next.start < sentenceAt(desk, at).end && Object.keys(next.kind.given(new Scope(desk, at, next.start))).length > 0;

/** "…, and" before the next question is of neither. */
function leadOf(desk: Desk, from: number, ceiling: number): number {
  const m = /(?:[,;]? ?(?:and|or|also|then|now) )+$/.exec(desk.text.slice(from, ceiling));
  return m ? ceiling - m[0].length : ceiling;
}

/** The figures of one question: its own stretch first, then, for what is missing, the sums before it and the whole note. */
function readOne(desk: Desk, c: Candidate, floor: number, stop: number, earlier: Sum[], before?: Sum): { given: Given; used: [number, number][] } {
  const scope = new Scope(desk, floor, stop, c.start);
  let given = c.kind.given(scope);
  const used = [...scope.taken];
  const lacks = (c.kind.wants ?? []).filter(f => given[f] === undefined);
  if (lacks.length && floor > 0) {
    const same = earlier.filter(e => e.kind.of === c.kind.of).at(-1);
    if (same) given = follow(c.kind, same.given, c.kind.given(new Scope(desk, floor, stop, c.start), same.given));
    else if (earlier.length && lacks.every(f => earlier.at(-1)!.given[f] !== undefined)) given = { ...taken(earlier.at(-1)!.given, lacks), ...given }; // the belt of the pulleys whose speed was asked
    else {
      const wide = new Scope(desk, 0, stop, c.start), more = c.kind.given(wide);
      const better = lacks.some(f => more[f] !== undefined);
      if (better) { given = { ...more, ...given }; used.push(...wide.taken); }
    }
  } else if (lacks.length && before?.kind.of === c.kind.of) given = follow(c.kind, before.given, given);
  // Another sum of the same pulleys, bolts or wire: what is missing is as it was given for the one before.
  else if (lacks.length && before && /\b(?:they|theyre|it|its|that|those|them|same|these)\b|^(?:and|ok|okay|so)\b/.test(desk.text)) given = { ...taken(before.given, lacks), ...given };
  return { given, used };
}

/** Some fields of another sum, with their units. */
const taken = (from: Given, fields: readonly string[]): Given => Object.fromEntries(fields.flatMap(f => [f, `${f}Unit`]).flatMap(f => (from[f] === undefined ? [] : [[f, from[f]]])));

/** "What does each leg carry? Sorry, three legs.": the sentence after the question puts a figure of it right. */
const PUT_RIGHT = /^(?:no|sorry|sry|i mean|i meant|make that|correction|oh wait|wait),? /;
function righted(desk: Desk, c: Candidate, reach: number, given: Given): { given: Given; end: number } | undefined {
  const s = desk.sentences.find(x => x.start >= c.end && x.start < reach);
  if (!s || s.asked || !PUT_RIGHT.test(desk.text.slice(s.start, s.end))) return undefined;
  const next = c.kind.given(new Scope(desk, s.start, s.end), given), fields = Object.keys(next).filter(f => !f.endsWith('Unit'));
  return fields.length && fields.every(f => given[f] !== undefined) ? { given: follow(c.kind, given, next), end: s.end } : undefined;
}

/** The follow-ups within [from, to): each gives only what changes. */
function follows(desk: Desk, from: number, to: number, first: Sum, given: number[], fresh: boolean): Hit[] {
  const points = fresh ? [from] : given;
  const out: Hit[] = [];
  let last = first;
  points.forEach((p, i) => {
    const stop = points[i + 1] ?? to;
    const scope = new Scope(desk, p, Math.max(p, stop));
    const next = swapped(scope, last.given) ?? last.kind.given(scope, last.given);
    const changed = Object.keys(next).filter(f => next[f] !== undefined || f in last.given);
    if (!changed.length || (fresh && !putsCase(desk, p))) return;
    last = { kind: last.kind, given: clean(follow(last.kind, last.given, next)) };
    out.push(hit(p, Math.max(p + 1, Math.min(stop, sentenceAt(desk, stop > p ? stop - 1 : p).end)), [last], [], desk));
  });
  return out;
}
const clean = (g: Given): Given => Object.fromEntries(Object.entries(g).filter(([, v]) => v !== undefined));

function hit(start: number, end: number, sums: Sum[], taken: [number, number][], desk: Desk): Hit {
  const asks = sums.map((s): Ask => ({ kind: 'sum', of: s.kind.of, given: clean(s.given) }));
  const used = taken.filter(([a, b]) => a < start || b > end).map(([a, b]): [number, number] => {
    const at = sentenceAt(desk, a);
    return [at.start, Math.max(b, Math.min(at.end, start > a ? start : at.end))];
  });
  return { start, end, asks, rule: `sum ${sums[0]!.kind.of}`, weight: 6, used: merge(used) };
}
function merge(ranges: [number, number][]): [number, number][] {
  const out: [number, number][] = [];
  for (const r of ranges.sort((a, b) => a[0] - b[0])) { const l = out.at(-1); if (l && r[0] <= l[1]) l[1] = Math.max(l[1], r[1]); else out.push([...r]); }
  return out;
}

/** The sums of the note before, the last first, save that one whose result this note names comes before the rest ("the speed only"). */
function priorSums(desk: Desk): Sum[] {
  const before = sheetBefore(desk.sheet.ctx);
  const asks = before ? readAsks(before).map(r => r.ask) : [];
  const sums = asks.flatMap((ask): Sum[] => { const kind = ask.kind === 'sum' ? kindOf(ask.of) : undefined; return kind && ask.kind === 'sum' ? [{ kind, given: ask.given }] : []; }).reverse();
  const named = (s: Sum): number => (s.kind.result?.test(desk.text) ? 0 : 1);
  return sums.sort((a, b) => named(a) - named(b));
}
