import type { Machine, RuleSaid, Said, Thing } from '../log/shop.ts';
import type { Ref } from '../model/stored.ts';
import { isGetting, isLooking, verbFamily } from '../log/verbs.ts';

/** Whether what must come first has been done, and whether what it holds up has been done already. */
const on = (thing: Thing): boolean => thing.fit?.state === 'on' || thing.fit?.state === 'tight';

/** The last time a work on a thing was finished, or the part came to sit for good, or came off. */
export function lastDone(machine: Machine, act: Ref): Said | undefined {
  const thing = machine.things.get(act.key);
  if (!thing) return undefined;
  if (act.off) return thing.fit?.state === 'off' ? thing.fit : undefined;
  if (!act.verb) return thing.lastOn;
  const work = thing.works.get(verbFamily(act.verb));
  if (work?.done) return work;
  if (isGetting(act.verb)) return thing.inHand;
  return isLooking(act.verb) ? thing.finding : undefined;
}

/**
 * A part that must be on, off or back counts by how it is now. A work counts when it was done since the rule was said; before that
 * only if it wasn't used up by an earlier round (cleaned, fitted, and now apart again).
 */
export function ruleMet(machine: Machine, rule: RuleSaid): boolean {
  const { first } = rule;
  const thing = machine.things.get(first.key);
  if (!thing) return false;
  if (first.off) return thing.fit?.state === 'off' || thing.out !== undefined;
  if (!first.verb) return on(thing) || isBack(thing, rule);
  const done = lastDone(machine, first);
  if (!done) return false;
  if (done.id >= rule.id) return true;
  const held = lastDone(machine, rule.then);
  return !(held && held.id > done.id && held.id < rule.id);
}

/** A part that was out, or that had yet to be got and was never said to be fitted, is in its place in the order once it is here. */
const isBack = (thing: Thing, rule: RuleSaid): boolean =>
  (thing.back !== undefined && thing.back.id > rule.id) || (thing.fit === undefined && thing.inHand !== undefined && thing.inHand.id > rule.id);

/** Whether what the rule holds up has been done since, so that it holds up nothing now. */
export function ruleSpent(machine: Machine, rule: RuleSaid): boolean {
  const { then } = rule;
  if (then.verb || then.off) { const done = lastDone(machine, then); return done !== undefined && done.id > rule.id; }
  const thing = machine.things.get(then.key);
  return thing !== undefined && on(thing) && thing.fit!.id > rule.id;
}
