import { readHours } from '../../nlp/settings/hours.ts';
import type { ReadAndRecord, Recorded, Turn, TurnOut } from '../turn/parts.ts';
import { drawAsked } from './draw-it.ts';
import { helpHere } from './help-here.ts';
import { hoistSaid, readHoist } from './hoist-said.ts';
import { awaySaid, hoursSaid } from './hours-said.ts';
import { orderRefused } from './refuse.ts';
import { soundsSupposed } from './supposed.ts';
import { orderByAsked, readOrderBy } from './order-by-asked.ts';
import { supposed } from './what-if.ts';

/** What words about the plan can mean, before they are read as a note: none of it is said of the shop. Undefined: none of these. */
export const aboutThePlan = (turn: Turn, ways: { readAndRecord: ReadAndRecord; recorded: Recorded }): TurnOut | undefined =>
  drawAsked(turn) ?? orderRefused(turn) ?? hoursSaid(turn) ?? awaySaid(turn) ?? hoistSaid(turn) ?? orderByAsked(turn) ?? supposed(turn) ?? helpHere(turn, ways);

/** Words that were about the plan when they were said, so that a new reading of old notes makes nothing of them. */
export const wasAboutThePlan = (text: string): boolean => readHours(text) !== undefined || readHoist(text) !== undefined || readOrderBy(text) !== undefined || soundsSupposed(text);
