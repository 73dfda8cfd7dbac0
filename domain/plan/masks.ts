import { DateTime } from 'luxon';
import { FIT, OBSTACLES, SAMPLED, weatherJudge, type Conditions } from './conditions.ts';
import { stretchOn, type HelpDay, type LocalDays, type Slots } from './calendar.ts';
import type { PlanInput, Site } from './input.ts';
import { sunOn } from './sun.ts';

/** For each set of conditions that occurs, one row: what stands in the way of working in each slot (a code of `OBSTACLES`). */
export interface Masks {
  readonly conditions: readonly Conditions[];
  readonly fit: readonly Uint8Array[];
  /** The last local day that must stay dry for work in that slot: its own, or the one in which its first cure ends. */
  readonly lastDay: readonly Int32Array[];
  /** Longest unbroken stretch the row can give, minutes. */
  readonly longest: Int32Array;
}

const DARK = OBSTACLES.indexOf('dark');
const NO_HELP = OBSTACLES.indexOf('help');

/** Judges every slot once for each different set of conditions, and says which row a job uses. */
export function masksFor(input: PlanInput, slots: Slots): { masks: Masks; row: Int32Array } {
  const rows = new Map<string, number>();
  const conditions: Conditions[] = [];
  const row = Int32Array.from(input.jobs, (job) => {
    const key = JSON.stringify(Object.entries(job.conditions).sort());
    if (!rows.has(key)) rows.set(key, conditions.push(job.conditions) - 1);
    return rows.get(key)!;
  });
  const helped = helpIn(input, slots);
  const light = input.site && conditions.some((c) => c.daylight) ? daylight(input.site, slots, input.hours.zone) : undefined;
  const fit = conditions.map((c) => judged(c, input, slots, helped, light));
  return {
    row,
    masks: {
      conditions, fit, lastDay: conditions.map((c) => lastDays(c, slots)),
      longest: Int32Array.from(fit, (mask) => longestStretch(slots, mask)),
    },
  };
}

function judged(c: Conditions, input: PlanInput, slots: Slots, helped: Uint8Array, light: ((k: number) => boolean) | undefined): Uint8Array {
  const judge = weatherJudge(c, input.weather ?? {}, (at) => slots.days.dates[dayAt(slots.days, (at - slots.origin) / 60_000)]!);
  return Uint8Array.from({ length: slots.count }, (_, k) => {
    if (c.hands === 2 && !helped[k]) return NO_HELP;
    if (c.daylight && light && !light(k)) return DARK;
    return c.hands === 0 ? FIT : judge(slots.origin + slots.start[k]! * 60_000, slots.origin + slots.end[k]! * 60_000);
  });
}

function lastDays(c: Conditions, slots: Slots): Int32Array {
  return slots.day.map((day, k) => (c.cureHours ? dayAt(slots.days, slots.end[k]! + c.cureHours * 60) : day));
}

/** Index of the local day in which a minute lies; past the last one, the last. */
export function dayAt({ dates, dayStart }: LocalDays, minute: number): number {
  let low = 0;
  let high = dates.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (dayStart[middle]! <= minute) low = middle;
    else high = middle;
  }
  return low;
}

/** Slots in which somebody is there to help: the dated days, and after the last of them the usual ones. */
function helpIn({ help = [], helpUsually = [], helpNever = [] }: PlanInput, slots: Slots): Uint8Array {
  const { days } = slots;
  const dated = new Map<string, HelpDay[]>();
  for (const day of help) dated.set(day.date, [...(dated.get(day.date) ?? []), day]);
  const last = [...dated.keys()].sort().at(-1) ?? '';
  const stretches = days.dates.map((date, d) => {
    if (helpNever.includes(date)) return [];
    if (date > last) return helpUsually.filter(({ weekday }) => weekday === days.weekday[d]).map((stretch) => stretchOn(days, d, stretch));
    return (dated.get(date) ?? []).map(({ from = '00:00', to = '24:00' }) => stretchOn(days, d, { from, to }));
  });
  return Uint8Array.from({ length: slots.count }, (_, k) => (
    stretches[slots.day[k]!]!.some(([from, to]) => from <= slots.start[k]! && slots.end[k]! <= to) ? 1 : 0
  ));
}

/** Whether a slot lies between sunrise and sunset. */
function daylight(site: Site, slots: Slots, zone: string): (k: number) => boolean {
  const days = slots.days.dates.map((date) => sunOn(DateTime.fromISO(date, { zone }), site));
  return (k) => {
    const [up, down] = days[slots.day[k]!]!;
    return up <= slots.origin + slots.start[k]! * 60_000 && slots.origin + slots.end[k]! * 60_000 <= down;
  };
}

/** Longest stretch of adjoining slots that could fit, in minutes, for one row of the masks. */
function longestStretch(slots: Slots, fit: Uint8Array): number {
  let longest = 0;
  let from = 0;
  for (let k = 0; k < slots.count; k++) {
    if (fit[k] !== FIT && fit[k] !== SAMPLED) continue;
    const joins = k > 0 && slots.end[k - 1] === slots.start[k] && (fit[k - 1] === FIT || fit[k - 1] === SAMPLED);
    if (!joins) from = slots.start[k]!;
    longest = Math.max(longest, slots.end[k]! - from);
  }
  return longest;
}
