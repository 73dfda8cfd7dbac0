import type { Cause } from '../../domain/model/answer.ts';
import type { Now } from '../../domain/answers/given.ts';
import type { More } from '../../domain/answers/given.ts';
import { basisOf } from '../../domain/answers/basis.ts';
import { causesOf, type Asking } from '../../domain/answers/causes.ts';
import { datedBy } from '../../domain/answers/dated.ts';
import { finishFrom } from '../../domain/answers/finish.ts';
import type { Shop } from '../../domain/log/shop.ts';
import { actId, type OpenAct } from '../../domain/plan/from-shop/act-of.ts';
import { earliest } from '../../domain/plan/from-shop/earliest.ts';
import { dayIn } from '../../domain/plan/from-shop/moments.ts';
import { planOf, type ShopPlan } from '../../domain/plan/from-shop/plan-of.ts';
import { planWork, type WorkPlan } from '../../domain/plan/plan.ts';
import type { Reason } from '../../domain/plan/reason.ts';
import { simulate } from '../../domain/plan/simulate.ts';
import { reasonWords } from '../say/plan-reasons.ts';

/** All of the plan as facts; days are YYYY-MM-DD in the shop's zone, null where there is none. */
export interface WholePlan {
  jobs: { do: string; part?: string; machine?: string; earliest: string | null; start: string | null; end: string | null; why: string[] }[];
  blockers: { part: string; machine?: string; causes: Cause[] }[];
  /** The last day on which each thing can be ordered without moving the finish; `late`: it moves it even when ordered today. */
  orderBy: { item: string; by: string; late?: boolean }[];
  finish: { p50: string | null; p80: string | null; driver: string | null };
  /** Why there is no finish, and what the plan rests on. */
  basis: string[];
}

/** Plans all that is open in the shop, of all its machines: the hours are one person's. */
export function wholePlan(shop: Shop, now: Now, more: More): WholePlan {
  const plan = planOf({ machines: [...shop.machines.values()], shop, now, settings: more.planning });
  const simulated = simulate(plan.input, { orderBy: true });
  const worked = planWork(plan.input, { orders: simulated.ok ? [simulated.order] : [] });
  const day = (at: number | undefined): string | null => (at === undefined ? null : dayIn(at, now.zone));
  const { p50, p80, driver, why } = plan.acts.size ? finishFrom({ ask: { kind: 'finish' }, plan, input: plan.input, more: [] }, simulated) : { p50: null, p80: null, driver: null, why: undefined };
  return {
    jobs: worked.ok ? jobsOf(plan, worked, now) : [],
    blockers: blockersOf({ shop, now, seen: new Set(), hoist: more.planning?.hoist }, plan),
    orderBy: simulated.ok ? simulated.orderBy.map(o => ({ item: o.what, by: day(o.by)!, ...(o.late ? { late: true } : {}) })) : [],
    finish: { p50, p80, driver },
    basis: why ? [why] : plan.acts.size ? basisOf(plan, plan.input) : ['Nothing is open.'],
  };
}

function jobsOf(plan: ShopPlan, worked: WorkPlan, now: Now): WholePlan['jobs'] {
  const soonest = earliest(plan.input);
  const day = (at: number | undefined): string | null => (at === undefined ? null : dayIn(at, now.zone));
  const naming = { zone: now.zone, now: Date.parse(now.at), nameOf: plan.nameOf };
  const line = (id: string, start: number | undefined, end: number | undefined, why: readonly Reason[]): WholePlan['jobs'][number] => {
    const act = plan.acts.get(id)!;
    // Hours taken by the job's own earlier piece are no reason.
    const reasons = why.filter(r => !(r.why === 'busy' && r.job === id)).map(r => reasonWords(r, naming));
    return { ...named(act), earliest: day(soonest.get(id)?.start), start: day(start), end: day(end), why: [...(reasons.length || start === undefined ? reasons : [turnWhy(plan, worked, start)]), ...usualWhy(plan, id)] };
  };
  return [...worked.jobs.map(j => line(j.id, j.start, j.end, j.why)), ...worked.stuck.map(s => line(s.id, undefined, undefined, s.why))];
}

/** A job that nothing holds up waits only for its turn. */
function turnWhy(plan: ShopPlan, worked: WorkPlan, start: number): string {
  const before = worked.jobs.filter(j => j.pieces.length && j.end <= start).sort((a, b) => b.end - a.end)[0];
  return before ? `your hours go to ${plan.nameOf(before.id)} first` : 'nothing holds it up';
}

/** Where the trade's usual order puts one act before another, and why; the person's own rules need no reason. */
const usualWhy = (plan: ShopPlan, id: string): string[] =>
  plan.usual.filter(u => u.then === id && u.rule.first !== '').map(u => `usually after ${plan.nameOf(u.first)}: ${u.rule.why} (${u.rule.source})`);

function named({ do: verb, ref, machine }: OpenAct): { do: string; part?: string; machine?: string } {
  const part = ref.key ? machine.things.get(ref.key)?.name ?? ref.name : undefined;
  return { do: verb, ...(part ? { part } : ref.verb ? {} : { part: ref.name }), ...(machine.name ? { machine: machine.name } : {}) };
}

/** Every part with open work that something holds up, and what. */
function blockersOf(asking: Omit<Asking, 'machine'>, plan: ShopPlan): WholePlan['blockers'] {
  const dated = datedBy(plan);
  return [...asking.shop.machines.values()].flatMap(machine => {
    const keys = new Set([...plan.acts.values()].filter(a => a.machine === machine && a.ref.key && a.origin !== 'get').map(a => a.ref.key));
    return [...keys].sort().flatMap(key => {
      const thing = machine.things.get(key);
      const causes = thing ? causesOf({ key, name: thing.name }, { ...asking, machine }) : [];
      return thing && causes.length ? [{ part: thing.name, ...(machine.name ? { machine: machine.name } : {}), causes: dated(causes, machine, actId(machine, thing)) }] : [];
    });
  });
}
