import { charOf, pastOf } from '../../dimensions/line.ts';
import { weighNote } from '../../likely/net/weigh-note.ts';
import { stretchOf } from '../../likely/stretch-of.ts';
import { type Desk, type Hit, sentenceAt } from './desk.ts';
import { INSIDE, OUTSIDE } from './next.ts';

/** Longer than this is no time to fill with a job. */
const MOST = 8 * 60;
/** "a dry hour", "a free hour": with a word between. */
const AN_HOUR = /(?:\b(?:an?|one|another|the) (?:(?!(?:half|quarter)\b)[a-z]+ ){0,2}|(?<=[,.] ))(hour|half hour)(?:s worth| or so)?\b(?! and\b)(?! (?:ago|late|after|later|long|meter|on the clock))/;

/** "What can I do" with the time and the place that the note gives for it in other words or another sentence than the question's: its only length of time, where the net takes that neither for hours spent nor for a figure read. */
export function withSpareTime(desk: Desk, hits: readonly Hit[]): Hit[] {
  return hits.map(h => ({ ...h, asks: h.asks.map(a => {
    if (a.kind !== 'next') return a;
    const near = aside(desk, h, hits), minutes = a.minutes ?? timeIn(desk, near), text = desk.text.slice(near.start, near.end);
    const place = a.place ?? (INSIDE.test(text) === OUTSIDE.test(text) ? undefined : INSIDE.test(text) ? 'indoors' as const : 'outdoors' as const);
    return { ...a, ...(minutes !== undefined ? { minutes } : {}), ...(place ? { place } : {}) };
  }) }));
}

/** The question's own sentence with the one on either side that asks nothing else, up to other questions. */
function aside(desk: Desk, h: Hit, hits: readonly Hit[]): { start: number; end: number } {
  const i = desk.sentences.indexOf(sentenceAt(desk, h.start) as never), others = hits.filter(x => x !== h && !x.asks.some(a => a.kind === 'next'));
  const free = (k: number): boolean => desk.sentences[k] !== undefined && !others.some(x => x.start < desk.sentences[k]!.end && desk.sentences[k]!.start < x.end);
  const first = desk.sentences[free(i - 1) ? i - 1 : i], last = desk.sentences[free(i + 1) ? i + 1 : i];
  const start = Math.max(first?.start ?? h.start, ...others.filter(x => x.end <= h.start).map(x => x.end)), end = Math.min(last?.end ?? h.end, ...others.filter(x => x.start >= h.end).map(x => x.start));
  return { start: Math.min(start, h.start), end: Math.max(end, h.end) };
}

function timeIn(desk: Desk, at: { start: number; end: number }): number | undefined {
  const { sheet } = desk, net = weighNote(sheet);
  const spans = sheet.found.flatMap(f => (f.dim === 'span' && /^(hours|minutes)$/.test(f.value.unit) && charOf(desk.line, f.from) >= at.start && pastOf(desk.line, f.to) <= at.end ? [{ ...f, minutes: f.value.amount * (f.value.unit === 'hours' ? 60 : 1) }] : []))
    .filter((f, _, all) => !all.some(o => o !== f && o.from <= f.from && o.to >= f.to && o.to - o.from > f.to - f.from));
  if (spans.length === 1 && spans[0]!.minutes <= MOST) {
    const says = net?.alone(...stretchOf(sheet, spans[0]!));
    return says && ['hours', 'reading'].every(what => (says.get(what) ?? 0) < 0) ? Math.round(spans[0]!.minutes) : undefined;
  }
  const hour = spans.length ? undefined : AN_HOUR.exec(desk.text.slice(at.start, at.end))?.[1];
  return hour === undefined ? undefined : hour === 'hour' ? 60 : 30;
}
