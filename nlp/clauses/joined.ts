import { CONDITION } from '../words/conditions.ts';
import { PERSONS } from '../words/persons.ts';
import { TRADE_ENDING } from '../words/sources.ts';
import { nounClasses } from '../words/nouns.ts';
import { NAMED } from '../words/quantities.ts';
import { isClass } from '../words/verbs.ts';
import type { Item } from './items.ts';
import { likened, nextThing } from './next-thing.ts';
import { isPlaceNoun, isSource } from './name-kinds.ts';
import { afterNouns, countsOf, endsAt, finite, hasPredicate, isAux, isSubjectPronoun, last, predicateAt } from './predicate.ts';

/** "before", "after", "till" and the like open a clause when a verb follows; before a day or a bare noun they are prepositions. */
export function opensSub(items: readonly Item[], k: number): boolean {
  const low = items[k]!.low;
  if (low === 'that' && /^(make|call)$/.test(items[k - 1]?.base ?? '')) return false;
  if (low === 'as' && items[k - 1]?.low === 'much') return false; // "so much as"
  if (low === 'as' && items[k - 1]?.t === 'adj' && items[k + 1]?.t === 'adj') return false; // "dry as toast"
  if (low === 'as' || low === 'that' && items[k - 1]?.t === 'np') return predicateAt(items, afterNouns(items, k + 1, low !== 'as')) || isSubjectPronoun(items[k + 1]);
  if (low === 'that') return isSubjectPronoun(items[k + 1]) || predicateAt(items, afterNouns(items, k + 1));
  if (!/^(before|after|until|till|'til)$/.test(low)) return true;
  if (items[k + 1]?.np && /^(dinner|lunch|tea|supper|breakfast|work|milking|church|school|dark|chores|harvest|haytime|christmas|easter|mass|smoko|noon|bed|bedtime|closing|that|this)$/.test(items[k + 1]!.np!.said) && items[k + 2]?.form !== 's') return false; // "after dinner, the right's done"
  if (isSubjectPronoun(items[k + 1]) && (isAux(items[k + 2]) || finite(items[k + 2]))) return true;
  if (items[k + 1]?.t === 'verb') return true;
  return items[k + 1]?.t === 'np' && predicateAt(items, afterNouns(items, k + 1));
}

/** After a conjunction or comma: does a clause of its own begin at `k`? */
export function opensAfter(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  let i = k;
  while (items[i] && (items[i]!.t === 'adv' || items[i]!.t === 'intj' || items[i]!.t === 'cc' || items[i]!.t === 'det' && items[i + 1]?.f?.dim === 'money' || items[i]!.t === 'mark' && items[i]!.low === ',' || items[i]!.f?.dim === 'when')) i++;
  const it = items[i];
  if (!it) return false;
  if (it.t === 'neg' || isAux(it)) return true;
  const alone = !items[i + 1] || items[i + 1]!.t === 'mark';
  if (it.t === 'verb' && alone && it.form !== 'base' && items[i - 1]?.low === ',' && cur.some(x => x.base === 'need' || x.base === 'want')) return false; // "need some, annealed"
  if (it.t === 'verb') return hasSubjectOrVerb(cur);
  if (isSubjectPronoun(it)) return isAux(items[i + 1]) || items[i + 1]?.t === 'verb' || items[i + 1]?.t === 'adv' || items[i + 1]?.t === 'modal' || predicateAt(items, i + 1);
  if (it.t === 'prt' && /^(out|off)$/.test(it.low) && items[i + 1]?.t === 'pron' && finite(items[i + 2])) return true;
  if (it.t === 'prt' && items[k - 1]?.t === 'cc' && hasPredicate(cur) && /^(off|on|out|in|back|away|up|down)$/.test(it.low) && (!items[i + 1] || /^(to|mark|adv|cc|prt|prep)$/.test(items[i + 1]!.t) || items[i + 1]!.np)) return true;
  if (it.t === 'wh' || it.t === 'sub') return false;
  if (it.f?.dim === 'number' && /^(under|behind|underneath|beneath)$/.test(items[i + 1]?.low ?? '') && items[i + 2]?.np) return true;
  if (it.low === 'with' && items[i + 1]?.np && hasPredicate(cur)) {
    const subj = items[i + 2]?.t === 'prt' ? i + 3 : i + 2;
    if (isSubjectPronoun(items[subj]) && (isAux(items[subj + 1]) || finite(items[subj + 1]))) return true;
  }
  if (measuresHere(items, i, cur)) return true;
  let after = it.t === 'np' ? afterNouns(items, i, !(hasPredicate(cur) && items[k - 1]?.t === 'cc')) : i;
  if (after > i && /^(in|on|with|under|behind|over|around|inside|below|above)$/.test(items[after]?.low ?? '') && /^(it|them|that)$/.test(items[after + 1]?.low ?? '') && (isAux(items[after + 2]) || finite(items[after + 2]))) after += 2; // "…but the frame under it is solid"
  if (it.t === 'np' && items[after]?.t === 'pron' && /^(i|we)$/.test(items[after]!.low) && hasPredicate(cur)) return !(items[k - 1]?.t === 'cc' && last(cur)?.np && ownObject(items, after + 1));
  if (it.t === 'np' && (items[after]?.f?.dim === 'number' || items[after]?.f?.dim === 'measure') && endsAt(items, after + 1) && cur.some(x => x.np) && cur.some(x => x.f?.dim === items[after]!.f!.dim) && !cur.some(x => /^(need|want|get|order|buy|for|pay|say|plus)$/.test(x.base ?? x.low) || x.f?.dim === 'money')) return true;
  if (it.t === 'np' && it.np!.quant === 'no' && hasPredicate(cur) && endsAt(items, after)) return true;
  if (it.t === 'np' && items[k - 1]?.t === 'cc' && i > k && /^(now|then|so)$/.test(items[i - 1]!.low) && predicateAt(items, after)) return true; // "and now the roll is off"
  if (it.t === 'np' && items[k - 1]?.low === ',' && speaks(it.np!) && /^(say|want|reckon|ask|quote|charge|figure|swear|promise|offer)$/.test(items[after]?.base ?? '') && finite(items[after])) return true; // "canvas for the binder, the sailmaker says 260"
  if (likened(items, i, cur)) return true;
  if (it.t === 'np' && items[k - 1]?.low === ',' && nextThing(items, i + 1, cur)) return true;
  if (it.t === 'np' && items[k - 1]?.low === ',' && laidAway(items, i, cur)) return true;
  if (it.t === 'np' && takesBoth(items, after, cur)) return false;
  if (it.t === 'np') return predicateAt(items, after) && (hasPredicate(cur) || !cur.some(x => x.t === 'np') || cur.some(x => x.f?.dim === 'money' || x.f?.dim === 'measure' || x.f?.dim === 'number' && it.np!.count !== undefined));
  if (it.f?.dim === 'money' && /\b(freight|shipping|post|postage|carriage|delivery)\b.* (was|is|were|'s)\b|^(freight|shipping|post|postage|carriage) /.test(it.low) && items[k - 1]?.t === 'cc' && hasPredicate(cur)) return true;
  if (it.f?.dim === 'number' && items[i + 1]?.t === 'verb' && /^(past|part)$/.test(items[i + 1]!.form ?? '') && endsAt(items, i + 2)) return true;
  if (it.f?.dim === 'number' && (items[i + 1]?.t === 'adj' || items[i + 1]?.low === 'of' && items[i + 3]?.t === 'adj') && predicateAt(items, i + 1 + (items[i + 1]?.low === 'of' ? 2 : 0)) && !cur.some(x => x.base === 'need' || x.base === 'want')) return true;
  if (it.f?.dim === 'span' && cur.some(x => x.f?.dim === 'span') && /^(on|in|into|at)$/.test(items[i + 1]?.low ?? '')) return true;
  if (countsOf(items, i)) return true;
  return false;
}

/** Who can name a price or a day: a person, a seller, a trade. */
const speaks = (np: NonNullable<Item['np']>): boolean => PERSONS.test(np.said) || isSource(np) || TRADE_ENDING.test(np.said) && !nounClasses(np.said.split(' ').at(-1)!).has('part');
/** "took the hood and the grille off": a verb that moves things, its object and a further one, and the particle that is said of both. */
function takesBoth(items: readonly Item[], after: number, cur: readonly Item[]): boolean {
  const v = cur.findLastIndex(x => x.t === 'verb' || x.t === 'have'), verb = cur[v];
  if (items[after]?.t !== 'prt' || !verb || !(verb.t === 'have' || ['off', 'on', 'hang', 'move'].some(k => isClass(verb.base ?? '', k as 'off')))) return false;
  const between = cur.slice(v + 1);
  return between.some(x => x.np) && between.every((x, n) => x.np || x.low === ',' || x.t === 'cc' || x.t === 'prep' && between[n + 1]?.np !== undefined);
}

/** "…is off, five nuts in the blue tin", "bolts in a jar, gasket on the nail": what lies in some place, without a verb, after a clause of another thing. */
function laidAway(items: readonly Item[], i: number, cur: readonly Item[]): boolean {
  const inPlace = (x: Item | undefined, next: Item | undefined): boolean => /^(in|on|under|behind|inside|by|beside)$/.test(x?.low ?? '') && next?.np !== undefined && isPlaceNoun(next.np);
  const thing = (x: Item | undefined): boolean => x?.np !== undefined && !x.np.stands && (x.np.known === true || ['part', 'fastener'].some(c => nounClasses(x.np!.said.split(' ').at(-1)!).has(c as 'part')));
  let k = i;
  while (thing(items[k]) && /^(and|&|,)$/.test(items[k + 1]?.low ?? '') && thing(items[k + 2])) k += 2;
  const to = /^(,|all|both)$/.test(items[k + 1]?.low ?? '') ? k + (items[k + 1]!.low === ',' && /^(all|both)$/.test(items[k + 2]?.low ?? '') ? 3 : 2) : k + 1; // "twelve bolts, all in the can"
  return thing(items[k]) && inPlace(items[to], items[to + 1]) && !cur.some((x, n) => /^(need|want|order|buy|find)$/.test(x.base ?? x.low) && cur[n + 1]?.form !== 'ing' || x.base === 'get' && !cur.some(y => y.t === 'prt')) && (hasPredicate(cur) || cur.some((x, n) => x.t === 'prt' || inPlace(x, cur[n + 1])));
}

/** "i'll look at it": a verb with its own object, so that what stands before "i" is none. */
function ownObject(items: readonly Item[], k: number): boolean {
  let i = k;
  while (items[i] && (isAux(items[i]) || /^(adv|neg|verb|prt|prep)$/.test(items[i]!.t))) i++;
  return i > k && items[i]?.t === 'pron' && /^(it|them)$/.test(items[i]!.low);
}

/** "…primed, film 1.5 mils", "…back, 1.4801 inch diameter", "gap 0.90 mm, scrap": a figure with its quantity, or what it comes to, after a clause of another kind. */
function measuresHere(items: readonly Item[], i: number, cur: readonly Item[]): boolean {
  const it = items[i]!, next = items[i + 1], value = (x: Item | undefined): boolean => x?.f?.dim === 'measure' || x?.f?.dim === 'number';
  if (it.t === 'adj' && CONDITION.has(it.low) && endsAt(items, i + 1)) return cur.some(x => x.f?.dim === 'measure') && cur.some(x => x.np);
  if (!hasPredicate(cur) || cur.some(x => /^(need|want|get|order|buy|for|pay|make|cut|set|find)$/.test(x.base ?? x.low) || x.f?.dim === 'money' || value(x))) return false;
  const quantity = (x: Item | undefined): boolean => x?.np !== undefined && (NAMED.test(x.np.said) || NAMED.test(x.np.said.split(' ').at(-1)!) || /\b(dia|diam)$/.test(x.np.said));
  return value(it) && it.f!.dim === 'measure' && quantity(next) || quantity(it) && (value(next) || /^(prep|prt|to)$/.test(next?.t ?? '') && items[i + 2]?.np !== undefined && value(items[i + 3]));
}

const hasSubjectOrVerb = (cur: readonly Item[]): boolean => cur.some(i => i.t === 'verb' || isAux(i) || i.t === 'np' || i.t === 'prt' || i.t === 'adj');
