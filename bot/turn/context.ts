import type { ReadContext } from '../../domain/model/reading.ts';
import { nameKey } from '../../domain/model/names.ts';
import type { Log } from '../../domain/log/keeper.ts';
import { machineNames, partNames, placeNames, sourceNames } from '../../domain/log/shop.ts';
import type { Note } from '../../domain/model/stored.ts';
import { entriesOfNote } from '../../domain/store/entries.ts';
import { lastNotes } from '../../domain/store/notes.ts';
import type { Incoming } from '../incoming.ts';
import type { Turn } from './types.ts';

/** How many notes back "it" and "the other one" may reach, and how old the oldest may be: another day's talk is another matter. */
const LOOK_BACK = 20;
const PRIOR_HOURS = 12;

/** The machines that can be named: those with entries, and the one that the chat is at though nothing is said of it yet. */
const knownMachines = (log: Log, current?: string): string[] => {
  const names = machineNames(log.shop);
  return current && !names.some(n => nameKey(n) === nameKey(current)) ? [current, ...names] : names;
};

/** What the reader is told beside the words: the names of the shop, those of the current machine first, and the talk just before. */
export function readContext(log: Log, incoming: Incoming, machine: string | undefined, before: number): ReadContext {
  const here = machine ? partNames(log.shop, nameKey(machine)) : [];
  const all = [...new Set([...here, ...partNames(log.shop)])];
  return {
    at: incoming.at, machines: knownMachines(log, machine), parts: all, places: placeNames(log.shop), sources: sourceNames(log.shop),
    prior: priorNotes(log, incoming, before).map(n => n.text),
  };
}

/** The same for the words of a turn. */
export const contextOf = ({ deps, incoming, machine, note }: Pick<Turn, 'deps' | 'incoming' | 'machine' | 'note'>): ReadContext => readContext(deps.log, incoming, machine, note.id);

/**
 * The talk just before, oldest first: the last note, whatever it was (a question may go on), and the last two that logged something, for
 * a correction means what was logged though questions came between; and what was said just before that, which it may go on from ("how much is
 * a top hose", "the hose place wants 14").
 */
function priorNotes(log: Log, incoming: Incoming, before: number): Note[] {
  const since = Date.parse(incoming.at) - PRIOR_HOURS * 3_600_000;
  const recent = lastNotes(log.store, incoming.chat, LOOK_BACK, before).filter(n => Date.parse(n.at) >= since && Date.parse(n.at) <= Date.parse(incoming.at));
  const logged = new Set(recent.filter(n => entriesOfNote(log.store, n.id).length > 0).slice(-2));
  const lastLogged = recent.findLastIndex(n => logged.has(n));
  return recent.filter((n, i) => i === recent.length - 1 || logged.has(n) || i === lastLogged - 1);
}

/** A machine's name as the shop has it, else as it was written: a name that was said with a capital keeps it. */
export function machineAsSaid(log: Log, said: string, text: string, current?: string): string {
  const known = knownMachines(log, current).find(n => nameKey(n) === nameKey(said));
  if (known) return known;
  const at = text.toLowerCase().indexOf(said.toLowerCase());
  return at < 0 ? said : text.slice(at, at + said.length);
}
