import type { Entry } from '../../../domain/model/entry.ts';

/** What an entry says was done, or is to be done. */
export const deedOf = (e: Entry): string | undefined => (e.kind === 'work' ? e.action : e.kind === 'job' ? e.do : undefined);
