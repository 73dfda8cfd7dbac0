import { addDays, after, dayOf } from '../log/days.ts';
import type { Machine, MeterPoint, OpenRecheck, Said, Thing } from '../log/shop.ts';

/** When a recheck falls due: on a day, or when the machine has run so much further. */
type Due = { due: boolean; on: string } | { due: boolean; left: number | undefined; unit: 'hours' | 'miles' };

/** `at`: the moment of the question, ISO. `upTo`: only meter readings up to that entry count. */
export function dueOf(machine: Machine, recheck: OpenRecheck, at: string, upTo = Number.MAX_SAFE_INTEGER): Due {
  const { after: span, unit } = recheck;
  if (span !== undefined && (unit === 'hours' || unit === 'miles')) {
    const run = runSince(unit === 'hours' ? machine.running : machine.distance, recheck, upTo);
    return { due: run !== undefined && run >= span, left: run === undefined ? undefined : Math.max(0, span - run), unit };
  }
  const on = dueDay(recheck);
  return { due: dayOf(at) >= on, on };
}

/** A recheck without a day or span was left open on purpose: it is due from the next day on, for asking early harms nothing. */
function dueDay(recheck: OpenRecheck): string {
  if (recheck.due !== undefined) return recheck.due;
  if (recheck.after !== undefined && recheck.unit && recheck.unit !== 'hours' && recheck.unit !== 'miles') return dayOf(after(recheck.at, recheck.after, recheck.unit));
  return addDays(dayOf(recheck.at), 1);
}

/**
 * How far the meter went on since the recheck was asked for. With no reading before that, it counts from nought: then it comes
 * rather too early than too late. A meter that goes back was changed or set back, and counts from nought too.
 */
function runSince(points: readonly MeterPoint[], from: Said, upTo: number): number | undefined {
  const latest = latestUpTo(points, upTo);
  if (!latest) return undefined;
  const start = latestUpTo(points, from.id)?.value ?? 0;
  return latest.value >= start ? latest.value - start : latest.value;
}

/** The last reading that an entry up to that number gave; readings are in the order of the log, so half of them fall away at each step. */
function latestUpTo(points: readonly MeterPoint[], id: number): MeterPoint | undefined {
  let [from, to] = [0, points.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (points[middle]!.id <= id) from = middle + 1; else to = middle;
  }
  return points[from - 1];
}

/** A look at the thing since then settles it, if it was due by then. */
const settled = (machine: Machine, r: OpenRecheck): boolean => r.looked !== undefined && dueOf(machine, r, r.looked.at, r.looked.id).due;

/** The rechecks of a thing that are not settled. */
export const openRechecks = (machine: Machine, thing: Thing): OpenRecheck[] => thing.rechecks.filter(r => !settled(machine, r));
