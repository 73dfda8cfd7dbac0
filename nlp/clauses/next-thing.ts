import { FAULT } from '../words/faults.ts';
import type { Item } from './items.ts';
import { endsAt, hasPredicate, isAux } from './predicate.ts';

/**
 * After a comma the next thing is named without a verb: with its torque ("intakes in, head bolts at 55 foot pounds"), with how it sits in the same words ("door off,
 * chimney off the petticoat"), or with the flaw that it hasn't ("two teeth chipped, pinion not a mark on it").
 */
export function nextThing(items: readonly Item[], after: number, cur: readonly Item[]): boolean {
  const sits = (x: Item | undefined): boolean => x?.t === 'prt' && /^(off|out|on|in)$/.test(x.low);
  const at = /^(at|to)$/.test(items[after]?.low ?? '') ? after + 1 : after, of = items[at]?.f, flaw = items[after + 1]?.np;
  const state = cur.find((x, n) => sits(x) && cur[n - 1]?.np !== undefined), verbless = !cur.some(x => x.t === 'verb' || isAux(x));
  if (!hasPredicate(cur) && !state || cur.some(x => /^(need|want|get|order|buy|for|pay)$/.test(x.base ?? x.low) || x.f?.dim === 'money')) return false;
  if (of?.dim === 'measure' && /^(lb-ft|lb-in|N·m)$/.test(of.value.unit) && endsAt(items, at + 1)) return !cur.some(x => x.f?.dim === 'measure');
  if (items[after]?.t === 'neg' && flaw && FAULT.test(flaw.said.split(' ').at(-1)!)) return true;
  return verbless && state !== undefined && items[after]?.low === state.low && items[after + 1]?.np !== undefined;
}

/** "welded a bead around them, tight as a drum now": how it is, likened to something, behind what was done. */
export const likened = (items: readonly Item[], k: number, cur: readonly Item[]): boolean =>
  items[k - 1]?.low === ',' && items[k]?.t === 'adj' && /^(as|like|enough)$/.test(items[k + 1]?.low ?? '') && items[k + 2] !== undefined && hasPredicate(cur) && cur.some(x => x.t === 'verb' || x.t === 'prt') && !cur.some(x => x.t === 'be');
