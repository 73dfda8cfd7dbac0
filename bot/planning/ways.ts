import type { Turn, TurnOut } from '../turn.ts';
import { drawAsked } from './draw-it.ts';
import { hoursSaid } from './hours-said.ts';
import { orderRefused } from './refuse.ts';
import { supposed } from './what-if.ts';

/** What words about the plan can mean, before they are read as a note: none of it is said of the shop. Undefined: none of these. */
export const aboutThePlan = (turn: Turn): TurnOut | undefined =>
  drawAsked(turn) ?? orderRefused(turn) ?? hoursSaid(turn) ?? supposed(turn);
