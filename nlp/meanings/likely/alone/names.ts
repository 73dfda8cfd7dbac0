import type { Weighed } from '../../../likely/net/weighed.ts';
import type { Sort } from '../../../likely/sort.ts';
import type { Stretch } from '../../../likely/spot.ts';
import type { Telling } from '../../telling.ts';
import { about } from '../about.ts';
import { surely } from '../surely.ts';

/** The names of what a word or a figure tells: those that the net surely points to from there, else what the clause is about. `done`: whether it was done to it. */
export const namesFrom = (t: Telling, net: Weighed, sort: Sort, at: Stretch, done: boolean): string[] => about({ ...t, pointed: surely(t, net, sort, at) }, done).map(x => x.name);
