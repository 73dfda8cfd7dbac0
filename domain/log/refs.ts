import type { Entry } from '../model/entry.ts';
import { nameKey } from '../model/names.ts';
import type { Ref } from '../model/stored.ts';
import { resolve } from './naming.ts';
import { readPhrase } from './phrase.ts';
import type { Machine, Thing } from './shop.ts';

/**
 * What the names in an entry mean on its machine, decided once, when it is recorded: the naming field first, then `for`, or a rule's
 * `then`. Entries that name nothing speak of the machine itself; help and weather without a name speak of nothing.
 */
export function refsOf(machine: Machine, entry: Entry): Ref[] {
  const named = (said: string | undefined, expected?: (t: Thing) => boolean): Ref =>
    said === undefined ? { key: '', name: machine.name } : { key: resolve(machine, said, expected), name: said };
  switch (entry.kind) {
    case 'fit': case 'finding': case 'reading': case 'work': case 'job': case 'recheck': case 'stow': case 'out': case 'wait': case 'hours':
      return [named(entry.part)];
    case 'want': return entry.for === undefined ? [named(entry.item)] : [named(entry.item), readPhrase(machine, entry.for)];
    case 'order': case 'bought': return [named(entry.item, t => t.wants.length > 0 || t.orders.length > 0)];
    case 'quote': return [named(entry.item, t => t.wants.length > 0)];
    case 'arrival': return [named(entry.item, t => t.orders.length > 0 || t.out !== undefined)];
    case 'rule': return [readPhrase(machine, entry.first), readPhrase(machine, entry.then)];
    case 'hands': return entry.for === undefined ? [] : [readPhrase(machine, entry.for)];
    case 'weather': case 'amend': return [];
    case 'remark': return mentioned(machine, entry.text);
  }
}

/** The known things that a remark names, the longest names first; a name inside a longer one found is not counted again. */
function mentioned(machine: Machine, text: string): Ref[] {
  let rest = ` ${nameKey(text)} `;
  const found: Ref[] = [];
  for (const thing of [...machine.things.values()].filter(t => t.key && rest.includes(` ${t.key} `)).sort((a, b) => b.key.length - a.key.length)) {
    if (!rest.includes(` ${thing.key} `)) continue;
    rest = rest.replaceAll(` ${thing.key} `, ' | ');
    found.push({ key: thing.key, name: thing.name });
  }
  return found;
}
