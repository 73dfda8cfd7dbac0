import type { Entry } from '../../domain/model/entry.ts';
import type { NearMiss } from '../../domain/model/reading.ts';
import type { Clause, Thing } from '../clauses/clause.ts';
import type { Memory } from '../clauses/memory.ts';
import { textOf } from '../dimensions/part/text-of.ts';
import type { Sheet, Token } from '../types.ts';

/** What a meaning is shown: one clause, with the note around it. */
export interface Telling {
  sheet: Sheet;
  clause: Clause;
  memory: Memory;
  /** All clauses of the note, and which one this is. */
  clauses: readonly Clause[];
  at: number;
  /** Entries that earlier clauses of the note gave; a meaning may complete them. */
  told: Told[];
  /** Entries of the notes before, oldest first. */
  prior: readonly Entry[];
  questions: NearMiss[];
  /** What the net surely takes the clause to be about, where the rules did not say: one thing, or several told of together. */
  pointed?: readonly Thing[];
}

/** An entry with the clause that gave it and the rule's name. */
export interface Told { entry: Entry; clause: Clause; rule: string; /** End, in tokens, of the clauses after it that it took in. */ to?: number }

/** Reads one kind of entry from a clause; undefined is "not mine", an empty list is "mine, and it adds nothing new". */
export type Meaning = (t: Telling) => Entry[] | undefined;

export const clauseText = (t: Telling, c: Clause = t.clause): string =>
  textOf(t.sheet, c.from, c.to).replace(/^[\s,;:.!?–—-]+|[\s,;:.!?–—-]+$/g, '');

const lows = new WeakMap<readonly Token[], Map<number, string>>();

/** Low-case words of a clause with mended words, joined by a space: for tests of fixed phrases. Every meaning asks for them, so they are kept with the note. */
export function lowText(t: Telling, c: Clause = t.clause): string {
  const { tokens } = t.sheet, place = c.from * (tokens.length + 1) + c.to;
  let kept = lows.get(tokens);
  if (!kept) lows.set(tokens, kept = new Map());
  const have = kept.get(place);
  if (have !== undefined) return have;
  const made = lowWords(tokens, c);
  kept.set(place, made);
  return made;
}
const lowWords = (tokens: readonly Token[], c: Clause): string => tokens.slice(c.from, c.to).map(x => x.low).join(' ').replace(/ (?='(?:s|d|ll|re|ve|m)\b)/g, '').replace(/[ .,;:!?–—-]+$/, '');

/** The things a deed was done to: the object, or the subject of a passive or of a verb that stands alone. */
export function patients(c: Clause): Thing[] {
  return c.obj.length ? c.obj : c.subj;
}

export const next = (t: Telling): Clause | undefined => t.clauses[t.at + 1];
export const previous = (t: Telling): Clause | undefined => t.clauses[t.at - 1];
