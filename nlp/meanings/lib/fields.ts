import { textOf } from '../../dimensions/part/text-of.ts';
import type { Item } from '../../clauses/items.ts';
import { bare } from '../../clauses/as-said.ts';
import { isMachine, isPlaceNoun, isSource } from '../../clauses/name-kinds.ts';
import { PERSONS } from '../../words/persons.ts';
import type { Sheet } from '../../types.ts';
import { nounClasses } from '../../words/nouns.ts';

/** A piece taken off in one pass of the tool: "a skim", "a light cut". */
export const SHAVING = /^(?:(?:light|fine|finishing|roughing|quick|thin|wee|bare|clean-?up|first|second|last|final|heavy) )*(skim|cut|shaving|lick|whisker|pass)$/;

/** Without the keys that hold undefined. */
export const trim = <T extends object>(o: T): T => Object.fromEntries(Object.entries(o).filter(([, v]) => v !== undefined)) as T;

/** The words that hold a part or were used on it: the noun phrases after "with", "using", "by", as said. */
export function withPhrase(sheet: Sheet, items: readonly Item[]): string | undefined {
  const k = items.findIndex((i, n) => /^(with|using|w)$/.test(i.low) && (items[n + 1]?.np || items[n + 1]?.t === 'dim' || items[n + 1]?.t === 'num' || items[n + 1]?.t === 'det'));
  return k < 0 ? undefined : nounsFrom(sheet, items, k + 1);
}

/** A run of noun phrases from item `k` with "and" and commas between them, as said; stops at a value, a verb or a new preposition. */
export function nounsFrom(sheet: Sheet, items: readonly Item[], k: number): string | undefined {
  let end = k;
  for (let i = k; i < items.length; i++) {
    const it = items[i]!;
    if (it.np || it.t === 'num' || it.t === 'det' || it.f?.dim === 'number' || it.f?.dim === 'thread' || it.f?.dim === 'measure') { if (it.np && !it.np.stands || it.np || it.t === 'num' && /^\d+w-?\d*$/.test(it.low)) end = i + 1; continue; } // "with 80w90"
    if ((it.low === 'of' || /^(and|plus|a)$/.test(it.low) || it.low === ',' || it.low === 'each') && i + 1 < items.length) continue;
    break;
  }
  if (end === k) return undefined;
  return bare(textOf(sheet, items[k]!.from, items[end - 1]!.to));
}

export const isFastener = (low: string): boolean => nounClasses(low).has('fastener') || nounClasses(low.split(' ').at(-1)!).has('fastener');
export const isConsumable = (low: string): boolean => nounClasses(low).has('consumable') || nounClasses(low.split(' ').at(-1)!).has('consumable');
export const isTool = (low: string): boolean => nounClasses(low).has('tool') || nounClasses(low.split(' ').at(-1)!).has('tool');

const PLACE_PREP = /^(in|on|under|underneath|beneath|below|behind|beside|by|near|over|above|inside|into|onto|at|against|agin|alongside|among|amongst|between|next|up|down|out|back|atop|along)$/;

