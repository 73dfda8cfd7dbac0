import type { BlockedAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Shop } from '../log/shop.ts';
import type { More, Now } from './answer.ts';
import { causesOf, machineCauses, type Asking } from './causes.ts';
import { hereOf, lookUp, type Found } from './find.ts';

/** What holds up a part, a work on it, or (with no part named) the machine in hand. Clear is null for a part never heard of. */
export function blocked(shop: Shop, ask: AskOf<'blocked'>, now: Now, more: More): BlockedAnswer {
  const found = ask.part === undefined ? machineInHand(shop, more) : lookUp(shop, ask.part, more.machine);
  if (!found) return { kind: 'blocked', part: ask.part ?? more.machine ?? '', clear: null, causes: [] };
  const asking: Asking = { shop, machine: found.machine, now, seen: new Set() };
  const causes = found.whole ? machineCauses(asking) : causesOf(found.ref, asking);
  return { kind: 'blocked', part: ask.part ?? found.machine.name, clear: causes.length === 0, causes };
}

function machineInHand(shop: Shop, more: More): Found | undefined {
  const machine = hereOf(shop, more.machine);
  return machine && { machine, ref: { key: '', name: machine.name }, thing: machine.things.get(''), whole: true };
}
