import type { FinishAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { some } from './supply.ts';

/** Without a plan behind it no day is named. */
export const finish = (ask: AskOf<'finish'>): FinishAnswer =>
  ({ kind: 'finish', ...some({ part: ask.part }), p50: null, p80: null, driver: null, chance: null, why: 'no plan has been worked out' });
