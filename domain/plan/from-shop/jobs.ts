import type { Now } from '../../answers/given.ts';
import { saidOf } from '../../answers/weather.ts';
import { addDays, dayOf } from '../../log/days.ts';
import type { Shop, Thing } from '../../log/shop.ts';
import type { Ref } from '../../model/stored.ts';
import { usualConditions } from '../../lore/conditions.ts';
import { lagBetween } from '../../lore/cures.ts';
import { usualHours } from '../../lore/hours.ts';
import { act } from '../../lore/act.ts';
import type { SaidSky } from '../forecast.ts';
import type { Link, PlanJob } from '../input.ts';
import { actId, loreAct, type OpenAct } from './act-of.ts';
import { dayIn, HOUR, momentOf } from './moments.ts';

/** `hoist`: whether the person has one; undefined: never said. */
interface JobOf { shop: Shop; now: Now; hoist?: boolean }

/** An open act as the planner takes it: usual hours and conditions of such work, and what the log says of this one. */
export function jobOf(one: OpenAct, { shop, now, hoist }: JobOf, after: Link[], needs: string[]): PlanJob {
  if (one.origin === 'get') return { id: one.id, hours: { low: 0, likely: 0, high: 0 }, conditions: { place: 'either', hands: 0 }, after, needs };
  const lore = loreAct(one.ref);
  const { conditions, unbroken, orHoist } = usualConditions(lore);
  const { low, likely, high } = usualHours(lore);
  const left = one.begun ? 0.5 : 1;
  // Whoever was asked to come for it is wanted for it though they call off.
  const helped = shop.hands.some(h => !h.none && h.machine === one.machine.key && h.for && actId(one.machine, h.for) === one.id && h.when >= dayOf(now.at));
  const notBefore = restOf(one, now);
  return {
    id: one.id, after, needs, hours: { low: low * left, likely: likely * left, high: high * left },
    // What a hoist does as well is not held up for want of a second person, unless one was asked to come for it or there is no hoist.
    conditions: helped ? { ...conditions, hands: 2 } : orHoist && hoist !== false ? { ...conditions, hands: 1 } : conditions,
    ...(orHoist ? { orHoist } : {}), ...(unbroken ? { unbroken } : {}), ...(notBefore ? { notBefore } : {}),
  };
}

/** What was told to be left alone, or was coated or glued a short while ago. The person's word about it beats the usual cure. */
function restOf(one: OpenAct, now: Now): PlanJob['notBefore'] {
  const t = one.machine.things.get(one.ref.key);
  if (!t || !one.ref.key) return undefined;
  const at = Date.parse(now.at);
  const waits = t.wait?.until === undefined ? [] : [{ at: momentOf(t.wait.until, now.zone), what: `the ${t.name} to be left alone` }];
  return [...waits, ...cures(one, t)].filter(w => w.at > at).sort((a, b) => b.at - a.at)[0];
}

function cures(one: OpenAct, t: Thing): { at: number; what: string }[] {
  return usualCures(one.ref, t).map(c => ({ at: c.until, what: `the ${c.coat} on the ${t.name} to ${c.lag}` }));
}

/** What was laid on a thing, and by its usual time keeps an act on it waiting: until when (ms UTC). The person's own word about a wait since then beats it. */
export function usualCures(ref: Ref, t: Thing): { coat: string; lag: string; hours: number; until: number }[] {
  return [...t.works.values()].filter(w => w.done && w.id > (t.wait?.id ?? 0)).flatMap(w => {
    const lag = lagBetween(act(w.action, t.name), loreAct(ref), w.product);
    return lag ? [{ coat: w.product ?? w.action, lag: lag.lag, hours: lag.hours, until: Date.parse(w.at) + lag.hours * HOUR }] : [];
  });
}

/** How far ahead the person's words about the weather can reach, days. */
const SKY_DAYS = 21;

/** The person's words about the weather, day by day. */
export function skiesSaid(shop: Shop, now: Now): SaidSky[] {
  const today = dayIn(Date.parse(now.at), now.zone);
  return Array.from({ length: SKY_DAYS }, (_, d) => addDays(today, d)).flatMap(date => {
    const sky = saidOf(shop, date)?.sky;
    return sky ? [{ date, sky }] : [];
  });
}
