import type { ProvisionalAnswer, ProvisionalItem } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Machine, Shop, Thing } from '../log/shop.ts';
import type { More } from './given.ts';
import { coveredBy, named } from './find.ts';
import { some } from './supply.ts';

/** What is only tried or temporary, the longest so first. */
export function provisional(shop: Shop, ask: AskOf<'provisional'>, more: More): ProvisionalAnswer {
  const items = coveredBy(shop, ask.part, more.machine).flatMap(({ machine, things }) => things.flatMap(t => itemOf(machine, t) ?? []));
  return { kind: 'provisional', ...some({ part: ask.part }), items: items.sort((a, b) => Date.parse(a.since) - Date.parse(b.since)) };
}

function itemOf(machine: Machine, { name, fit }: Thing): ProvisionalItem | undefined {
  if (fit?.state !== 'tried' && fit?.state !== 'temporary') return undefined;
  return { part: name, state: fit.state, since: fit.at, ...some({ with: fit.with }), ...named(machine) };
}
