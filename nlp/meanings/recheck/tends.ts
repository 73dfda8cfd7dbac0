import { isClass } from '../../words/verbs.ts';

/** Whether a verb is a deed by which a part is looked after: looked at, tightened, or worked on. */
export const tends = (base: string): boolean => (['check', 'tight', 'work'] as const).some(cls => isClass(base, cls));
