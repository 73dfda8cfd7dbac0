import { DateTime } from 'luxon';
import type { Step } from '../../domain/answers/over-time.ts';
import { capital, figure, money } from '../say/words.ts';
import { ACT, INK, PAPER, RULE, sheet, text } from './paper.ts';

/** Sums over time, each in a panel of its own; `at`: the moment of drawing (ISO), where the time axis ends. */
interface OverTime { /** The part that was asked about. */ of?: string; money: readonly Step[]; hours: readonly Step[]; at: string; zone: string }

const [MARGIN, LEFT, WIDTH, HEIGHT, GAP, HEAD] = [24, 66, 720, 190, 74, 92];
const DAY = 86_400_000;
/** As many steps are named as do not crowd the panel, the biggest. */
const MOST_NAMED = 4;
/** A name needs a step as high as its letters, or it stands on the line. */
const LETTERS = 16;

/** Money and hours, one over the other on the same days, as steps with the sum at the end of each; undefined: there is neither. */
export function drawMoneyAndHours({ of, money: spent, hours, at, zone }: OverTime): string | undefined {
  const panels = [
    ...(spent.length ? [{ name: 'Money', steps: spent, say: money }] : []),
    ...(hours.length ? [{ name: 'Hours', steps: hours, say: (n: number) => `${figure(n)} h` }] : []),
  ];
  if (!panels.length) return undefined;
  const title = capital(`${of ? `the ${of}: ` : ''}${panels.map(p => p.name.toLowerCase()).join(' and ')} so far`);
  const moments = panels.flatMap(p => p.steps.map(s => Date.parse(s.at)));
  const from = Math.min(...moments);
  const span = Math.max(DAY, Math.max(Date.parse(at), ...moments) - from);
  const first = from - span * 0.03;
  const x = (ms: number): number => MARGIN + LEFT + ((ms - first) / (span * 1.03)) * WIDTH;
  const tall = HEAD + panels.length * (HEIGHT + GAP);
  const body = [
    text(MARGIN, 36, title, 'font-weight="bold" font-size="20"'),
    ...panels.map((p, i) => panel(p, HEAD + i * (HEIGHT + GAP), x, { first, last: first + span * 1.03, zone })),
  ];
  return sheet(2 * MARGIN + LEFT + WIDTH + 70, tall - GAP + 44, title, body.join(''));
}

interface Panel { name: string; steps: readonly Step[]; say: (n: number) => string }
interface Axis { first: number; last: number; zone: string }
type Place = (value: number) => number;

function panel({ name, steps, say }: Panel, top: number, x: Place, axis: Axis): string {
  const bottom = top + HEIGHT;
  const most = Math.max(...steps.map(s => s.sum), 1e-9);
  const step = nice(most / 4);
  const y: Place = value => bottom - (value / (Math.ceil(most / step) * step)) * HEIGHT;
  const last = steps.at(-1)!;
  return [
    text(MARGIN, top - 16, `${name}: ${say(last.sum)}`, 'font-weight="bold"'),
    ...levels(most, step).map(v => `<line x1="${MARGIN + LEFT}" y1="${y(v).toFixed(1)}" x2="${MARGIN + LEFT + WIDTH}" y2="${y(v).toFixed(1)}" stroke="${RULE}"/>${text(MARGIN + LEFT - 8, y(v) + 5, figure(v), 'text-anchor="end" font-size="13"')}`),
    ...days(axis).map(d => `<line x1="${x(d.at).toFixed(1)}" y1="${top}" x2="${x(d.at).toFixed(1)}" y2="${bottom + 6}" stroke="${RULE}" stroke-dasharray="2 4"/>${text(x(d.at), bottom + 22, d.words, 'text-anchor="middle" font-size="13"')}`),
    stairs(steps, x, y, axis),
    ...names(steps, x, y, say),
    text(x(axis.last) + 8, y(last.sum) + 5, say(last.sum), 'font-weight="bold" font-size="14"'),
  ].join('');
}

