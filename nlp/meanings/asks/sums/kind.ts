import type { Given, Scope } from './scope.ts';

/**
 * One calculation as it is asked for in words.
 * `ask`: patterns of the question, over the plain line. `given`: what the stretch gives it, nothing where it gives nothing; `prev` is set in a
 * follow-up ("and at three mils?"), where a bare number may stand for the figure that changes.
 * `enough`: whether what was given is worth the sum without looking further back in the note.
 */
export interface SumKind {
  of: string;
  ask: readonly RegExp[];
  /** Not a question of this kind when the words around the match say something else. */
  unless?: RegExp;
  given(scope: Scope, prev?: Given): Given;
  /** Where one question is asked of several things in a row ("1/4-20? 3/8-16? both 75%"), what each gives. */
  each?(scope: Scope): Given[];
  /** Fields that must be there; without any of them the question is not held to be this sum. */
  needs?: readonly string[];
  /** Fields of which one at least must be there before the sum stops looking further back. */
  wants?: readonly string[];
  /** Fields without which the sum is not yet whole (as `wants` where left out). */
  full?: readonly string[];
  /** The field whose new value makes another case of it within a sentence ("or 340 and I drive"), whatever else comes with it. */
  anew?: string;
  /** Fields that a condition may bring to another case though the first has none ("and if I drive for it", "double for two coats"). */
  extra?: readonly string[];
  /** False where figures joined by "and" are one list, so that "and" within a sentence never begins a follow-up. */
  inline?: boolean;
  /** Fields that stand in for one another: a new one drops the rest from a follow-up. */
  either?: readonly (readonly string[])[];
  /** Sets of fields that make a question this sum by themselves, however it is worded ("grade 5, 5/8 coarse, how tight?"). */
  telling?: readonly (readonly string[])[];
  /** Words for what it works out, by which a follow-up tells which of several sums it follows. */
  result?: RegExp;
  /** A word that must stand in the sentence where figures alone tell. */
  word?: RegExp;
  /** Settles which of two kinds is meant that match the same words. */
  weight?: number;
}

const unitOf = (name: string): string => `${name}Unit`;

/** The first of some sets of fields that a sum was given whole. */
export const wholeOf = (sets: readonly (readonly string[])[] | undefined, given: Given): readonly string[] | undefined => sets?.find(set => set.every(f => given[f] !== undefined));

/** What a follow-up asks: all of the sum before with the new figures put in. */
export function follow(kind: SumKind, prev: Given, next: Given): Given {
  const out: Given = { ...prev };
  for (const group of kind.either ?? []) {
    if (!group.some(f => next[f] !== undefined)) continue;
    for (const f of group) if (next[f] === undefined) { delete out[f]; delete out[unitOf(f)]; }
  }
  for (const f of Object.keys(next)) {
    if (f.endsWith('Unit')) continue;
    if (next[f] === undefined) { delete out[f]; delete out[unitOf(f)]; continue; }
    const unit = next[unitOf(f)] ?? (typeof prev[unitOf(f)] === 'string' ? prev[unitOf(f)] : undefined);
    out[f] = next[f];
    if (unit) out[unitOf(f)] = unit;
  }
  return out;
}
