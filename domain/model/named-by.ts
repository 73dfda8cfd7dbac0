import type { Ask } from './ask.ts';
import type { Entry } from './entry.ts';

/** The thing that an entry or an ask is about, by the name it carries; undefined where it names none. */
export const namedBy = (x: Entry | Ask): string | undefined => ('item' in x ? x.item : 'part' in x ? x.part : undefined) || undefined;
