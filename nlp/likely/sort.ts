import type { Entry } from '../../domain/model/entry.ts';

/** What a clause may be told to be: a kind of entry, and for a fit how the part now sits ("fit off"), since each is said in its own words. */
export type Sort = string;

export const sortOf = (e: Entry): Sort => (e.kind === 'fit' ? `fit ${e.state}` : e.kind);
/** The kind that a sort belongs to. */
export const kindOf = (s: Sort): Entry['kind'] => s.split(' ')[0] as Entry['kind'];
