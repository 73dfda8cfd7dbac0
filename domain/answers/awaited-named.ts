import { nameWords } from '../model/names.ts';
import type { Machine, Shop, Thing } from '../log/shop.ts';
import { lookUp } from './find.ts';
import type { More } from './given.ts';

/** A thing of that name which is to come; where it is not, the name may be that of the place it is to come from. */
export function awaitedNamed(shop: Shop, said: string, more: More): { machine: Machine; thing?: Thing } | undefined {
  const found = lookUp(shop, said, more.machine, isAwaited);
  return found?.thing && isAwaited(found.thing) ? found : shortened(shop, said) ?? sentTo(shop, said) ?? found;
}

/** "Mag" for the magneto: the one thing to come of which a word begins so. */
function shortened(shop: Shop, said: string): { machine: Machine; thing: Thing } | undefined {
  const begin = said.toLowerCase().trim();
  const found = begin.length < 3 ? [] : [...shop.machines.values()].flatMap(machine => [...machine.things.values()]
    .filter(t => isAwaited(t) && t.key.split(' ').some(w => w.startsWith(begin))).map(thing => ({ machine, thing })));
  return found.length === 1 ? found[0] : undefined;
}

/** "The radiator shop": the one thing to come that is there or was ordered from there. */
function sentTo(shop: Shop, said: string): { machine: Machine; thing: Thing } | undefined {
  const at = nameWords(said).join(' ');
  const isFrom = (place: string | undefined): boolean => at !== '' && place !== undefined && nameWords(place).join(' ').includes(at);
  const found = [...shop.machines.values()].flatMap(machine => [...machine.things.values()]
    .filter(t => isFrom(t.out?.where) || t.orders.some(o => isFrom(o.source))).map(thing => ({ machine, thing })));
  return found.length === 1 ? found[0] : undefined;
}

const isAwaited = (t: Thing): boolean => t.orders.length > 0 || t.wants.length > 0 || t.out !== undefined;
