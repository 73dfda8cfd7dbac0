import type { HistoryAnswer, HistoryItem } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Note } from '../model/stored.ts';
import type { Notes } from '../log/past.ts';
import type { Shop } from '../log/shop.ts';
import type { More } from './given.ts';
import { covered, lookUp } from './find.ts';
import { some } from './supply.ts';

/** As many notes as an answer holds; the newest are taken. */
const MOST = 100;

/** What was said of a part, or on some days, in the person's own words, oldest first; what was struck since is left out. */
export function history(shop: Shop, ask: AskOf<'history'>, more: More): HistoryAnswer {
  const { notes, older } = found(shop, ask, more);
  return { kind: 'history', ...some({ part: ask.part, from: ask.from, to: ask.to }), items: notes.filter(n => tells(n, more)).map(itemOf), ...(older ? { older } : {}) };
}

function found(shop: Shop, { part, from, to }: AskOf<'history'>, { past, machine }: More): Notes {
  if (part === undefined) return past.notesOn({ from, to }, MOST);
  const at = lookUp(shop, part, machine);
  if (!at) return { notes: [], older: false };
  if (at.whole) return past.notesOn({ from, to }, MOST, at.machine.name);
  return past.notesAbout(at.machine.key, covered(at).map(t => t.key), { from, to }, MOST);
}

/** A note tells something when an entry of it stands; a bare "scratch that" doesn't, a correction does. */
const tells = (note: Note, { past }: More): boolean => past.entriesOf(note.id).some(({ entry }) => entry.kind !== 'amend' || entry.field !== undefined);

const itemOf = (note: Note): HistoryItem => ({ at: note.at, text: note.text, note: note.id });
