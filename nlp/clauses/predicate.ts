import { CONDITION } from '../words/conditions.ts';
import type { Item } from './items.ts';

/** Particles that by themselves say how a part sits: "carb off", "rings on", "spindle's out". */
export const STATE_PARTICLE = /^(off|on|out|in|back|apart|down|up|together)$/;

export const isSubjectPronoun = (i: Item | undefined): boolean => i?.t === 'pron' && /^(i|we|you|he|she|they|it|that|this|those|these|one|everything|nothing|something|nobody|someone|somebody|whoever|both|all)$/.test(i.low);
export const isAux = (i: Item | undefined): boolean => i?.t === 'be' || i?.t === 'have' || i?.t === 'modal' || i?.t === 'do';
export const finite = (i: Item | undefined): boolean => i?.t === 'verb' && i.form !== 'ing';

/** After a subject that ends before item `k`: is a predicate there? Adverbs, negations and fillers are passed over. */
export function predicateAt(items: readonly Item[], k: number): boolean {
  let i = k;
  while (items[i] && (items[i]!.t === 'adv' && !(items[i]!.low === 'there' && isAux(items[i + 1])) || items[i]!.t === 'neg' || items[i]!.t === 'intj')) i++;
  const it = items[i];
  if (!it) return false;
  if (/^(being|been)$/.test(it.low)) return false; // "in town being ground" goes on
  if (isAux(it) || finite(it) || it.np?.said === 'same') return true;
  if (it.t === 'verb' && it.form === 'ing' && CONDITION.has(it.low) && (!items[i + 1] || /^(mark|cc|adv)$/.test(items[i + 1]!.t))) return true; // "number two weeping"
  if (it.t === 'adj') return CONDITION.has(it.low) || /(ed|y)$/.test(it.low);
  return it.t === 'prt' && STATE_PARTICLE.test(it.low) && items[i + 1]?.f?.dim !== 'when' && !startsNoun(items[i + 1]) && !(items[i + 1]?.t === 'adj' || items[i + 1]?.t === 'noun');
}

export const startsNoun = (i: Item | undefined): boolean => i?.t === 'np' || i?.t === 'det';

/** Item index after a run of noun phrases joined by "and"/commas with their "of/on/in" tails, beginning at `k`. */
export function afterNouns(items: readonly Item[], k: number, commas = true): number {
  let i = k;
  for (;;) {
    if (items[i]?.t !== 'np') return i;
    i++;
    while (items[i] && (items[i]!.t === 'prep' || items[i]!.t === 'prt') && (items[i + 1]?.t === 'np' || items[i]!.low === 'of' && items[i + 1]?.t === 'pron')) i += 2;
    if ((items[i]?.t === 'cc' && !/^(but|so|then|yet)$/.test(items[i]!.low) || commas && items[i]?.low === ',') && items[i + 1]?.t === 'np') { i++; continue; }
    if (items[i]?.low === ',' && items[i + 1]?.t === 'cc' && items[i + 2]?.t === 'np') { i += 2; continue; }
    return i;
  }
}

export const last = (items: readonly Item[]): Item | undefined => items.findLast(i => (i.t !== 'adv' || /^(home|here|there|away|indoors|outside)$/.test(i.low)) && i.t !== 'intj');

export const hasPredicate = (items: readonly Item[]): boolean =>
  items.some((i, k) => isAux(i) || i.t === 'verb' || (i.t === 'prt' && !startsNoun(items[k + 1]) || i.t === 'adj') && k > 0 && (items[k - 1]!.t === 'np' || items[k - 1]!.t === 'adv' && items[k - 2]?.t === 'np'));

export const endsAt = (items: readonly Item[], k: number): boolean => items[k] === undefined || items[k]!.t === 'mark' || items[k]!.t === 'cc' || items[k]!.low === 'at';

/** "three of them are": a count of things named before, as a subject. */
export const countsOf = (items: readonly Item[], k: number): boolean => {
  const of = /^(more|others?)$/.test(items[k + 1]?.low ?? '') ? k + 2 : k + 1;
  const bare = items[k]?.f?.dim === 'number' && !/^(other|others|the|those|these|all|my|his)$/.test(items[k - 1]?.low.split(' ').at(-1) ?? '') && (items[k + 1]?.t === 'be' && (items[k + 2]?.t === 'adj' || items[k + 2]?.t === 'verb') || items[k + 1]?.t === 'modal' && items[k + 2]?.t !== 'neg' || /^(need|want|look)$/.test(items[k + 1]?.base ?? '')); // "four are chipped", "two will do"
  return bare || (items[k]?.f?.dim === 'number' || items[k]?.t === 'num' || /^(most|some|none|half|both|several)$/.test(items[k]?.low ?? '')) && items[of]?.low === 'of' && (items[of + 1]?.t === 'pron' || items[of + 1]?.t === 'np') && (predicateAt(items, items[of + 1]!.t === 'np' ? afterNouns(items, of + 1, false) : of + 2) || items[of + 2]?.low === 'missing');
};
