import { DateTime } from 'luxon';
import type { PlanInput } from '../../../../domain/plan/input.ts';
import type { WorkPlan } from '../../../../domain/plan/plan.ts';

/**
 * Says what is wrong with a plan of a shop, or `undefined`. Written apart from the planner: it looks at the clock on the wall
 * for every five minutes of work, knows nothing of slots, and takes durations and deliveries at their means.
 */
export function faultInShop(input: PlanInput, plan: WorkPlan): string | undefined {
  const jobs = new Map(plan.jobs.map((job) => [job.id, job]));
  const worked = new Map<number, string>();
  for (const { id, hours, after, needs, notBefore, conditions, unbroken } of input.jobs) {
    const job = jobs.get(id);
    if (!job) continue;
    const mean = Math.round(((hours.low + 4 * hours.likely + hours.high) / 6) * 60);
    if (job.start < input.now) return `${id} starts in the past`;
    for (const { job: before, lagHours = 0 } of after) {
      const first = jobs.get(before);
      if (!first) return `${id} is planned, ${before} before it is not`;
      if (job.start < first.end + Math.round(lagHours * 60) * 60_000) return `${id} starts before ${before} has ended and cured`;
    }
    for (const need of needs) {
      const supply = input.supplies.find((one) => one.id === need)!;
      const mid = ({ low, likely, high }: { low: number; likely: number; high: number }) => (low + 4 * likely + high) / 6;
      const arrives = 'arrives' in supply ? mid(supply.arrives) : (supply.orderedAt ?? input.now) + mid(supply.leadDays) * 864e5;
      if (job.start < arrives - 60_000) return `${id} starts before ${need} is there`;
    }
    if (notBefore && job.start < notBefore.at) return `${id} starts before its date`;
    if (conditions.hands === 0) {
      if (job.end - job.start !== mean * 60_000) return `${id} does not take its time`;
      continue;
    }
    const minutes = job.pieces.reduce((sum, { from, to }) => sum + (to - from) / 60_000, 0);
    if (minutes !== mean) return `${id} is worked ${minutes} minutes, not ${mean}`;
    if (unbroken && mean <= 120 && job.pieces.length !== 1) return `${id} is broken up`;
    for (const { from, to } of job.pieces) {
      for (let at = from; at < to; at += 60_000) {
        if (worked.has(at)) return `${id} and ${worked.get(at)} at once`;
        worked.set(at, id);
        if ((at - from) % 300_000 === 0 && !isOpen(input, at)) return `${id} is worked outside the free hours, ${new Date(at).toISOString()}`;
        if (conditions.hands === 2 && (at - from) % 300_000 === 0 && !isHelped(input, at)) return `${id} is worked without help`;
      }
    }
  }
  return undefined;
}

const clock = (moment: DateTime) => moment.toFormat('HH:mm');

function isOpen({ hours }: PlanInput, at: number): boolean {
  const moment = DateTime.fromMillis(at, { zone: hours.zone });
  const exception = hours.exceptions.find(({ date }) => date === moment.toISODate());
  const stretches = exception ? exception.stretches : hours.weekly.filter(({ weekday }) => weekday === moment.weekday);
  return stretches.some(({ from, to }) => from <= clock(moment) && clock(moment) < to);
}

function isHelped({ help = [], helpUsually = [], hours }: PlanInput, at: number): boolean {
  const moment = DateTime.fromMillis(at, { zone: hours.zone });
  return help.some(({ date, from = '00:00', to = '24:00' }) => date === moment.toISODate() && from <= clock(moment) && clock(moment) < to)
    || helpUsually.some(({ weekday, from, to }) => weekday === moment.weekday && from <= clock(moment) && clock(moment) < to);
}
