import type { Entry } from '../../domain/model/entry.ts';
import { nameKey } from '../../domain/model/names.ts';
import type { Placed } from '../clauses/clauses.ts';
import { isMachine, isStuff, partLike } from '../clauses/name-kinds.ts';
import { PERSONS } from '../words/persons.ts';
import type { Sheet } from '../types.ts';

/** The kinds whose name may be one that the rules did not choose. */
export const RENAMED: ReadonlySet<Entry['kind']> = new Set<Entry['kind']>(['fit', 'finding', 'reading', 'work', 'job', 'stow', 'out', 'recheck', 'wait', 'want', 'arrival', 'order', 'bought', 'quote', 'hours']);

/** So many of the things spoken of before are thought of. */
const MOST = 5;

/**
 * What an entry told of a clause may be about: what the rules chose, what the clause names, what was spoken of before, less words in front, and a piece with the part
 * that owns it in front ("the journals" of the shaft spoken of before). Each once, the rules' choice first.
 */
export function candidates(sheet: Sheet, c: Placed, chosen: string): string[] {
  const out = new Map<string, string>();
  const add = (name: string): void => { const key = nameKey(name); if (key && !out.has(key)) out.set(key, name); };
  add(chosen);
  const named = c.items.flatMap(i => (i.np && !i.np.stands && fits(sheet, i.np.name) ? [i.np] : [])), own = named.map(np => np.name);
  for (const np of named) { add(np.name); add(np.said); }
  for (const s of [...c.subj, ...c.obj]) add(s.name);
  const before = [...new Set(c.memory.all().map(x => x.name))].filter(n => fits(sheet, n)).slice(0, MOST);
  before.forEach(add);
  for (const piece of new Set([chosen, ...own])) {
    const words = piece.split(' ');
    for (let k = 1; k < words.length; k++) add(words.slice(k).join(' '));
    if (words.length > 2) continue;
    for (const owner of [...before, ...own]) if (owner !== piece && !isMachine(sheet, owner) && !nameKey(piece).split(' ').some(w => nameKey(owner).split(' ').includes(w))) add(`${owner} ${piece}`);
  }
  return [...out.values()];
}

const fits = (sheet: Sheet, name: string): boolean => name !== '' && !PERSONS.test(name) && (partLike(sheet, name) || isStuff(name));
