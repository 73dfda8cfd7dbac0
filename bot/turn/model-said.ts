import { readModelWish, type ModelWish } from '../../nlp/hear/hub-models.ts';
import type { ChangeModel } from '../incoming.ts';
import { askFetch, FETCHING, ONLY_RUNNING, SET_BY_HAND, WHICH_MODELS } from '../say/model.ts';
import { compose } from '../say/reply.ts';
import type { OpenQuestion } from './open-question.ts';
import type { Turn, TurnOut } from './types.ts';

/** Words about the model that notes are heard with. Anything that must be fetched is asked about first. Undefined: about anything else. */
export function modelSaid(turn: Turn): TurnOut | undefined {
  const wish = turn.incoming.edits ? undefined : readModelWish(turn.incoming.text);
  if (!wish) return undefined;
  const { models } = turn.deps;
  if (wish.wish === 'which') return said(turn, WHICH_MODELS);
  if (!models) return said(turn, ONLY_RUNNING);
  if (models.setByHand) return said(turn, SET_BY_HAND);
  return wish.wish === 'other' && !models.isHere(wish.model.model) ? asked(turn, wish) : changed(turn, wish.wish === 'other' ? wish.model : undefined);
}

const said = ({ note, incoming: { at } }: Turn, line: string): TurnOut => ({ reply: compose({ note: note.id, at, lines: [line] }) });

function asked(turn: Turn, { model }: Extract<ModelWish, { wish: 'other' }>): TurnOut {
  const open: OpenQuestion = { kind: 'model', text: askFetch(model), choices: ['yes', 'no'], model };
  return { reply: compose({ note: turn.note.id, at: turn.incoming.at, open }), open };
}

/** Hands out the change, with a line that says so; to the one that comes along when no `model` is named. */
function changed(turn: Turn, model: ChangeModel['model'], line = 'Changing the speech model…'): TurnOut {
  const out = said(turn, line);
  return { ...out, reply: { ...out.reply, later: [{ kind: 'model', model }] } };
}

/** The person's yes: what was asked about is fetched, and used when it is here. */
export const fetchAgreed = (turn: Turn, model: ChangeModel['model']): TurnOut => (turn.deps.models ? changed(turn, model, FETCHING) : said(turn, ONLY_RUNNING));
