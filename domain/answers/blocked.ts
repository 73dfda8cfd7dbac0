import type { BlockedAnswer, Cause } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Shop } from '../log/shop.ts';
import { actId } from '../plan/from-shop/act-of.ts';
import { usualCures } from '../plan/from-shop/jobs.ts';
import { dayIn } from '../plan/from-shop/moments.ts';
import { planOf, type ShopPlan } from '../plan/from-shop/plan-of.ts';
import type { More, Now } from './given.ts';
import { causesOf, machineCauses, type Asking } from './causes.ts';
import { datedBy } from './dated.ts';
import { hereOf, lookUp, type Found } from './find.ts';

/**
 * What holds up a part, a work on it, or (with no part named) the machine in hand, with the earliest day each can clear, the cheapest act
 * first. Clear is null for a part never heard of.
 */
export function blocked(shop: Shop, ask: AskOf<'blocked'>, now: Now, more: More): BlockedAnswer {
  const found = ask.part === undefined ? machineInHand(shop, more) : lookUp(shop, ask.part, more.machine);
  if (!found) return { kind: 'blocked', part: ask.part ?? more.machine ?? '', clear: null, causes: [] };
  const asking: Asking = { shop, machine: found.machine, now, seen: new Set(), hoist: more.planning?.hoist };
  const causes = found.whole ? machineCauses(asking) : causesOf(found.ref, asking);
  const plan = planOf({ machines: [found.machine], shop, now, settings: more.planning });
  const id = actId(found.machine, found.ref);
  const withDays = (c: Cause[]): Cause[] => (c.length ? datedBy(plan)(c, found.machine, found.whole ? undefined : id) : c);
  const usual = found.whole ? [] : usualBefore(plan, id);
  const curing = stillCuring(found, now);
  return { kind: 'blocked', part: ask.part ?? found.machine.name, clear: causes.length === 0, causes: ownLast(withDays(causes), found), ...(usual.length ? { usual } : {}), ...(curing.length ? { curing } : {}) };
}

/** Putting the part itself on for good comes when the rest is cleared, however cheap it is. */
const ownLast = (causes: Cause[], { thing }: Found): Cause[] => {
  const isOwn = (c: Cause): boolean => c.cause === 'temporary' && c.what === thing?.name;
  return [...causes.filter(c => !isOwn(c)), ...causes.filter(isOwn)];
};

/** What was laid on the part and has not had its usual time. Nobody said how long to leave it, so it is no cause of its own. */
const stillCuring = ({ ref, thing, whole }: Found, now: Now): NonNullable<BlockedAnswer['curing']> =>
  (thing && !whole ? usualCures(ref, thing) : []).filter(c => c.until > Date.parse(now.at)).map(({ coat, lag, hours, until }) => ({ coat, lag, hours, until: dayIn(until, now.zone) }));

/** Open acts that the trade's usual order has before one. */
const usualBefore = (plan: ShopPlan, id: string): NonNullable<BlockedAnswer['usual']> =>
  plan.usual.filter(u => u.then === id && u.rule.first !== '').map(u => ({ first: plan.nameOf(u.first), why: u.rule.why, source: u.rule.source, rule: u.rule.id }));

function machineInHand(shop: Shop, more: More): Found | undefined {
  const machine = hereOf(shop, more.machine);
  return machine && { machine, ref: { key: '', name: machine.name }, thing: machine.things.get(''), whole: true };
}
