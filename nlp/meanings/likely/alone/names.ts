import { namedBy } from '../../../../domain/model/named-by.ts';
import type { Weighed } from '../../../likely/net/weighed.ts';
import type { Sort } from '../../../likely/sort.ts';
import type { Stretch } from '../../../likely/spot.ts';
import type { Telling } from '../../telling.ts';
import { about } from '../about.ts';
import { surely } from '../surely.ts';

/**
 * The names of what a word or a figure tells: those that the net surely points to from there, else what the clause is about. `done`: whether it was done to it. A name that is the
 * end of one that the clause was read of before is that one.
 */
export const namesFrom = (t: Telling, net: Weighed, sort: Sort, at: Stretch, done: boolean): string[] => {
  const have = t.told.filter(x => x.clause === t.clause).flatMap(x => namedBy(x.entry) ?? []);
  return about({ ...t, pointed: surely(t, net, sort, at) }, done).map(x => have.find(name => name.endsWith(` ${x.name}`)) ?? x.name);
};
