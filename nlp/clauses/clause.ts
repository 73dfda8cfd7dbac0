import type { Phrase } from '../dimensions/part/phrase.ts';
import type { Found } from '../types.ts';
import type { Item } from './items.ts';

/** A thing that a clause speaks of, with its name resolved ("it", "the left one" and owners read). */
export interface Thing {
  name: string;
  from: number;
  to: number;
  np?: Phrase;
  count?: number;
  plural: boolean;
  /** Came from a pronoun or a standing phrase; the note itself does not name it here. */
  carried?: boolean;
  machine?: boolean;
  choices?: string[];
}

/** How a clause stands to the truth. */
export type Reality = 'deed' | 'plan' | 'must' | 'cond' | 'wish' | 'maybe' | 'hearsay' | 'past plan';

/** A clause taken apart: who or what, does or is what, to what, how, with its reality and polarity. */
export interface Clause {
  from: number;
  to: number;
  items: Item[];
  join?: string;
  sub?: string;
  asks?: boolean;
  /** Things named before the predicate; empty when there are none or the subject is a person. */
  subj: Thing[];
  /** "i", "we", "they"… when the subject is a pronoun. */
  who?: string;
  pred: 'be' | 'have' | 'verb' | 'none';
  /** Main verb, and its index in `items`. */
  verb?: Item;
  vi: number;
  passive: boolean;
  ing: boolean;
  neg: boolean;
  reality: Reality;
  /** Particles beside the verb: "off", "back on". */
  prt: string[];
  obj: Thing[];
  /** Items after the predicate word (after "be", after the verb and its particles). */
  rest: Item[];
  /** "three of them": the count that the subject is. */
  counted?: string;
  /** What the next "it" is, where that is neither subject nor object: the gearbox that "has the seal driven in". */
  about?: Thing[];
  /** Said of the clause before: subject carried over. */
  carriedSubj?: boolean;
}

export const dims = <D extends Found['dim']>(items: readonly Item[], dim: D): Extract<Found, { dim: D }>[] =>
  items.flatMap(i => (i.f?.dim === dim ? [i.f as Extract<Found, { dim: D }>] : []));

/** Words of a run of items, as a bare string for phrase tests. */
export const lows = (items: readonly Item[]): string => items.map(i => i.low).join(' ');
