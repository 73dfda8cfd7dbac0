import type { Meaning } from '../telling.ts';
import { disposed, distrusted } from './disposed.ts';
import { flawIn } from './flaw-in.ts';
import { lacking } from './lacking.ts';
import { died, proved } from './proved.ts';
import { piecesHad, stateful } from './stateful.ts';
import { wrongOne } from './wrong-one.ts';

/**
 * Findings whose words look like another kind's, so that they are shown a clause before wants, jobs, fits, places and work are: rust "in the tank" is
 * kept nowhere, "broken off the housing" took nothing off, "tested leaky" is no test, "bin the gasket" no job, the wrong seal that somebody fitted no fit.
 */
export const outright: Meaning = t => flawIn(t) ?? disposed(t) ?? distrusted(t) ?? proved(t) ?? died(t) ?? wrongOne(t) ?? lacking(t) ?? stateful(t) ?? piecesHad(t);
