import type { AheadAnswer } from '../model/answer.ts';
import type { Shop } from '../log/shop.ts';
import { dayIn } from '../plan/from-shop/moments.ts';
import { planOf, type ShopPlan } from '../plan/from-shop/plan-of.ts';
import { planWork } from '../plan/plan.ts';
import { simulate, type SimulationResult } from '../plan/simulate.ts';
import { hereOf } from './find.ts';
import type { More, Now } from './given.ts';
import { some } from './supply.ts';

/** Days that are asked about, both included; an open end is left out. */
export interface DaySpan { from?: string; to?: string }
/** The days ahead: a simulation to be run on the plan, so that the days are of the same order of work as the dates of the finish. */
interface AheadCase { span: DaySpan; plan: ShopPlan }

/** What is planned for which day. */
export function ahead(shop: Shop, span: DaySpan, now: Now, more: More): AheadAnswer {
  const found = aheadCase(shop, span, now, more);
  return 'kind' in found ? found : aheadFrom(found, simulate(found.plan.input));
}

export function aheadCase(shop: Shop, span: DaySpan, now: Now, more: More): AheadCase | AheadAnswer {
  const here = hereOf(shop, more.machine);
  const plan = planOf({ machines: here ? [here] : [...shop.machines.values()], shop, now, settings: more.planning });
  return plan.acts.size ? { span, plan } : { kind: 'ahead', ...some({ ...span }), days: [], stuck: [], why: 'I know of nothing left to do. Say what must be done and I can plan it.' };
}

/** A work stands under each day on which some of it is done; what goes on by itself (a cure) is no work. */
export function aheadFrom({ span, plan }: AheadCase, simulated: SimulationResult): AheadAnswer {
  const worked = planWork(plan.input, { schedules: 1, orders: simulated.ok ? [simulated.order] : [] });
  const base = { kind: 'ahead' as const, ...some({ ...span }) };
  if (!worked.ok) return { ...base, days: [], stuck: [], why: worked.why === 'circle' ? `The order goes in a circle: ${worked.path.map(plan.nameOf).join(' → ')}.` : 'The jobs can\'t be put in an order.' };
  const days = new Map<string, Set<string>>();
  for (const { id, from } of worked.jobs.flatMap(j => j.pieces.map(p => ({ id: j.id, from: p.from }))).sort((a, b) => a.from - b.from)) {
    const day = dayIn(from, plan.input.hours.zone);
    if (day < (span.from ?? day) || day > (span.to ?? day)) continue;
    const works = days.get(day) ?? new Set();
    days.set(day, works.add(plan.nameOf(id)));
  }
  return { ...base, days: [...days].map(([day, works]) => ({ day, works: [...works] })), stuck: worked.stuck.map(s => plan.nameOf(s.id)) };
}
