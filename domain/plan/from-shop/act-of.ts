import { phraseOf } from '../../log/phrase.ts';
import type { Machine } from '../../log/shop.ts';
import { isFitting, isReplacing, verbFamily } from '../../log/verbs.ts';
import type { Ref } from '../../model/stored.ts';
import { act, type Act } from '../../lore/act.ts';

/** Where an open act comes from. `off`: a part that is off and was on: nobody said more than that. `get`: a thing wanted for no part in particular. */
export type Origin = 'job' | 'recheck' | 'fault' | 'temporary' | 'rule' | 'help' | 'want' | 'came' | 'off' | 'get';

/** A piece of work that is open in the shop. `since`: the number of the entry that said so. */
export interface OpenAct {
  id: string;
  machine: Machine;
  /** The thing, and the verb; without a verb it is fitted for good. */
  ref: Ref;
  /** The verb as it is said to the person. */
  do: string;
  origin: Origin;
  since: number;
  begun?: boolean;
}

/** Replacing a part is fitting it, once it is here. */
const isFit = (verb: string): boolean => isFitting(verb) || isReplacing(verb);

/** An act without a verb is the fitting of the part for good. */
export const asAct = (key: string, name: string, verb?: string): Ref => (verb && !isFit(verb) ? { key, name, verb } : { key, name });

/** The same for the same act however it was said; it holds no number of the log, for the order of notes must not change a plan. */
export const actId = (machine: Machine, { key, verb, off }: Ref): string =>
  `${machine.key}|${off ? 'off' : verb && !isFit(verb) ? verbFamily(verb) : 'fit'}|${key}`;

/** The act in the words that the usual order is written in. */
export const loreAct = ({ key, name, verb, off }: Ref): Act => act(verb && !isFit(verb) ? verb : undefined, key ? name : '', off);

/** The act as it is said: `paint the hood`, `put the pump on for good`. */
export function said({ do: verb, ref, machine }: OpenAct): string {
  if (!ref.key) return ref.verb ? verb : phraseOf(ref);
  const name = machine.things.get(ref.key)?.name ?? ref.name;
  if (verb === 'put on for good') return `put the ${name} on for good`;
  return verb === 'take off' ? `take the ${name} off` : `${verb} the ${name}`;
}