/** The line goes level from step to step; under it the sheet is tinted. */
function stairs(steps: readonly Step[], x: Place, y: Place, { first, last }: Axis): string {
  const start = steps[0]!.sum - steps[0]!.by;
  let height = y(start);
  const points = [`${x(first).toFixed(1)},${height.toFixed(1)}`];
  for (const s of steps) {
    const at = x(Date.parse(s.at)).toFixed(1);
    points.push(`${at},${height.toFixed(1)}`, `${at},${y(s.sum).toFixed(1)}`);
    height = y(s.sum);
  }
  points.push(`${x(last).toFixed(1)},${height.toFixed(1)}`);
  const ground = y(0).toFixed(1);
  return `<polygon points="${x(first).toFixed(1)},${ground} ${points.join(' ')} ${x(last).toFixed(1)},${ground}" fill="${ACT}" fill-opacity="0.45"/><polyline points="${points.join(' ')}" fill="none" stroke="${INK}" stroke-width="2"/>`;
}

/** The biggest steps by name, on the side where the line is not, and none on top of another. */
function names(steps: readonly Step[], x: Place, y: Place, say: (n: number) => string): string[] {
  const biggest = steps.filter(s => s.what && y(0) - y(s.by) >= LETTERS).toSorted((a, b) => b.by - a.by).slice(0, MOST_NAMED);
  const taken: { left: number; right: number; y: number }[] = [];
  return biggest.flatMap(s => {
    const words = `${s.what!.length > 26 ? `${s.what!.slice(0, 25)}…` : s.what} ${say(s.by)}`;
    const length = words.length * 7.4;
    const [at, middle] = [x(Date.parse(s.at)), y(s.sum - s.by / 2) + 5];
    // Left of its step the sheet is empty above the line; near the left edge the name goes to the right.
    const left = at - 8 - length > MARGIN + LEFT ? at - 8 - length : at + 8;
    if (taken.some(t => t.left < left + length && left < t.right && Math.abs(t.y - middle) < 16)) return [];
    taken.push({ left, right: left + length, y: middle });
    const anchor = left < at ? 'end' : 'start';
    return [text(left < at ? at - 8 : left, middle, words, `text-anchor="${anchor}" font-size="13" paint-order="stroke" stroke="${PAPER}" stroke-width="4" stroke-linejoin="round"`)];
  });
}

const levels = (most: number, step: number): number[] => Array.from({ length: Math.ceil(most / step) + 1 }, (_, i) => Math.round(i * step * 1e6) / 1e6);

/** The next round figure: 1, 2 or 5 by a power of ten. */
function nice(n: number): number {
  const ten = 10 ** Math.floor(Math.log10(n));
  return ([1, 2, 5, 10].find(k => k * ten >= n) ?? 10) * ten;
}

/** Days to rule by: months, weeks or days, so that there are at most a dozen. */
function days({ first, last, zone }: Axis): { at: number; words: string }[] {
  const length = (last - first) / DAY;
  const { unit, every, form } = gaugeOf(length);
  const out: { at: number; words: string }[] = [];
  for (let d = DateTime.fromMillis(first, { zone, locale: 'en' }).startOf(unit).plus({ [`${unit}s`]: 1 }); d.toMillis() <= last; d = d.plus({ [`${unit}s`]: every })) out.push({ at: d.toMillis(), words: d.toFormat(form) });
  return out;
}

function gaugeOf(length: number): { unit: 'year' | 'month' | 'week' | 'day'; every: number; form: string } {
  if (length > 3_650) return { unit: 'year', every: 1, form: 'yyyy' };
  if (length > 120) return { unit: 'month', every: Math.ceil(length / 30 / 10), form: 'LLL yyyy' };
  return length > 14 ? { unit: 'week', every: Math.ceil(length / 7 / 10), form: 'd LLL' } : { unit: 'day', every: Math.ceil(length / 10), form: 'd LLL' };
}
