import { DateTime } from 'luxon';
import type { PlanInput, PlanJob } from '../../../../domain/plan/input.ts';
import { planWork, type WorkPlan } from '../../../../domain/plan/plan.ts';

/** A made-up shop for the tests of the planner: evenings 18-20 and Saturday mornings 8-12, on the East Coast's clock. */
export const zone = 'America/New_York';
export const evenings: PlanInput['hours'] = {
  zone, exceptions: [],
  weekly: [...[1, 2, 3, 4, 5].map((weekday) => ({ weekday, from: '18:00', to: '20:00' })), { weekday: 6, from: '08:00', to: '12:00' }],
};

/** `2026-05-04 18:00` on the shop's clock as ms UTC. */
export const at = (text: string) => DateTime.fromFormat(text, text.length > 10 ? 'yyyy-MM-dd HH:mm' : 'yyyy-MM-dd', { zone }).toMillis();
export const clock = (ms: number | undefined) => (ms === undefined ? undefined : DateTime.fromMillis(ms, { zone }).toFormat('ccc yyyy-MM-dd HH:mm'));

export function job(id: string, hours: number, more: Partial<Omit<PlanJob, 'conditions'>> & { conditions?: Partial<PlanJob['conditions']> } = {}): PlanJob {
  return {
    id, hours: { low: hours, likely: hours, high: hours }, after: [], needs: [], ...more,
    conditions: { place: 'indoors', hands: 1, ...more.conditions },
  };
}

/** Monday 4 May 2026, eight in the morning, unless told. */
export function shop(jobs: PlanJob[], more: Partial<PlanInput> = {}): PlanInput {
  return { now: at('2026-05-04 08:00'), jobs, supplies: [], hours: evenings, ...more };
}

export function planned(input: PlanInput, options?: Parameters<typeof planWork>[1]): WorkPlan {
  const plan = planWork(input, options);
  if (!plan.ok) throw new Error(JSON.stringify(plan));
  return plan;
}

export function planOf(plan: WorkPlan, id: string) {
  const found = plan.jobs.find((planned) => planned.id === id);
  if (!found) throw new Error(`${id} has no date: ${JSON.stringify(plan.stuck)}`);
  return found;
}
