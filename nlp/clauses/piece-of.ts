import type { Phrase } from '../dimensions/part/phrase.ts';
import { snap } from '../dimensions/part/snap.ts';
import type { Sheet } from '../types.ts';
import { SIDES } from '../words/sides.ts';
import type { Thing } from './clause.ts';
import type { Item } from './items.ts';
import type { Memory } from './memory.ts';
import { before, withOwner } from './owner.ts';
import { afterNouns, finite, isAux } from './predicate.ts';
import { isStuff, partLike } from './name-kinds.ts';

/** "on the twine box, the lid hinge is broke": what a piece is of stands first. Gives the item at which the piece begins. */
export function owning(items: readonly Item[], k: number): number | undefined {
  const whole = items[k + 1]?.np;
  if (!/^(on|in|inside)$/.test(items[k]?.low ?? '') || !whole || whole.stands || items[k + 2]?.low !== ',' || !items[k + 3]?.np || items[k + 3]!.np!.stands) return undefined;
  const after = afterNouns(items, k + 3);
  return isAux(items[after]) || finite(items[after]) ? k + 3 : undefined;
}

/** What is the surface of a part and no part of its own. */
const SURFACE = /^(?:(?:top|bottom|upper|lower|inner|outer|front|rear|left|right) )?(threads?|lips?|edges?|races?|seats?|bores?|splines?|keyways?|journals?|rims?|webs?|flanges?|grooves?|teeth|tips?|skirts?|crowns?|throats?|faces?)$/;
/** "…nut came off, thread's rough": a surface that is told of alone gets the name of what was spoken of in front. */
export function ownFace(things: readonly Thing[], sheet: Sheet, memory: Memory): Thing[] {
  const whole = memory.topic();
  return things.map(t => (things.length === 1 && t.np && !t.np.stands && !t.np.known && (SURFACE.test(t.name) || sheet.tokens[t.np.from]?.low === 'its' && partLike(sheet, t.name)) && whole && whole.name !== t.name && !whole.machine && partLike(sheet, whole.name) && !isStuff(whole.name) && !SURFACE.test(whole.name) && !whole.name.split(' ').includes(t.name) ? { ...t, name: before(whole.name, t.name) } : t));
}

/** The name of a piece with what it is of, or the side that it is on, in front. */
export const piece = (sheet: Sheet, name: string, whole: Phrase, memory: Memory): string => {
  const side = /^(\S+) (?:hand )?(?:side|end)$/.exec(whole.said)?.[1];
  return side && SIDES.has(side) ? snap(`${side} ${name}`, sheet.ctx).name : withOwner(sheet, name, whole, 'on', memory) ?? name;
};
