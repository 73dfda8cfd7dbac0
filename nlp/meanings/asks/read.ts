import type { Ask } from '../../../domain/model/ask.ts';
import type { Sheet } from '../../types.ts';

/**
 * One question of a note. `from`/`to`: the tokens [from, to) that ask it; they hold nothing for an entry.
 * `used`: further stretches, before or after, whose figures only feed the sum ("Engine's got a 9 inch pulley, the saw's got a 14."): no
 * `reading` is to be made of a figure inside one of them (other facts said there, work or a part off, stay facts).
 */
export interface AskRead { ask: Ask; from: number; to: number; rule: string; used: [number, number][] }

const cached = new WeakMap<Sheet, AskRead[]>();

/**
 * Every question of the note, in the order of the words. Needs `sheet.found` filled by `findDimensions`.
 * Call it once a note, before the entries: a question may begin in the middle of a run-on sentence ("sanded the hood can i paint it yet"),
 * so it is read on the whole note, and what lies outside `from`/`to` of all of them is left for entries.
 */
export function readAsks(sheet: Sheet): AskRead[] {
  const before = cached.get(sheet);
  if (before) return before;
  const made: AskRead[] = [];
  cached.set(sheet, made);
  return made;
}

/** The questions that begin within the tokens [from, to); undefined when there are none. */
export function readAsk(sheet: Sheet, from: number, to: number): AskRead[] | undefined {
  const here = readAsks(sheet).filter(a => a.from >= from && a.from < to);
  return here.length ? here : undefined;
}
