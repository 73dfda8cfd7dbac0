import { DateTime } from 'luxon';
import type { WorkPlan } from '../../domain/plan/plan.ts';
import type { Simulation } from '../../domain/plan/simulate.ts';
import type { ShopPlan } from '../../domain/plan/from-shop/plan-of.ts';
import { ACT, INK, RULE, sheet, text, wrapped } from './paper.ts';

/** What is drawn: the plan's bars, and for each job and the whole the dates that half and four in five of the runs kept. */
interface Weeks { shop: ShopPlan; plan: WorkPlan; simulated: Simulation; title: string }

const [NAMES, ROW, MARGIN, HEAD, FOOT] = [250, 30, 24, 86, 74];
const WEEK = 7 * 86_400_000;
/** A sheet that can still be read on a telephone. */
const MOST_JOBS = 30;
const WIDEST = 900;
const DATE_WIDE = 50;

/**
 * The weeks ahead: a bar a job from its start to its end, a tick where half of the runs have it done and a heavier one where four in five
 * have. Vertical lines are Mondays; the two marks of the whole stand at the foot with their dates.
 */
export function drawWeeks({ shop, plan, simulated, title }: Weeks): string {
  const { zone } = shop.input.hours;
  const jobs = plan.jobs.filter(j => shop.acts.get(j.id)?.origin !== 'get');
  const shown = jobs.slice(0, MOST_JOBS);
  const spread = new Map(simulated.jobs.map(j => [j.id, j]));
  const begin = DateTime.fromMillis(shop.input.now, { zone }).startOf('week').toMillis();
  const last = Math.max(begin + WEEK, plan.finish ?? 0, simulated.p80 ?? 0, ...shown.map(j => Math.max(j.end, spread.get(j.id)?.p80 ?? 0)));
  const weeks = Math.ceil((last - begin) / WEEK + 0.05);
  const perWeek = Math.min(130, WIDEST / weeks);
  const x = (at: number): number => MARGIN + NAMES + ((at - begin) / WEEK) * perWeek;
  const bottom = HEAD + shown.length * ROW;
  const width = x(begin + weeks * WEEK) + MARGIN;
  const body = [
    text(MARGIN, 36, title, 'font-weight="bold" font-size="20"'),
    ...ruled(begin, weeks, perWeek, zone, x, bottom),
    ...shown.map((j, i) => row(shop.nameOf(j.id), { ...j, ...marks(spread.get(j.id)) }, HEAD + i * ROW, x)),
    ...whole(simulated, DateTime.fromMillis(shop.input.now, { zone }), x, bottom),
    ...(jobs.length > shown.length ? [text(MARGIN, bottom + 24, `and ${jobs.length - shown.length} more`)] : []),
    legend(MARGIN, bottom + FOOT - 12),
  ];
  return sheet(Math.max(width, 620), bottom + FOOT, title, body.join(''));
}

const marks = (s: Simulation['jobs'][number] | undefined): { p50?: number; p80?: number } => ({ p50: s?.p50, p80: s?.p80 });

/** Mondays, with their dates as far as there is room for them; where the weeks stand too close, only those that are dated. */
function ruled(begin: number, weeks: number, perWeek: number, zone: string, x: (at: number) => number, bottom: number): string[] {
  const every = Math.ceil(64 / perWeek);
  return Array.from({ length: weeks + 1 }, (_, w) => {
    if (perWeek < 12 && w % every) return '';
    const monday = DateTime.fromMillis(begin, { zone }).plus({ weeks: w });
    const at = x(monday.toMillis()).toFixed(1);
    const date = w % every === 0 && (weeks - w) * perWeek >= DATE_WIDE ? text(Number(at) + 4, HEAD - 14, monday.toFormat('d LLL', { locale: 'en' }), 'font-size="13"') : '';
    return `<line x1="${at}" y1="${HEAD - 8}" x2="${at}" y2="${bottom}" stroke="${RULE}"/>${date}`;
  });
}

interface Bar { start: number; end: number; p50?: number; p80?: number }

function row(name: string, { start, end, p50, p80 }: Bar, y: number, x: (at: number) => number): string {
  const [line = '', more] = wrapped(name, 30);
  const middle = y + ROW / 2;
  const tick = (at: number | undefined, weight: number): string =>
    (at === undefined ? '' : `<line x1="${x(at).toFixed(1)}" y1="${y + 4}" x2="${x(at).toFixed(1)}" y2="${y + ROW - 4}" stroke="${INK}" stroke-width="${weight}"/>`);
  const reach = p80 !== undefined && p80 > end ? `<line x1="${x(end).toFixed(1)}" y1="${middle}" x2="${x(p80).toFixed(1)}" y2="${middle}" stroke="${INK}" stroke-dasharray="2 4"/>` : '';
  return `${text(24, middle + 5, more === undefined ? line : `${line}…`, 'font-size="14"')}${reach}`
    + `<rect x="${x(start).toFixed(1)}" y="${y + 8}" width="${Math.max(4, x(end) - x(start)).toFixed(1)}" height="${ROW - 16}" fill="${ACT}" stroke="${INK}"/>${tick(p50, 1.5)}${tick(p80, 3.5)}`;
}

/** The two dates of the whole, from top to bottom of the sheet. */
function whole({ p50, p80 }: Simulation, now: DateTime, x: (at: number) => number, bottom: number): string[] {
  const day = (at: number): string => { const d = DateTime.fromMillis(at, { zone: now.zone }); return d.toFormat(d.year === now.year ? 'ccc d LLL' : 'ccc d LLL yyyy', { locale: 'en' }); };
  const near = p50 !== undefined && p80 !== undefined && x(p80) - x(p50) < 190;
  const mark = (at: number | undefined, words: string, weight: number, low: boolean): string =>
    (at === undefined ? '' : `<line x1="${x(at).toFixed(1)}" y1="${HEAD - 8}" x2="${x(at).toFixed(1)}" y2="${bottom + 6}" stroke="${INK}" stroke-width="${weight}" stroke-dasharray="8 5"/>`
      + text(Number(x(at).toFixed(1)), bottom + (low ? 40 : 22), `${words} ${day(at)}`, 'text-anchor="end" font-weight="bold" font-size="14"'));
  return [mark(p50, 'half by', 1.5, false), mark(p80, 'four in five by', 3, near)];
}

const legend = (x: number, y: number): string =>
  text(x, y, 'bar: the plan · thin tick: half of the runs have it done · heavy tick: four in five', `font-size="13" fill="${INK}"`);
