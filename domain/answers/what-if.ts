import type { Entry } from '../model/entry.ts';
import type { WhatIfAnswer } from '../model/answer.ts';
import { refsOf } from '../log/refs.ts';
import { apply } from '../log/replay.ts';
import { machineNamed } from '../log/naming.ts';
import type { Machine, Shop, Thing } from '../log/shop.ts';
import type { OpenAct } from '../plan/from-shop/act-of.ts';
import { earliest } from '../plan/from-shop/earliest.ts';
import { dayIn, DAY, momentOf } from '../plan/from-shop/moments.ts';
import { TO_GET } from '../plan/from-shop/lead-times.ts';
import { planOf, type ShopPlan } from '../plan/from-shop/plan-of.ts';
import type { PlanSettings } from '../plan/from-shop/settings.ts';
import { simulateBoth } from '../plan/compare.ts';
import type { SimulationResult } from '../plan/simulate.ts';
import type { More, Now } from './given.ts';
import { awaitedNamed } from './awaited-named.ts';
import { hereOf } from './find.ts';
import { skipping } from './skipping.ts';
import { some } from './supply.ts';

/**
 * What is supposed: things said as entries; that something comes on a day, so many days later than it would, is ordered on a day or never
 * comes; that works are left undone; other hours; promised help that does not come (on a day), or none at all ever; a hoist or none.
 */
export type OneSupposed =
  | { kind: 'entries'; entries: readonly Entry[] }
  | { kind: 'comes'; item: string; on?: string; laterDays?: number; orderedOn?: string; never?: boolean }
  | { kind: 'skip'; phrase: string }
  | { kind: 'hours'; hours: NonNullable<PlanSettings['hours']> }
  | { kind: 'noHelp'; on?: string; ever?: boolean }
  | { kind: 'hoist'; has: boolean };
/** One of these, or several at once. */
export type Supposed = OneSupposed | { kind: 'all'; all: readonly OneSupposed[] };

/** Two plans to be simulated with the same luck: the shop as it is, and as it is supposed to be. */
interface WhatIfCase { words: string; machine?: Machine; before: ShopPlan; after: ShopPlan }

/** What a supposition would change. Nothing of it is kept. */
export function whatIf(shop: Shop, supposed: Supposed, words: string, now: Now, more: More): WhatIfAnswer {
  const found = whatIfCase(shop, supposed, words, now, more);
  return 'kind' in found ? found : whatIfFrom(found, ...simulateBoth(found.before.input, found.after.input));
}

/** What a supposition changes: what was said, what the planner is told, works left out, deliveries moved. */
interface Changed { shop: Shop; settings: PlanSettings; skipped: ((a: OpenAct) => boolean)[]; moved: ((plan: ShopPlan) => ShopPlan | undefined)[] }

export function whatIfCase(shop: Shop, supposed: Supposed, words: string, now: Now, more: More): WhatIfCase | WhatIfAnswer {
  const none = (why: string): WhatIfAnswer => ({ kind: 'whatIf', supposed: words, before: { p50: null, p80: null }, after: { p50: null, p80: null, driver: null }, sooner: [], later: [], why });
  const all = supposed.kind === 'all' ? supposed.all : [supposed];
  const abouts = all.map(one => (one.kind === 'comes' ? awaitedNamed(shop, one.item, more) : undefined));
  const unknown = all.find((one, k) => one.kind === 'comes' && !abouts[k]?.thing);
  if (unknown?.kind === 'comes') return none(`I know of no ${unknown.item} that is to come.`);
  const machine = abouts.find(a => a)?.machine ?? hereOf(shop, more.machine);
  const planned = ({ shop: of, settings, skipped }: Changed): ShopPlan => {
    const here = machine && of.machines.get(machine.key);
    return planOf({ machines: here ? [here] : [...of.machines.values()], shop: of, now, settings, ...(skipped.length ? { skipped: a => skipped.some(is => is(a)) } : {}) });
  };
  const change: Changed = { shop, settings: more.planning ?? {}, skipped: [], moved: [] };
  const before = planned(change);
  for (const [k, one] of all.entries()) {
    switch (one.kind) {
      case 'comes': change.moved.push(plan => coming(plan, abouts[k]!.thing!, one, now)); break;
      case 'skip': {
        const isSkipped = skipping(one.phrase, [...before.acts.values()]);
        if (!isSkipped) return none(`I have no open job to ${one.phrase}.`);
        change.skipped.push(isSkipped);
        break;
      }
      case 'hours': change.settings = { ...change.settings, hours: one.hours, hoursFrom: 'said' }; break;
      case 'noHelp': {
        const days = one.on === undefined ? [...new Set(shop.hands.map(h => h.when))] : [one.on];
        change.shop = withEntries(change.shop, days.map(when => ({ kind: 'hands', when, none: true })), now, more.machine);
        if (one.ever) change.settings = { ...change.settings, alone: true };
        break;
      }
      case 'hoist': change.settings = { ...change.settings, hoist: one.has }; break;
      case 'entries': change.shop = withEntries(change.shop, one.entries, now, more.machine); break;
    }
  }
  let after = planned(change);
  for (const [k, move] of change.moved.entries()) {
    const plan = move(after);
    if (!plan) return none(`The ${abouts.filter(a => a)[k]!.thing!.name} is not something that is to come.`);
    after = plan;
  }
  return { words, machine, before, after };
}

