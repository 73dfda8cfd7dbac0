import { nameKey } from '../model/names.ts';
import type { Ref } from '../model/stored.ts';
import { candidates, keyOn, machineNamed } from '../log/naming.ts';
import { readPhrase } from '../log/phrase.ts';
import type { Machine, Shop, Thing } from '../log/shop.ts';

/** What a question is about: a thing of a machine, a work on one, or a whole machine. */
export interface Found { machine: Machine; ref: Ref; thing?: Thing; whole: boolean }

/** Words that mean the machine in hand, whatever its name. */
const THE_MACHINE = new Set(['machine', 'tractor', 'project', 'everything', 'whole thing', 'whole machine', 'restoration', 'rebuild', 'whole job']);

/**
 * Finds what a name in a question means: on the chat's machine first, then a machine of that name, then on the others. `likely`
 * singles one out where a short form fits several. Undefined: never heard of, or it could be several things.
 */
export function lookUp(shop: Shop, said: string, current?: string, likely?: (thing: Thing) => boolean): Found | undefined {
  const key = nameKey(said);
  const here = hereOf(shop, current);
  const others = [...shop.machines.values()].filter(m => m !== here);
  if (here && (keyOn(here, said) === '' || (THE_MACHINE.has(key) && !here.things.has(key)))) return wholeOf(here);
  const named = shop.machines.get(key);
  return (here && exactly(here, said)) ?? (key && named ? wholeOf(named) : undefined) ?? (here && roughly(here, said, likely))
    ?? first(others, m => (keyOn(m, said) === '' ? wholeOf(m) : exactly(m, said))) ?? shortMachine(shop, said) ?? first(others, m => roughly(m, said, likely));
}

/** The machine in hand: the chat's (of which nothing may have been said yet), else the only one there is, else what was said of no machine. */
export function hereOf(shop: Shop, current: string | undefined): Machine | undefined {
  if (current !== undefined) return machineNamed(shop, current);
  return shop.machines.size === 1 ? [...shop.machines.values()][0] : shop.machines.get('');
}

const wholeOf = (machine: Machine): Found => ({ machine, ref: { key: '', name: machine.name }, thing: machine.things.get(''), whole: true });
const shortMachine = (shop: Shop, said: string): Found | undefined => { const m = machineNamed(shop, said); return m?.key ? wholeOf(m) : undefined; };

function exactly(machine: Machine, said: string): Found | undefined {
  const key = keyOn(machine, said);
  const thing = key ? machine.things.get(key) : undefined;
  return thing && { machine, ref: { key, name: thing.name }, thing, whole: false };
}

/** By a short form of its name, or as a phrase of verb and part. */
function roughly(machine: Machine, said: string, likely?: (thing: Thing) => boolean): Found | undefined {
  const found = candidates(machine, keyOn(machine, said)).filter(k => machine.things.has(k));
  const fits = found.length > 1 && likely ? found.filter(k => likely(machine.things.get(k)!)) : found;
  if (fits.length === 1) { const thing = machine.things.get(fits[0]!)!; return { machine, ref: { key: thing.key, name: thing.name }, thing, whole: false }; }
  const ref = readPhrase(machine, said);
  const thing = ref.key ? machine.things.get(ref.key) : undefined;
  return thing && { machine, ref: { ...ref, name: thing.name }, thing, whole: false };
}

function first<T, R>(list: readonly T[], of: (item: T) => R | undefined): R | undefined {
  for (const item of list) { const found = of(item); if (found !== undefined) return found; }
  return undefined;
}

/** Things that belong to a thing by their name: "radiator hose" and "plate on radiator" to the radiator. */
export function owned(machine: Machine, key: string): Thing[] {
  if (key === '') return [];
  const tails = ['on', 'in', 'of', 'for', 'under', 'behind'].map(word => ` ${word} ${key}`);
  return [...machine.things.values()].filter(t => t.key !== key && (t.key.startsWith(`${key} `) || tails.some(tail => t.key.endsWith(tail))));
}

/** The things a question covers: the whole machine, or the thing and what belongs to it. */
export function covered(found: Found): Thing[] {
  if (found.whole) return [...found.machine.things.values()];
  return [...(found.thing ? [found.thing] : []), ...owned(found.machine, found.ref.key)];
}

/** The things a question covers by machine: all machines when it names none; nothing when the name was never heard. */
export function coveredBy(shop: Shop, said: string | undefined, current?: string): { machine: Machine; things: Thing[] }[] {
  if (said === undefined) return [...shop.machines.values()].map(machine => ({ machine, things: [...machine.things.values()] }));
  const found = lookUp(shop, said, current);
  return found ? [{ machine: found.machine, things: covered(found) }] : [];
}

/** A machine's name for an answer; none for what was said of no machine. */
export const named = (machine: Machine): { machine?: string } => machine.name ? { machine: machine.name } : {};
