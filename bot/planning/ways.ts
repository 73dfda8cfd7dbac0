import { readHours } from '../../nlp/settings/hours.ts';
import type { ReadAndRecord, Recorded, Turn, TurnOut } from '../turn/types.ts';
import { aheadAsked } from './ahead-asked.ts';
import { chanceAsked } from './asked-day.ts';
import { coatMeasured } from './coat-measured.ts';
import { drawAsked } from './draw-it.ts';
import { askToDraw } from './draw-named.ts';
import { helpHere } from './help-here.ts';
import { hoistSaid, readHoist } from './hoist-said.ts';
import { awaySaid, hoursSaid } from './hours-said.ts';
import { listAsked, readList } from './list-asked.ts';
import { orderRefused } from './refuse.ts';
import { readDropped, ruleDropped } from './rule-dropped.ts';
import { soundsSupposed } from './supposed.ts';
import { orderByAsked, readOrderBy } from './order-by-asked.ts';
import { supposed } from './what-if.ts';

/** What words about the plan can mean, before they are read as a note: none of it is said of the shop. Undefined: none of these. */
export const aboutThePlan = (turn: Turn, ways: { readAndRecord: ReadAndRecord; recorded: Recorded }): TurnOut | undefined =>
  drawAsked(turn) ?? orderRefused(turn) ?? ruleDropped(turn, ways.recorded) ?? hoursSaid(turn) ?? awaySaid(turn) ?? hoistSaid(turn) ?? orderByAsked(turn) ?? aheadAsked(turn) ?? listAsked(turn, ways.recorded) ?? supposed(turn) ?? chanceOf(turn, ways.recorded) ?? coatMeasured(turn, ways.recorded) ?? helpHere(turn, ways);

/** A chance by a day is asked in words that a note's reader would take for a thing's. */
function chanceOf(turn: Turn, recorded: Recorded): TurnOut | undefined {
  const ask = chanceAsked(turn.incoming.text, { at: turn.incoming.at });
  return ask && recorded(turn, [], turn.note, { asks: [ask] });
}

/** Words that were about the plan when they were said, so that a new reading of old notes makes nothing of them. */
export const wasAboutThePlan = (text: string): boolean => readHours(text) !== undefined || readHoist(text) !== undefined || readOrderBy(text) !== undefined || askToDraw(text) !== undefined || readList(text) !== undefined || readDropped(text) !== undefined || soundsSupposed(text);
