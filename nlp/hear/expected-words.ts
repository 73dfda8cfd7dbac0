import { CONDITION } from '../words/conditions.ts';
import { nounClasses } from '../words/nouns.ts';
import { allVerbForms, isClass, verbForms } from '../words/verbs.ts';
import { TRADE_WORDS } from './mend/trade-words.ts';

const plural = (word: string) => (word.endsWith('s') ? [word] : [word, `${word}s`]);
const isPast = (word: string) => verbForms(word).some(({ form }) => form === 'past');
const isBareVerb = (word: string) => !isPast(word) && !CONDITION.has(word) && nounClasses(word).size === 0 && verbForms(word).some(({ form }) => form === 'base');

const BENCH = ['off', 'on', 'hang', 'tight', 'work', 'order', 'buy'] as const;
/** "primed", "ordered", "straightened": pasts that differ from their bare verb by an ending. */
const deeds = () => [...allVerbForms()].filter((word) => verbForms(word).some(({ base, form }) => form === 'past' && base !== word && BENCH.some((cls) => isClass(base, cls))));

/**
 * What is lent a bonus in every shop: the trade's words, and the pasts of what is done at a bench. Notes tell what was done, and to the ear
 * "primed the" is hardly another than "prime the" (its ending is swallowed by the next word), so the bare verb is lent none.
 */
export const SAID_FORMS: readonly string[] = [...new Set([
  ...TRADE_WORDS.filter((word) => !isBareVerb(word)).flatMap((word) => (isPast(word) ? [word] : plural(word))),
  ...deeds(),
])];
