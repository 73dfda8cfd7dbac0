import type { DueAnswer, DueItem } from '../model/answer.ts';
import type { Machine, OpenRecheck, Shop, Thing } from '../log/shop.ts';
import type { Now } from './given.ts';
import { named } from './find.ts';
import { dueOf, openRechecks } from './rechecks.ts';
import { some } from './supply.ts';
import { usualLooks } from './usual-looks.ts';

/** Rechecks that are due (`overdue`), the oldest first, and after them those to come; beside them what is usually looked at and was not asked for. */
export function due(shop: Shop, now: Now): DueAnswer {
  const items = [...shop.machines.values()].flatMap(machine =>
    [...machine.things.values()].flatMap(thing => openRechecks(machine, thing).map(r => itemOf(machine, thing, r, now))));
  return { kind: 'due', items: items.sort((a, b) => Number(b.overdue ?? false) - Number(a.overdue ?? false) || (a.when < b.when ? -1 : a.when > b.when ? 1 : 0)), usual: [...shop.machines.values()].flatMap(usualLooks) };
}

function itemOf(machine: Machine, thing: Thing, recheck: OpenRecheck, now: Now): DueItem {
  const state = dueOf(machine, recheck, now.at);
  return {
    ...some({ part: thing.key ? thing.name : undefined }), do: recheck.do, when: 'on' in state ? state.on : metered(recheck, state.due, state.left, state.unit),
    ...(state.due ? { overdue: true } : {}), ...named(machine),
  };
}

const metered = (recheck: OpenRecheck, isDue: boolean, left: number | undefined, unit: 'hours' | 'miles'): string => {
  if (isDue) return 'now';
  const measure = unit === 'hours' ? 'hours running' : 'miles';
  const span = `after ${recheck.after} ${measure}`;
  return left === undefined || left === recheck.after ? span : `${span}, ${Math.round(left * 100) / 100} to go`;
};
