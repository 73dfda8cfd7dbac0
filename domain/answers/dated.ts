import type { Cause } from '../model/answer.ts';
import { actId, asAct } from '../plan/from-shop/act-of.ts';
import { earliest } from '../plan/from-shop/earliest.ts';
import { dayIn, HOUR } from '../plan/from-shop/moments.ts';
import type { ShopPlan } from '../plan/from-shop/plan-of.ts';
import { meanOf } from '../plan/three-point.ts';
import type { Machine, Thing } from '../log/shop.ts';

/** Money that weighs as much as an hour of work when acts are put in order. A mere weighting; nobody is told. */
const HOUR_WEIGHS = 20;
/** What comes of itself: its day is somebody's word, or a guess. */
const TO_COME = new Set<Cause['cause']>(['on order', 'late', 'out', 'wait']);
/** Hours taken for a call or an order. */
const SMALL_ACT = 0.25;

/** Gives the causes that hold up an act the earliest day each can clear, where there is one, and puts the cheapest act first on each level. */
type Dating = (causes: readonly Cause[], machine: Machine, heldUp?: string) => Cause[];

/** Makes the dating of one plan. What has to dry or cure before the act held up (by its id) clears when it has. */
export function datedBy(plan: ShopPlan): Dating {
  const days = earliest(plan.input);
  const jobs = new Map(plan.input.jobs.map(j => [j.id, j]));
  const ids = new Map<Machine, Map<string, string>>();
  return (causes, machine, heldUp) => {
    if (!ids.has(machine)) ids.set(machine, idsOf(machine, plan));
    const one = (cause: Cause, above: string | undefined): { cause: Cause; cost: number } => {
      const id = ids.get(machine)!.get(nameOf(cause));
      const under = cause.causes.map(c => one(c, id)).sort((a, b) => a.cost - b.cost);
      const own = cause.act ? (id && jobs.has(id) ? meanOf(jobs.get(id)!.hours) : SMALL_ACT) * HOUR_WEIGHS + priceOf(machine, cause) : Infinity;
      const lag = jobs.get(above ?? '')?.after.find(l => l.job === id)?.lagHours ?? 0;
      // Help that nobody promised is counted on for the day on which the act can begin.
      const free = cause.cause === 'help' ? days.get(above ?? '')?.start : days.get(id ?? '')?.end;
      const clears = latest([cause.clears ?? dayOf(free, lag, plan), ...under.map(u => u.cause.clears)]);
      return { cause: { ...cause, ...(clears ? { clears, ...(!cause.clears && TO_COME.has(cause.cause) ? { guessed: true } : {}) } : {}), causes: under.map(u => u.cause) }, cost: under.length ? Math.min(...under.map(u => u.cost)) : own };
    };
    return causes.map(c => one(c, heldUp)).sort((a, b) => (a.cost === b.cost ? 0 : a.cost - b.cost)).map(c => c.cause);
  };
}

const dayOf = (at: number | undefined, lagHours: number, { input }: ShopPlan): string | undefined =>
  (at === undefined ? undefined : dayIn(at + lagHours * HOUR, input.hours.zone));

/** A cause clears with the last of what is under it; where one of these has no day, it has none beyond its own. */
const latest = (days: readonly (string | undefined)[]): string | undefined => (days.slice(1).includes(undefined) ? days[0] : days.filter(d => d !== undefined).sort().at(-1));

const nameOf = ({ cause, what }: Cause): string => `${cause}|${what.toLowerCase()}`;

/** Which act or delivery of the plan a cause speaks of. */
function idsOf(machine: Machine, plan: ShopPlan): Map<string, string> {
  const ids = new Map<string, string>();
  const add = (cause: Cause['cause'], what: string, id: string): void => { ids.set(nameOf({ cause, what, causes: [] }), id); };
  for (const rule of machine.rules) add('rule', rule.firstSaid, actId(machine, rule.first));
  for (const a of plan.acts.values()) {
    if (a.machine.key !== machine.key) continue;
    const name = machine.things.get(a.ref.key)?.name ?? a.ref.name;
    if (a.ref.verb) add('not done', a.ref.key ? `${a.ref.verb} ${name}` : a.ref.verb, a.id);
    if (a.origin === 'recheck') add('recheck', name, a.id);
    if (a.origin === 'temporary') add('temporary', name, actId(machine, asAct(a.ref.key, name)));
  }
  for (const { supply, kind, thing } of plan.awaited.values()) {
    if (machine.things.get(thing.key) !== thing) continue;
    if (kind === 'out') add('out', thing.name, supply.id);
    else if (kind !== 'wait') add(kind === 'want' ? 'not bought' : kind === 'late' ? 'late' : 'on order', thing.name, supply.id);
  }
  return ids;
}

/** The cheapest price heard for what must be bought. */
function priceOf(machine: Machine, { cause, what }: Cause): number {
  if (cause !== 'not bought') return 0;
  const thing: Thing | undefined = [...machine.things.values()].find(t => t.name === what);
  const prices = thing?.quotes.map(q => (q.price.cents * (q.price.qty ?? 1) + (q.price.shippingCents ?? 0)) / 100) ?? [];
  return prices.length ? Math.min(...prices) : 0;
}
