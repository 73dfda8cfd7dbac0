import type { BuyAnswer, BuyItem } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { dayOf } from '../log/days.ts';
import type { Machine, Shop, Thing } from '../log/shop.ts';
import type { More, Now } from './given.ts';
import { covered, lookUp, named } from './find.ts';
import { some, supplies } from './supply.ts';

/** What is still to be got, ordered or late; for a part: it, what belongs to it, and what is wanted for it. */
export function buy(shop: Shop, ask: AskOf<'buy'>, now: Now, more: More): BuyAnswer {
  const items = listed(shop, ask.part, more).flatMap(({ machine, things }) =>
    things.flatMap(t => supplies(t, dayOf(now.at)).map((s): BuyItem => ({ ...s, ...named(machine) }))));
  return { kind: 'buy', ...some({ status: ask.status, part: ask.part }), items: ask.status ? items.filter(i => i.status === ask.status) : items };
}

function listed(shop: Shop, part: string | undefined, more: More): { machine: Machine; things: Thing[] }[] {
  if (part === undefined) return [...shop.machines.values()].map(machine => ({ machine, things: [...machine.things.values()] }));
  const found = lookUp(shop, part, more.machine);
  if (!found) return [];
  const own = new Set(covered(found));
  const things = [...found.machine.things.values()].filter(t => own.has(t) || t.wants.some(w => w.for?.key === found.ref.key));
  return [{ machine: found.machine, things: found.whole ? [...own] : things }];
}
