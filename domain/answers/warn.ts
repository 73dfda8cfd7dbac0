import type { Entry, EntryOf } from '../model/entry.ts';
import type { Shop } from '../log/shop.ts';
import type { Now } from './answer.ts';

/**
 * What speaks against something just said; the note is kept all the same.
 * `rule`: the person's own rule is not met. `wanted`: a thing for it is still to be got. `order`: the usual order of assembly.
 * `circle`: a rule would close a circle; `path` goes round it, first and last the same.
 */
export type Warning =
  | { kind: 'rule'; part: string; first: string; then: string }
  | { kind: 'wanted'; part: string; item: string; status: 'needed' | 'ordered' | 'late'; expected?: string }
  | { kind: 'order'; part: string; first: string; why: string; source: string }
  | { kind: 'circle'; rule: EntryOf<'rule'>; path: string[] };

/** `refused`: indexes into `entries` that are not to be recorded (rules that close a circle). `machine`: the chat's current one. */
export interface Warned { warnings: Warning[]; refused: number[] }

/** Call before record(), with the entries it is going to be given. */
export function warnings(_shop: Shop, _entries: readonly Entry[], _now: Now, _machine?: string): Warned {
  return { warnings: [], refused: [] };
}
