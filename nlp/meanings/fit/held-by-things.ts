import type { Entry } from '../../../domain/model/entry.ts';
import { nameWords } from '../../../domain/model/names.ts';
import type { Told } from '../telling.ts';

/** What drives or lifts a part into its place, and who helps, holds nothing there afterwards. */
const HANDLED_WITH = /^(maul|hammer|mallet|drift|vice|vise|socket|spanner|wrench|hoist|crane|finger|hand|mate|lad|boy|girl|son|neighbour|neighbor|wife|help|torch|puller|thump|click|grunt|swear|luck|sigh|pop|thud|block|ash|timber|lever|jack|press|magnet)$/;

/** A fit without what it was only put on with: "driven home with a brass drift". Several things joined by "and" are all tools, or stay. */
export function heldByThings(x: Told): Told {
  const e = x.entry;
  if (e.kind !== 'fit' || e.with === undefined || !e.with.split(/ and |, | & /).every(w => HANDLED_WITH.test(nameWords(w).at(-1) ?? ''))) return x;
  const { with: _, ...rest } = e;
  return { ...x, entry: rest as Entry };
}
