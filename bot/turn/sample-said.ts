import { loadSample } from '../sample.ts';
import { compose } from '../say/reply.ts';
import type { TakeTurn, Turn, TurnOut } from './types.ts';

/** "Load the sample shop", said in an empty one. */
export function sampleLoaded(turn: Turn, take: TakeTurn): TurnOut | undefined {
  if (!/^\s*(please )?(load|show|open|try|give) (me )?(the |a )?sample( shop)?[.!]?\s*$/i.test(turn.incoming.text)) return undefined;
  const result = loadSample(turn.deps, take, 1);
  const line = 'refused' in result ? result.refused : `${result.loaded} notes of Heron's restoration are in, all invented. Ask "what's holding up the radiator", or "what do I still need to buy".`;
  return { reply: compose({ note: turn.note.id, at: turn.incoming.at, lines: [line] }), machine: 'refused' in result ? undefined : 'Heron' };
}
