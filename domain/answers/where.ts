import type { WhereAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Shop } from '../log/shop.ts';
import type { More } from './given.ts';
import { lookUp } from './find.ts';
import { some } from './supply.ts';

/** Where a thing was put, or that it is out for work, or how it sits on the machine; where is null when it was never said. */
export function where(shop: Shop, ask: AskOf<'where'>, more: More): WhereAnswer {
  const thing = ask.part === undefined ? undefined : lookUp(shop, ask.part, more.machine, t => t.place !== undefined || t.out !== undefined)?.thing;
  return {
    kind: 'where', part: ask.part ?? '', where: thing?.place?.where ?? null,
    ...some({ since: thing?.place?.at, out: thing?.out && some({ where: thing.out.where, until: thing.out.until }), fit: thing?.fit?.state }),
  };
}
