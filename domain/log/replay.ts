import type { EntryOf } from '../model/entry.ts';
import type { Ref, StoredEntry } from '../model/stored.ts';
import { nameKey } from '../model/names.ts';
import { after } from './days.ts';
import * as fit from './effects/fitting.ts';
import * as got from './effects/getting.ts';
import * as worked from './effects/working.ts';
import { putById } from './effects/lists.ts';
import { emptyMachine, emptyThing, type HandsSaid, type Machine, type Shop, type Thing } from './shop.ts';

/** One part of one machine: what a fold is limited to when only that part is folded anew. */
export interface Scope { machine: string; key: string }

export const machineKey = (entry: StoredEntry): string => nameKey(entry.machine ?? '');

/** The machine an entry belongs to, made at its first mention. */
function machineFor(shop: Shop, name: string | undefined): Machine {
  const key = nameKey(name ?? '');
  let machine = shop.machines.get(key);
  if (!machine) shop.machines.set(key, machine = emptyMachine(key, name ?? ''));
  return machine;
}

function thingFor(machine: Machine, ref: Ref): Thing {
  let thing = machine.things.get(ref.key);
  if (!thing) machine.things.set(ref.key, thing = emptyThing(ref.key, ref.key === '' ? machine.name : ref.name));
  return thing;
}

/**
 * Folds one entry, as it stands, into the state. What an entry does to a thing depends on that thing alone, so a part can be folded
 * anew from the entries about it (`scope`); what it does to lists of the machine or shop is keyed by its number and may be repeated.
 */
export function apply(shop: Shop, stored: StoredEntry, scope?: Scope): void {
  const { entry, refs = [] } = stored;
  const machine = machineFor(shop, stored.machine);
  const inScope = (ref: Ref): boolean => !scope || (scope.machine === machine.key && scope.key === ref.key);
  if (entry.kind !== 'remark') for (const ref of refs) if (inScope(ref)) thingFor(machine, ref);
  applyToLists(shop, machine, stored);
  const main = refs[0];
  if (main && inScope(main) && entry.kind !== 'remark') applyToThing(thingFor(machine, main), stored);
}

/** The fold: every kind of entry, and what it makes true of the thing it names. */
function applyToThing(thing: Thing, stored: StoredEntry): void {
  const { entry } = stored;
  const said = { id: stored.id, at: stored.at };
  switch (entry.kind) {
    case 'fit': return fit.fitted(thing, entry, said, stored.note);
    case 'stow': return fit.stowed(thing, entry, said);
    case 'out': return fit.sentOut(thing, entry, said);
    case 'finding': return worked.found(thing, entry, said);
    case 'reading': return worked.measured(thing, entry, said);
    case 'work': return worked.worked(thing, entry, said, stored.note);
    case 'job': return worked.toDo(thing, entry, said);
    case 'recheck': return worked.toLookAgain(thing, entry, said, stored.note);
    case 'wait': thing.wait = { ...said, until: waitEnd(entry, stored.at) }; return;
    case 'hours': putById(thing.hours, { ...said, hours: entry.hours, total: entry.total === true }); return;
    case 'want': return got.wanted(thing, entry, said, stored.refs?.[1]);
    case 'order': return got.ordered(thing, entry, said);
    case 'bought': return got.bought(thing, entry, said);
    case 'quote': return got.quoted(thing, entry, said);
    case 'arrival': return got.arrived(thing, said);
    case 'rule': case 'hands': case 'weather': case 'remark': case 'amend': return;
    default: return entry satisfies never;
  }
}

/** What belongs to the machine or the shop as a whole. */
function applyToLists(shop: Shop, machine: Machine, stored: StoredEntry): void {
  const { entry, refs = [] } = stored;
  const said = { id: stored.id, at: stored.at };
  if (entry.kind === 'rule') putById(machine.rules, { ...said, first: refs[0]!, then: refs[1]!, firstSaid: entry.first, thenSaid: entry.then });
  else if (entry.kind === 'hands') putById(shop.hands, { ...said, when: entry.when, for: refs[0], forSaid: entry.for, machine: machine.key, ...hoursOf(entry) });
  else if (entry.kind === 'weather') putById(shop.weather, { ...said, sky: entry.sky, from: entry.from, to: entry.to });
  else if (entry.kind === 'reading' && entry.asWas !== true) readMeter(machine, entry, said);
}

const hoursOf = ({ from, to, none }: EntryOf<'hands'>): Pick<HandsSaid, 'from' | 'to' | 'none'> =>
  ({ ...(from ? { from } : {}), ...(to ? { to } : {}), ...(none ? { none } : {}) });

/** Running time and distance count for the machine, whichever part they were said of. */
function readMeter(machine: Machine, entry: EntryOf<'reading'>, said: { id: number; at: string }): void {
  const what = nameKey(entry.what);
  if (what === 'running time') putById(machine.running, { ...said, value: entry.unit === 'min' ? entry.value / 60 : entry.value });
  if (what === 'distance') putById(machine.distance, { ...said, value: entry.unit === 'km' ? entry.value / 1.609344 : entry.value });
}

const waitEnd = (entry: EntryOf<'wait'>, at: string): string | undefined =>
  entry.until ?? (entry.after !== undefined && entry.unit ? after(at, entry.after, entry.unit) : undefined);

/** Takes out of the lists what an entry put there, before it is put there anew or stays struck. */
export function unlist(shop: Shop, id: number): void {
  const drop = (list: { id: number }[]): void => { const at = list.findIndex(x => x.id === id); if (at >= 0) list.splice(at, 1); };
  drop(shop.hands);
  drop(shop.weather);
  for (const machine of shop.machines.values()) [machine.rules, machine.running, machine.distance].forEach(drop);
}