/** Where something was put: the prepositional phrase from item `k` to the end of the place, as said. */
export function placeFrom(sheet: Sheet, items: readonly Item[], k: number): { where: string; at: number; to: number } | undefined {
  for (let i = k; i < items.length; i++) {
    const it = items[i]!;
    if (it.t !== 'prep' && it.t !== 'prt' || !PLACE_PREP.test(it.low)) continue;
    let j = i + 1;
    while (items[j] && (items[j]!.t === 'prep' || items[j]!.t === 'prt' || items[j]!.t === 'to') && PLACE_PREP.test(items[j]!.low) || items[j]?.low === 'to' || items[j]?.low === 'of') j++;
    const np = items[j];
    if (!np || !(np.np || np.t === 'pron' || np.t === 'num' || np.t === 'dim' && np.f!.dim === 'number')) continue;
    let end = j + 1;
    while (items[end] && (items[end]!.t === 'prep' || items[end]!.t === 'prt' || items[end]!.t === 'poss' || items[end]!.low === 'next' || items[end]!.low === 'of' || items[end]!.low === 'to') && !/^(with|for|from|till|until|off|about)$/.test(items[end]!.low)) {
      let e = end + 1;
      while (items[e] && (items[e]!.t === 'prep' || items[e]!.t === 'prt' || items[e]!.t === 'to')) e++;
      if (items[e]?.np || items[e]?.t === 'pron' || items[e]?.t === 'dim' && items[e]!.f!.dim === 'number') end = e + 1; else break;
    }
    if (items[end]?.low === ',' && items[end + 1]?.t === 'num' && items[end + 2]?.np && isPlaceNoun(items[end + 2]!.np!) && np.np && (!items[end + 3] || items[end + 3]!.t === 'mark')) end += 3; // "…, 3rd shelf"
    else if (items[end]?.low === ',' && items[end + 1]?.np && isPlaceNoun(items[end + 1]!.np!) && (!items[end + 2] || items[end + 2]!.t === 'mark') && np.np) end += 2; // "in the coffee can, third shelf"
    for (const m of [/^,$/, /^(wrapped|rolled|leaned|leant|tucked|tied|left|right)$/]) { // "…, under the bed", "…, top shelf in the dairy", "…wrapped in a rag", "…left of the vice"
      if (!m.test(items[end]?.low ?? '') || items[end]?.t === 'verb' && !/^(past|part)$/.test(items[end]!.form ?? '')) continue;
      let e = end + 1;
      if (m.source === '^,$' && items[e]?.np && !items[e]!.np!.stands && isPlaceNoun(items[e]!.np!)) e++;
      while (items[e] && PLACE_PREP.test(items[e]!.low) || items[e]?.low === 'of' && e > end) e++;
      if (items[e]?.np && (m.source !== '^,$' || isPlaceNoun(items[e]!.np!)) && PLACE_PREP.test(items[e - 1]!.low.replace(/^of$/, 'in')) && (!items[e + 1] || /^(mark|cc|adv)$/.test(items[e + 1]!.t))) end = e + 1;
    }
    return { where: textOf(sheet, it.from, items[end - 1]!.to).replace(/^(in|on|under) (\w+'s)/, '$1 $2'), at: i, to: end };
  }
  return undefined;
}

/** From whom: the phrase after "from", "off", "at", "by" that names a source, as said with its "at the…", "in town". */
export function sourceIn(sheet: Sheet, items: readonly Item[]): { source: string; at: number; to: number } | undefined {
  for (let i = 0; i < items.length; i++) {
    const it = items[i]!, np = items[i + 1]?.np;
    if (!/^(from|off|at|through|via|by|with|to)$/.test(it.low) && !(it.low === 'of' && items[i - 1]?.low === 'out') || !np) continue; // "out of the catalogue"
    if (it.low !== 'from' && it.low !== 'off' && !isSource(np)) continue;
    if (it.low === 'off' && !isSource(np) && !PERSONS.test(np.said) && (isPlaceNoun(np) || isMachine(sheet, np.name) || nounClasses(np.said.split(' ').at(-1)!).has('part') || np.known)) continue;
    let to = i + 2;
    while (items[to] && (items[to]!.t === 'prep' || items[to]!.t === 'prt') && /^(at|in|down|up|across|on|over|near|of|by|along|behind|round|with)$/.test(items[to]!.low) && (items[to]!.low !== 'with' || PERSONS.test(np.said)) && items[to + 1]?.np) to += 2;
    if (items[to]?.t === 'prt' && /^(down|over|up|along|across)$/.test(items[to]!.low) && (!items[to + 1] || items[to + 1]!.t === 'mark')) to++; // "a fella two farms down"
    return { source: bare(textOf(sheet, items[i + 1]!.from, items[to - 1]!.to)), at: i, to };
  }
  return undefined;
}
