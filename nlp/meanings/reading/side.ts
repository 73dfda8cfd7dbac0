import type { Entry } from '../../../domain/model/entry.ts';
import { nameWords } from '../../../domain/model/names.ts';
import { OPPOSITE } from '../../words/sides.ts';

/**
 * A reading with its side said once, in the name of its part: the pressure of the back tyres is no "pressure at the back", and after "front bearing 3 thou clearance" the
 * "clearance at the rear" is the rear bearing's.
 */
export function sidedOnce(e: Entry): Entry {
  if (e.kind !== 'reading') return e;
  const [, what, side] = /^(.+) at the (\S+)$/.exec(e.what) ?? [];
  if (what === undefined || side === undefined) return e;
  if (nameWords(e.part).includes(side)) return { ...e, what };
  const words = e.part.split(' '), other = words.findIndex(w => OPPOSITE[w] !== undefined && (OPPOSITE[w] === side || OPPOSITE[OPPOSITE[w]!] === OPPOSITE[side]));
  return other < 0 ? e : { ...e, what, part: words.with(other, side).join(' ') };
}
