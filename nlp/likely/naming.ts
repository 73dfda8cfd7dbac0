import type { Entry } from '../../domain/model/entry.ts';
import { nameKey } from '../../domain/model/names.ts';
import type { Placed } from '../clauses/clauses.ts';
import { isMachine, isPlaceNoun, isStuff, partLike } from '../clauses/name-kinds.ts';
import { isKnownPart } from '../dimensions/part/known.ts';
import { FAULT } from '../words/faults.ts';
import { nameClasses, nounClasses, singular } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { SIDES } from '../words/sides.ts';
import type { Sheet } from '../types.ts';

/** A name that an entry may be about, with the signs that speak for or against it. */
export interface Candidate { name: string; signs: Set<string> }

/** The kinds whose name may be one that the rules did not choose. */
export const RENAMED: ReadonlySet<string> = new Set(['fit', 'finding', 'reading', 'work', 'job', 'stow', 'out', 'recheck', 'wait', 'want', 'arrival', 'order', 'bought', 'quote']);

/** So many of the things spoken of before are thought of. */
const MOST = 5;

/**
 * What an entry told of a clause may be about: what the rules chose, what the clause names, what was spoken of before, and a piece with the part that owns it in
 * front ("the journals" of the shaft spoken of before). Each once, the rules' choice first.
 */
export function candidates(sheet: Sheet, c: Placed, kind: Entry['kind'], chosen: string): Candidate[] {
  const out = new Map<string, Candidate>();
  const add = (name: string, signs: readonly string[]): void => {
    const key = nameKey(name);
    if (!key) return;
    const have = out.get(key) ?? { name, signs: new Set<string>() };
    for (const s of signs) have.signs.add(s);
    out.set(key, have);
  };
  add(chosen, ['chosen']);
  const own: string[] = [];
  c.items.forEach((i, k) => {
    if (!i.np || i.np.stands || !fits(sheet, i.np.name)) return;
    own.push(i.np.name);
    const side = c.vi >= 0 && k > c.vi ? 'after' : 'ahead', lead = c.items[k - 1];
    add(i.np.name, [`in ${side}`, `in ${side} ${lead?.t === 'prep' || lead?.t === 'prt' ? lead.low : lead?.t ?? '^'}`, ...(isPlaceNoun(i.np) ? ['place'] : [])]);
    if (i.np.said !== i.np.name) add(i.np.said, ['as said']);
  });
  for (const s of c.subj) add(s.name, [s.carried ? 'carried subject' : 'subject']);
  for (const s of c.obj) add(s.name, [s.carried ? 'carried object' : 'object']);
  const before = [...new Set(c.memory.all().map(x => x.name))].filter(n => fits(sheet, n)).slice(0, MOST);
  before.forEach((n, rank) => add(n, [`before ${rank}`]));
  const topic = c.memory.topic()?.name;
  for (const piece of new Set([chosen, ...own])) {
    const words = piece.split(' ');
    if (words.length > 1) for (let k = 1; k < words.length; k++) add(words.slice(k).join(' '), ['cut', `cut ${words.slice(0, k).map(w => (SIDES.has(w) ? 'side' : nounClasses(w).has('part') ? 'part' : isMachine(sheet, w) ? 'machine' : 'word')).join(' ')}`, ...(piece === chosen ? ['cut chosen'] : []), `cut ${words[0]!}`]);
    for (const [rank, owner] of [...before, ...own].entries()) {
      if (owner === piece || isMachine(sheet, owner) || nameKey(piece).split(' ').some(w => nameKey(owner).split(' ').includes(w)) || words.length > 2) continue;
      add(`${owner} ${piece}`, ['owned', `owned by ${own.includes(owner) ? 'own' : rank}`, ...(piece === chosen ? ['owned chosen'] : []), ...(owner === topic ? ['owned by topic'] : []), `piece ${singular(words.at(-1)!)}`, `piece ${cls(piece)}, owner ${cls(owner)}`, ...(SIDES.has(words[0]!) ? ['piece has a side'] : [])]);
    }
  }
  const who = c.who ?? '-', all = [...out.values()];
  for (const x of all) {
    const words = x.name.split(' '), head = singular(words.at(-1)!), plural = words.at(-1) !== head, about = [`class ${cls(x.name)}`, `words ${Math.min(words.length, 4)}`, isKnownPart(sheet.ctx.parts, x.name) ? 'known' : (sheet.ctx.parts?.length ?? 0) > 0 ? 'not known' : 'none known'];
    const own = [...x.signs];
    for (const a of about) { x.signs.add(a); for (const s of own) if (/^(chosen|in |before|owned|carried|subject|object|cut)/.test(s)) x.signs.add(`${s}, ${a}`); }
    for (const s of own) x.signs.add(`${kind}: ${s}`);
    x.signs.add(`head ${head}`).add(`${kind}: class ${cls(x.name)}`).add(`${who} ${plural ? 'many' : 'one'}`).add(`verb ${c.verb?.base ?? '-'} ${own[0]!}`).add(`${c.pred} ${own.join(' ')}`);
    if (own.includes('chosen')) x.signs.add(`chosen head ${head}`);
  }
  return all;
}

const fits = (sheet: Sheet, name: string): boolean => name !== '' && !PERSONS.test(name) && (partLike(sheet, name) || isStuff(name));
const cls = (name: string): string => { const of = nameClasses(name); return FAULT.test(name.split(' ').at(-1)!) ? 'fault' : of.has('part') ? 'part' : [...of][0] ?? 'thing'; };
