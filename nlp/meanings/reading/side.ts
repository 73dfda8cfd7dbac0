import type { Entry } from '../../../domain/model/entry.ts';
import { nameWords } from '../../../domain/model/names.ts';

/** What a reading measures, without the side that the name of its part already tells: the pressure of the back tyres, not "pressure at the back". */
export function sidedOnce(e: Entry): Entry {
  if (e.kind !== 'reading') return e;
  const [, what, side] = /^(.+) at the (\S+)$/.exec(e.what) ?? [];
  return what !== undefined && nameWords(e.part).includes(side!) ? { ...e, what } : e;
}
