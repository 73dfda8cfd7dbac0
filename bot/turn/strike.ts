import { entriesOfNote } from '../../domain/store/entries.ts';
import type { Recorded, Turn, TurnOut } from './types.ts';

/** What the "Scratch that" button of an older reply says in words: it strikes what that note logged, not what came last. */
export const scratchNote = (note: number): string => `scratch note ${note}`;

export function struckNote(turn: Turn, recorded: Recorded): TurnOut | undefined {
  const said = /^\s*scratch note (\d+)\s*$/i.exec(turn.incoming.text);
  if (!said) return undefined;
  const entries = entriesOfNote(turn.deps.log.store, Number(said[1])).filter(e => e.entry.kind !== 'amend');
  return recorded(turn, entries.map(e => ({ kind: 'amend' as const, undo: true, of: e.id })), turn.note, {});
}
