import { DateTime } from 'luxon';
import type { Now } from '../../answers/given.ts';
import type { Machine, Shop } from '../../log/shop.ts';
import type { Proposal } from '../../lore/match.ts';
import type { FreeHours } from '../calendar.ts';
import type { PlanInput } from '../input.ts';
import { said, type OpenAct } from './act-of.ts';
import { openActs } from './acts.ts';
import { daysAlone, helpDays } from './help.ts';
import { jobOf, skiesSaid } from './jobs.ts';
import { dayIn } from './moments.ts';
import { linksOf, orderOf } from './order.ts';
import { ASSUMED_HOURS, assumedHelp, HELPED_HOURS, type PlanSettings } from './settings.ts';
import { awaited, type Awaited } from './supplies.ts';

/** The open work of a shop as the planner takes it, and what its ids mean. */
export interface ShopPlan {
  input: PlanInput;
  acts: Map<string, OpenAct>;
  awaited: Map<string, Awaited>;
  /** Usual orders that hold, by the ids of their acts. */
  usual: Proposal[];
  hoursFrom: 'said' | 'learned' | 'assumed';
  /** Whether the person said if there is a hoist; otherwise one is counted on. */
  hoistSaid: boolean;
  /** An act or a thing that is waited for, as the person would say it. */
  nameOf(id: string): string;
}

/** `skipped`: acts that are supposed to be left undone, by id. */
interface PlanOf { machines: readonly Machine[]; shop: Shop; now: Now; settings?: PlanSettings; skipped?: (act: OpenAct) => boolean }

/** Makes the planner's input of the state of the shop: acts, order, hours, cures, deliveries, help and weather. */
export function planOf({ machines, shop, now, settings = {}, skipped }: PlanOf): ShopPlan {
  const plan: Omit<ShopPlan, 'input' | 'nameOf'> = { acts: new Map(), awaited: new Map(), usual: [], hoursFrom: settings.hours ? settings.hoursFrom ?? 'said' : 'assumed', hoistSaid: settings.hoist !== undefined };
  const jobs = machines.flatMap(machine => {
    const acts = openActs(machine, shop, now);
    const waits = awaited(machine, acts, now);
    if (skipped) for (const act of [...acts.byId.values()]) if (skipped(act)) acts.byId.delete(act.id);
    const order = orderOf(machine, acts, settings.refused ?? new Set());
    const links = linksOf(acts, order);
    plan.usual.push(...order.usual);
    for (const w of waits) if (w.acts.some(id => acts.byId.has(id))) plan.awaited.set(w.supply.id, w);
    for (const act of acts.byId.values()) plan.acts.set(act.id, act);
    return [...acts.byId.values()].map(act =>
      jobOf(act, { shop, now, hoist: settings.hoist }, links.get(act.id)!, waits.filter(w => w.acts.includes(act.id)).map(w => w.supply.id)));
  });
  const weather = { said: skiesSaid(shop, now), ...(settings.forecast ? { forecast: settings.forecast } : {}), ...(settings.climate ? { climate: settings.climate } : {}) };
  const today = dayIn(Date.parse(now.at), now.zone);
  const help = helpDays(shop, today);
  const hours = withHelp({ zone: now.zone, weekly: settings.hours?.weekly ?? ASSUMED_HOURS, exceptions: settings.hours?.exceptions ?? [] }, help);
  const input: PlanInput = {
    now: Date.parse(now.at), jobs, supplies: [...plan.awaited.values()].map(w => w.supply), weather, hours, help, helpUsually: settings.alone ? [] : assumedHelp(hours.weekly), helpNever: daysAlone(shop, today), ...(settings.site ? { site: settings.site } : {}),
  };
  const nameOf = (id: string): string => {
    const act = plan.acts.get(id);
    return act ? said(act) : plan.awaited.get(id)?.supply.what ?? id;
  };
  return { ...plan, input, nameOf };
}

/** The week, with hours on the days of help that have none. */
function withHelp(hours: FreeHours, help: readonly { date: string }[]): FreeHours {
  const days = help.filter(({ date }) => !hours.exceptions.some(e => e.date === date) && !hours.weekly.some(w => w.weekday === DateTime.fromISO(date).weekday));
  return days.length ? { ...hours, exceptions: [...hours.exceptions, ...days.map(({ date }) => ({ date, stretches: [HELPED_HOURS] }))] } : hours;
}

/** Ids of the acts on some things of a machine. */
export const actsOn = (plan: ShopPlan, machine: Machine, keys: ReadonlySet<string>): string[] =>
  [...plan.acts.values()].filter(a => a.machine.key === machine.key && keys.has(a.ref.key)).map(a => a.id);

/** The input cut down to some acts and all that comes before them: as it goes when the hours are theirs. */
export function onlyFor({ input }: ShopPlan, targets: readonly string[]): PlanInput {
  const byId = new Map(input.jobs.map(j => [j.id, j]));
  const kept = new Set(targets.filter(id => byId.has(id)));
  for (const id of kept) for (const { job } of byId.get(id)!.after) kept.add(job);
  const jobs = input.jobs.filter(j => kept.has(j.id));
  const needed = new Set(jobs.flatMap(j => j.needs));
  return { ...input, jobs, supplies: input.supplies.filter(s => needed.has(s.id)) };
}

