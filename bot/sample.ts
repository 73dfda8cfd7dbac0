import { readFileSync } from 'node:fs';
import { noteCount } from '../domain/store/notes.ts';
import { BENCH } from './incoming.ts';
import type { TakeTurn } from './turn/types.ts';
import type { Deps } from './turn/deps.ts';

interface SampleNote { at: string; text: string }

const sampleNotes = (): SampleNote[] =>
  readFileSync(new URL('../fixtures/sample/heron.jsonl', import.meta.url), 'utf8').split('\n').filter(Boolean).map(l => JSON.parse(l) as SampleNote);

/**
 * Plays the sample shop into an empty log, as notes read like any other. Returns how many; refuses with a sentence when the shop has
 * notes of its own, for invented ones must not mix with them. `besides`: notes that may be there already, such as the one that asks for it.
 */
export function loadSample(deps: Deps, turn: TakeTurn, besides = 0): { loaded: number } | { refused: string } {
  const { store } = deps.log;
  if (noteCount(store) > besides) return { refused: 'This shop has notes already; the sample shop only goes into an empty one.' };
  const notes = sampleNotes();
  store.transaction(() => notes.forEach((n, i) => turn({ key: `sample:${i + 1}`, door: 'command', chat: BENCH, at: n.at, text: n.text }, deps)));
  return { loaded: notes.length };
}
