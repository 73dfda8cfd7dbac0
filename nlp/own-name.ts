import type { Ask } from '../domain/model/ask.ts';
import type { Entry } from '../domain/model/entry.ts';
import { namedBy } from '../domain/model/named-by.ts';
import { nameKey, nameWords } from '../domain/model/names.ts';
import { isKnownPart, knownNames } from './dimensions/part/known.ts';
import type { Sheet } from './types.ts';
import { nounClasses } from './words/nouns.ts';
import { SIDES } from './words/sides.ts';

/** Words ahead of a name that tell which one of several it is. */
const WHICH = /^(?:other|old|new|spare|second-?hand|used|first|second|third|fourth|last|next|number|no|good|bad|far|near|long|short|big|small|half|main|centre|center|\d.*)$/;

/**
 * The shop's own name of what was said with more ahead of it: the machine's name, or a word of no other name of the shop's ("grader clutch plate" is the clutch plate that the shop has). Not where the words ahead tell which of several, or are of other names of the shop.
 * Of the 1,780 entries of annotated notes where such words stand ahead, 96 % have the shop's name.
 */
function ownName(sheet: Sheet, name: string): string {
  const parts = sheet.ctx.parts ?? [], words = name.split(' ');
  if (isKnownPart(parts, name)) return name;
  const common = sidesApart(parts, name) ?? (words.length < 2 ? ofOneWord(sheet, name) ?? name : undefined);
  if (common !== undefined) return common;
  if (NUMBERED.test(name)) return knownNames(parts).spelt(nameKey(name)) ?? numberedAsSaid(sheet, name);
  const known = knownNames(parts), machines = knownNames(sheet.ctx.machines ?? []);
  for (let cut = words.length - 1; cut > 0; cut--) if (machines.spelt(nameKey(words.slice(0, cut).join(' '))) !== undefined) return words.slice(cut).join(' ');
  for (let cut = 1; cut < words.length; cut++) {
    const own = known.exact(nameKey(words.slice(cut).join(' ')));
    if (own === undefined) continue;
    if (nounClasses(words.slice(cut - 1).join(' ').toLowerCase()).size > 0) return name; // a water pump is no other pump
    const ahead = words.slice(0, cut);
    return ahead.every(w => !SIDES.has(w.toLowerCase()) && !WHICH.test(w.toLowerCase()) && nameWords(w).every(k => !known.words.has(k))) ? own : name;
  }
  return name;
}

/** "Linings" are the brake linings, where all that the shop has besides are the left and the right one of those. */
function sidesApart(parts: readonly string[], name: string): string | undefined {
  const said = nameWords(name), head = said.at(-1);
  const ending = head === undefined ? [] : knownNames(parts).holding(said, head), unsided = ending.filter(n => !nameWords(n).some(w => SIDES.has(w)));
  const all = unsided.length === 1 && ending.length > 1 ? nameWords(unsided[0]!) : undefined;
  return all && ending.every(n => nameWords(n).filter(w => !SIDES.has(w)).join(' ') === all.join(' ')) ? unsided[0] : undefined;
}

/** The mill is the sawmill, where the shop has no other whose name ends so. */
function ofOneWord({ ctx: { machines = [] } }: Sheet, word: string): string | undefined {
  const low = word.toLowerCase(), ending = low.length > 3 ? machines.filter(m => m.toLowerCase().endsWith(low) && !nameWords(m).includes(low)) : [];
  return ending.length === 1 && !machines.some(m => nameWords(m).includes(low)) ? ending[0] : undefined;
}

const NUMBERED = /\bnumber (\d+)\b/;
/** "no. 2 rack", where it was written so. */
function numberedAsSaid(sheet: Sheet, name: string): string {
  const n = NUMBERED.exec(name)![1]!, said = new RegExp(String.raw`\b(?:no\.? ?|number )${n}\b`, 'i').exec(sheet.text)?.[0];
  return said === undefined ? name : name.replace(NUMBERED, said);
}

/** What an entry or a question is about, in the shop's own name. */
export function inTheShopsName<T extends Entry | Ask>(sheet: Sheet, x: T): T {
  const name = namedBy(x), own = name === undefined ? undefined : ownName(sheet, name);
  return own === undefined || own === name ? x : { ...x, ['item' in x ? 'item' : 'part']: own };
}