/** The plan with a delivery moved to a day, for certain: at noon of it, or in hand at once. */
function coming(plan: ShopPlan, thing: Thing, { on, laterDays, orderedOn, never }: Extract<Supposed, { kind: 'comes' }>, now: Now): ShopPlan | undefined {
  const ids = new Set([...plan.awaited.values()].filter(a => a.thing.key === thing.key && a.kind !== 'wait').map(a => a.supply.id));
  if (!ids.size) return undefined;
  const at = on === undefined ? undefined : Math.max(Date.parse(now.at), momentOf(on, now.zone) + DAY / 2);
  const moved = plan.input.supplies.map(s => {
    if (!ids.has(s.id)) return s;
    const shift = (laterDays ?? 0) * DAY;
    if (never) return { id: s.id, what: s.what, arrives: { low: Infinity, likely: Infinity, high: Infinity } };
    if (orderedOn !== undefined) return { id: s.id, what: s.what, leadDays: TO_GET, orderedAt: Math.max(Date.parse(now.at), momentOf(orderedOn, now.zone) + DAY / 2) };
    if (at !== undefined) return { id: s.id, what: s.what, arrives: { low: at, likely: at, high: at } };
    return 'arrives' in s ? { ...s, arrives: { low: s.arrives.low + shift, likely: s.arrives.likely + shift, high: s.arrives.high + shift } }
      : { ...s, orderedAt: (s.orderedAt ?? Date.parse(now.at)) + shift };
  });
  return { ...plan, input: { ...plan.input, supplies: moved } };
}

/** A copy of the shop in which some more was said. The numbers are above all there are, so that it comes last. */
function withEntries(shop: Shop, entries: readonly Entry[], now: Now, machineName: string | undefined): Shop {
  const copy = structuredClone(shop);
  entries.forEach((entry, i) => {
    const name = entry.machine ?? machineName;
    const machine = name === undefined ? copy.machines.get('') : machineNamed(copy, name);
    if (entry.kind === 'amend' || !machine) return;
    apply(copy, { id: Number.MAX_SAFE_INTEGER - entries.length + i, note: 0, at: now.at, machine: machine.name || undefined, entry, refs: refsOf(machine, entry) });
  });
  return copy;
}

/** What the two simulations come to. */
export function whatIfFrom({ words, machine, before, after }: WhatIfCase, one: SimulationResult, other: SimulationResult): WhatIfAnswer {
  const { zone } = before.input.hours;
  const day = (at: number | undefined): string | null => (at === undefined ? null : dayIn(at, zone));
  const dates = (r: SimulationResult) => ({ p50: r.ok ? day(r.p50) : null, p80: r.ok ? day(r.p80) : null });
  const driver = other.ok && other.driver ? (other.driver.kind === 'weather' ? 'the weather' : after.nameOf(other.driver.id)) : null;
  const stuck = other.ok ? other.stuck : [];
  return {
    kind: 'whatIf', supposed: words, ...some({ machine: machine?.name || undefined }), before: dates(one), after: { ...dates(other), driver }, ...moved(before, after),
    ...(stuck.length ? { why: `No day for: ${stuck.slice(0, 3).map(after.nameOf).join('; ')}.` } : {}),
  };
}

/** Acts that can be done at least a day sooner or later than before, those that move most first. */
function moved(before: ShopPlan, after: ShopPlan): { sooner: string[]; later: string[] } {
  const [was, is] = [earliest(before.input), earliest(after.input)];
  const gains = [...after.acts.keys()].flatMap(id => {
    const [a, b] = [was.get(id)?.start, is.get(id)?.start];
    if (after.acts.get(id)!.origin === 'get' || !before.acts.has(id)) return [];
    return [{ name: after.nameOf(id), days: ((a ?? Infinity) - (b ?? Infinity)) / DAY }];
  }).filter(g => !Number.isNaN(g.days));
  const names = (list: typeof gains): string[] => list.sort((a, b) => Math.abs(b.days) - Math.abs(a.days)).slice(0, 5).map(g => g.name);
  return { sooner: names(gains.filter(g => g.days >= 0.5)), later: names(gains.filter(g => g.days <= -0.5)) };
}
