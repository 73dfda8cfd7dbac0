import type { FreeHours } from '../plan/calendar.ts';
import type { PlanInput } from '../plan/input.ts';
import type { ShopPlan } from '../plan/from-shop/plan-of.ts';

const FULL = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const DAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** What a plan rests on, said so that it can be put right: whose hours, how many jobs, what help is counted on. */
export function basisOf(plan: ShopPlan, input: PlanInput): string[] {
  const count = input.jobs.filter(j => j.conditions.hands > 0).length;
  const hours = `${week(plan.input.hours.weekly)}, ${{ said: 'as you said', learned: 'as the log shows', assumed: 'assumed, as you never said' }[plan.hoursFrom]}`;
  const helped = input.jobs.filter(j => j.conditions.hands === 2);
  const days = [...(input.help ?? []).map(h => h.date), ...(input.helpUsually ?? []).map(h => `${FULL[h.weekday - 1]}s`)];
  const help = helped.length ? [`For ${plan.nameOf(helped[0]!.id)}${helped.length > 1 ? ` and ${helped.length - 1} more` : ''} help is counted on: ${days.join(', ') || 'none'}.`] : [];
  const heavy = !plan.hoistSaid ? input.jobs.filter(j => j.orHoist && j.conditions.hands === 1) : [];
  const hoist = heavy.length ? [`For ${plan.nameOf(heavy[0]!.id)}${heavy.length > 1 ? ` and ${heavy.length - 1} more` : ''} a hoist is counted on; say so if there is none.`] : [];
  return [`${count} ${count === 1 ? 'job' : 'jobs'} open; hours: ${hours}.`, ...help, ...hoist];
}

/** "Mon–Fri 18:00–20:00, Sat 09:00–13:00". */
export function week(weekly: FreeHours['weekly']): string {
  const times = new Map<string, number[]>();
  for (const { weekday, from, to } of [...weekly].sort((a, b) => a.weekday - b.weekday)) times.set(`${from}–${to}`, [...(times.get(`${from}–${to}`) ?? []), weekday]);
  return [...times].map(([time, days]) => `${daysSaid(days)} ${time}`).join(', ') || 'none';
}

function daysSaid(days: readonly number[]): string {
  const runs: number[][] = [];
  for (const d of days) { const last = runs.at(-1); if (last && last.at(-1) === d - 1) last.push(d); else runs.push([d]); }
  return runs.map(r => (r.length > 2 ? `${DAYS[r[0]! - 1]}–${DAYS[r.at(-1)! - 1]}` : r.map(d => DAYS[d - 1]).join(', '))).join(', ');
}
