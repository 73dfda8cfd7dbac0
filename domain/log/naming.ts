import { nameKey } from '../model/names.ts';
import { emptyThing, type Machine, type Shop, type Thing } from './shop.ts';

const NOTHING = emptyThing('', '');

/** Which thing a said name means among those a machine has. */
const PLACE_WORDS = new Set(['on', 'in', 'for', 'at', 'to', 'from', 'with', 'under', 'behind', 'by', 'between', 'inside', 'above', 'below']);

/** The word that says what a name is a name of: "plate" in "wear plate on bottom". */
export function headWord(key: string): string {
  const words = key.split(' ');
  const place = words.findIndex((w, i) => i > 0 && PLACE_WORDS.has(w));
  return words[(place < 0 ? words.length : place) - 1] ?? '';
}

/** A name's key on a machine: without the machine's own name in front; empty when it is the machine itself. */
export function keyOn(machine: Machine | undefined, said: string): string {
  const key = nameKey(said);
  if (!machine?.key) return key;
  if (key === machine.key || key === 'machine') return '';
  return key.startsWith(`${machine.key} `) ? key.slice(machine.key.length + 1) : key;
}

/** Keys of the things a key can mean: itself when known, else those of the same head that hold every word ("ring": "piston ring"). */
export function candidates(machine: Machine, key: string): string[] {
  if (key === '' || machine.things.has(key)) return [key];
  const words = key.split(' ');
  const head = headWord(key);
  return [...machine.things.keys()].filter(k => {
    if (!k.includes(head) || headWord(k) !== head) return false;
    const have = k.split(' ');
    return words.every(w => have.includes(w));
  });
}

/** "The brackets" are more than the left one, though it be the only one spoken of so far. */
const SIDES = new Set(['left', 'right', 'front', 'rear', 'back', 'upper', 'lower', 'top', 'bottom', 'inner', 'outer', 'first', 'second', 'third', 'fourth']);
const isPlural = (said: string): boolean => /[^su]s$/i.test(said.trim());
function isOneOfThose(said: string, key: string, known: string): boolean {
  const words = key.split(' ');
  return isPlural(said) && known.split(' ').some(w => SIDES.has(w) && !words.includes(w));
}

/**
 * The key that a name said on a machine gets: the one known thing it plainly means, else a key of its own. Where several are
 * possible, the one that `expected` singles out (what is on order, when something arrives) is meant.
 */
export function resolve(machine: Machine, said: string, expected?: (thing: Thing) => boolean): string {
  const key = keyOn(machine, said);
  const found = candidates(machine, key).filter(k => expected?.(machine.things.get(k) ?? NOTHING) || !isOneOfThose(said, key, k));
  if (found.length === 1) return found[0]!;
  const likely = expected ? found.filter(k => expected(machine.things.get(k)!)) : [];
  return likely.length === 1 ? likely[0]! : key;
}

/** The machine a name means; a short form counts when it can be only one. */
export function machineNamed(shop: Shop, said: string): Machine | undefined {
  const key = nameKey(said);
  const exact = shop.machines.get(key);
  if (exact || !key) return exact;
  const words = key.split(' ');
  const found = [...shop.machines.values()].filter(m => words.every(w => m.key.split(' ').includes(w)));
  return found.length === 1 ? found[0] : undefined;
}
