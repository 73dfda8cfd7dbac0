import type { ListAnswer, ListItem, ListOf } from '../model/answer.ts';
import { dayOf, reached } from '../log/days.ts';
import type { Machine, Shop } from '../log/shop.ts';
import { usualConditions } from '../lore/conditions.ts';
import { loreAct } from '../plan/from-shop/act-of.ts';
import { usualCures } from '../plan/from-shop/jobs.ts';
import { dayIn } from '../plan/from-shop/moments.ts';
import { planOf } from '../plan/from-shop/plan-of.ts';
import { named } from './find.ts';
import type { More, Now } from './given.ts';
import { ruleMet, ruleSpent } from './rules.ts';
import { some } from './supply.ts';

/** What of all machines is so, the soonest day first where there are days. */
export function list(shop: Shop, of: ListOf, now: Now, more: More): ListAnswer {
  const items = of === 'hands' ? forTwo(shop, now, more) : [...shop.machines.values()].flatMap(machine => FOUND[of](machine, now).map(i => ({ ...i, ...named(machine) })));
  return { kind: 'list', of, items: items.toSorted((a, b) => ((a.until ?? '9') < (b.until ?? '9') ? -1 : (a.until ?? '9') > (b.until ?? '9') ? 1 : 0)) };
}

const FOUND: Record<Exclude<ListOf, 'hands'>, (machine: Machine, now: Now) => ListItem[]> = {
  out: machine => [...machine.things.values()].flatMap(t => (t.out ? [{ what: t.name, ...some({ where: t.out.where, do: t.out.do, until: t.out.until && dayOf(t.out.until) }) }] : [])),
  curing: (machine, now) => [...machine.things.values()].flatMap(t => {
    const said = t.wait && (t.wait.until === undefined || !reached(t.wait.until, now.at)) ? [{ what: t.name, ...some({ until: t.wait.until && dayOf(t.wait.until) }) }] : [];
    const usual = said.length ? [] : usualCures({ key: t.key, name: t.name }, t).filter(c => c.until > Date.parse(now.at));
    return [...said, ...usual.map(c => ({ what: t.name, do: c.coat, until: dayIn(c.until, now.zone), usual: true }))];
  }),
  rules: machine => machine.rules.map(rule => ({ what: `${rule.firstSaid} before ${rule.thenSaid}`, ...(ruleMet(machine, rule) || ruleSpent(machine, rule) ? { met: true } : {}) })),
};

/** Open work that takes two, or a hoist. */
const forTwo = (shop: Shop, now: Now, more: More): ListItem[] => {
  const plan = planOf({ machines: [...shop.machines.values()], shop, now, settings: more.planning });
  return [...plan.acts.values()].filter(a => { const usual = usualConditions(loreAct(a.ref)); return usual.orHoist || (usual.conditions.hands ?? 1) > 1; }).map(a => ({ what: plan.nameOf(a.id), ...named(a.machine) }));
};
