import { ARTEFACTS } from '../words/artefacts.ts';
import { INSTRUMENT } from '../words/instruments.ts';
import { nounClasses, singular } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import type { Item } from './items.ts';
import { afterNouns, finite, isAux, startsNoun } from './predicate.ts';

/** What people turn round, told straight: "off came the head", "it's off, the head", "back where it belongs". */
export function straightened(items: readonly Item[]): readonly Item[] {
  return [instrumentSays, afterDoing, gotRoundTo, partWay, inItsPlace, turnedRound, withItOff, namedAfter].reduce((told, straighten) => straighten(told), items);
}

/** "the dial says six thou": what a figure is read off says no hearsay. */
function instrumentSays(items: readonly Item[]): readonly Item[] {
  return items.map((x, k) => (x.t === 'verb' && x.base === 'say' && items[k - 1]?.np && reads(items[k - 1]!.np!.said) && items[k + 1]?.f ? { ...x, base: 'read', low: 'reads' } : x));
}

const reads = (said: string): boolean => INSTRUMENT.test(said) || INSTRUMENT.test(said.split(' ').at(-1)!);

/** "I'm after getting the wheel off": as the Irish say that they have. */
function afterDoing(items: readonly Item[]): readonly Item[] {
  const k = items.findIndex((x, n) => x.low === 'after' && items[n - 1]?.t === 'be' && items[n + 1]?.t === 'verb' && items[n + 1]!.form === 'ing');
  return k < 1 ? items : [...items.slice(0, k - 1), { ...items[k - 1]!, t: 'have', low: "'ve", to: items[k]!.to }, { ...items[k + 1]!, form: 'past' }, ...items.slice(k + 2)];
}

/** "finally got round to repacking the bearings", "set about scraping it": at last it was done. */
function gotRoundTo(items: readonly Item[]): readonly Item[] {
  const k = items.findIndex((x, n) => x.t === 'verb' && x.form === 'past' && (x.base === 'get' && /^(round|around|about)$/.test(items[n + 1]?.low ?? '') && items[n + 2]?.t === 'to' && items[n + 3]?.t === 'verb' && items[n + 3]!.form === 'ing' || x.base === 'finish' && /^(off|up)$/.test(items[n + 1]?.low ?? '') && items[n + 2]?.t === 'verb' && items[n + 2]!.form === 'ing'));
  if (k < 0 || items.slice(0, k).some(i => i.t === 'neg' || i.low === 'never' || /n't$/.test(i.low))) return items;
  const v = items[k]!.base === 'get' ? k + 3 : k + 2;
  return [...items.slice(0, k), { ...items[v]!, form: 'past', from: items[k]!.from }, ...items.slice(v + 1)];
}

/** "I'm halfway through rewiring it", "in the middle of painting": at it, and not done. */
function partWay(items: readonly Item[]): readonly Item[] {
  const k = items.findIndex((x, n) => n > 0 && /^(through|into|of|at|with)$/.test(x.low) && items[n + 1]?.t === 'verb' && items[n + 1]!.form === 'ing' && /\b(half ?way|part ?way|part|midway|half|middle|busy|on)$/.test(items[n - 1]!.low));
  const be = k < 0 ? -1 : items.slice(0, k).findLastIndex(i => i.t === 'be');
  return be < 0 || k - be > 4 ? items : [...items.slice(0, be + 1), ...items.slice(k + 1)];
}

const PLACED = /^(off|out|on|in|up|down|apart)$/;
const opens = (items: readonly Item[], k: number): boolean => k === 0 || /^(mark|cc|adv|intj)$/.test(items[k - 1]!.t);
/** After a list of things with no more than their owners: "the head and the nuts on the manifold", not "the pin with a bang". */
const listEnd = (items: readonly Item[], k: number): number => { const stop = items.findIndex((i, n) => n > k && (i.t === 'prep' || i.t === 'prt') && !/^(of|on|from)$/.test(i.low)); return Math.min(afterNouns(items, k, false), stop < 0 ? items.length : stop); };
/** Takes the place in the sentence of `at`, so that spans stay what was said. */
const standing = (it: Item, from: Item, to: Item = from): Item => ({ ...it, from: from.from, to: to.to });

/** "off came the head", "back on went the cover", "out she came": the particle stands before its verb. */
function turnedRound(items: readonly Item[]): readonly Item[] {
  for (let k = 0; k + 2 < items.length; k++) {
    if (!opens(items, k)) continue;
    const back = items[k]!.low === 'back' && PLACED.test(items[k + 1]?.low ?? '') ? 1 : 0, prt = items[k + back]!, verb = k + back + 1;
    if (!PLACED.test(prt.low) || !/^(prt|prep)$/.test(prt.t)) continue;
    const said = items[verb], after = items[verb + 1];
    const went = (it: Item | undefined): boolean => it?.t === 'verb' && /^(came|went|goes|comes)$/.test(it.low);
    const moved = went(said) && (after?.np !== undefined || after?.t === 'pron') ? { verb: said!, to: after.np ? listEnd(items, verb + 1) : verb + 2, who: verb + 1 }
      : said?.t === 'pron' && /^(it|she|they|he)$/.test(said.low) && went(after) ? { verb: after!, to: verb + 2, who: verb } : undefined;
    if (!moved) continue;
    const subject = items.slice(moved.who, moved.who === verb ? verb + 1 : moved.to), end = items[moved.to - 1]!;
    const told = [...subject.map((it, n) => (n === 0 ? { ...it, from: items[k]!.from } : it)), standing(moved.verb, end), ...items.slice(k, k + back).map(it => standing(it, end)), standing({ ...prt, t: 'prt' }, end)];
    return [...items.slice(0, k), ...told, ...turnedRound(items.slice(moved.to))];
  }
  return items;
}

/** "with the tank off I could get at the steering box": how a thing sits, said on the way to what it let one do; not what it would let one do. */
function withItOff(items: readonly Item[]): readonly Item[] {
  const k = items.findIndex(i => !/^(cc|adv|mark|intj)$/.test(i.t)), np = items[k + 1]?.np;
  if (items[k]?.low !== 'with' || !np || np.stands || PERSONS.test(np.said)) return items;
  const n = listEnd(items, k + 1), rest = items.slice(n + 1);
  if (!/^(off|out|apart|away)$/.test(items[n]?.low ?? '') || startsNoun(items[n + 1]) && !rest.some(i => isAux(i) || finite(i)) || items[n + 1]?.low === 'of') return items;
  if (rest.length < 2 || rest.some(i => /^(you|will|'ll|would|'d|should|might|may|must)$/.test(i.low)) || !rest.some(i => i.t === 'modal' && /^(i|we)$/.test(rest[rest.indexOf(i) - 1]?.low ?? '') || i.t === 'be' || i.t === 'have' || i.t === 'verb' && /^(past|part)$/.test(i.form ?? ''))) return items;
  const end = items[n]!;
  return [...items.slice(0, k), standing(items[k + 1]!, items[k]!, items[k + 1]!), ...items.slice(k + 2, n), { ...end, t: 'prt' }, ...(items[n + 1]!.t === 'mark' ? [] : [{ t: 'mark' as const, low: ',', from: end.to, to: end.to }]), ...rest];
}

/** "it's out, the old thrust race", "got it off at last, that flywheel": the thing that "it" was is named at the end. */
function namedAfter(items: readonly Item[]): readonly Item[] {
  const end = items.findLastIndex(i => i.t !== 'mark'), at = items[end]?.np && items[end - 1]?.low === ',' ? end : -1, np = items[at]?.np;
  if (at < 3 || !np || np.stands || np.count !== undefined || !/^(the|that|those|them|my|this) /.test(items[at]!.low) || !np.known && !isMade(np.said)) return items;
  const k = items.slice(0, at - 1).findLastIndex(i => i.t === 'pron' && /^(it|she|they|them|he)$/.test(i.low));
  const before = items.slice(0, k), between = items.slice(k + 1, at - 1);
  if (k < 0 || between.some(i => i.np && !i.np.stands || i.t === 'mark' || i.t === 'cc' || i.t === 'sub') || before.slice(before.findLastIndex(i => i.t === 'mark' || i.t === 'cc') + 1).some(i => i.np)) return items;
  const subject = isAux(items[k + 1]) || finite(items[k + 1]) || items[k + 1]?.t === 'adv', object = finite(items[k - 1]) || items[k - 1]?.t === 'prt' || items[k - 1]?.base === 'get';
  if (!subject && !(object && items[k + 1]?.t === 'prt')) return items;
  return [...before, standing(items[at]!, items[k]!), ...between, ...items.slice(end + 1)];
}

const isMade = (said: string): boolean => { const head = said.split(' ').at(-1)!; return nounClasses(said).has('part') || nounClasses(head).has('part') || ARTEFACTS.has(head) || ARTEFACTS.has(singular(head)); };

/** "the magneto's back where it belongs", "home where it lives": back in its place, not returned from elsewhere. Tools have places of their own. */
function inItsPlace(items: readonly Item[]): readonly Item[] {
  for (let k = 1; k + 2 < items.length; k++) {
    if (items[k]!.low !== 'where' || !/^(it|they|she|he)$/.test(items[k + 1]!.low) || !/^(back|home|in|on|up)$/.test(items[k - 1]!.low)) continue;
    const verb = items.findIndex((x, n) => n > k + 1 && n < k + 4 && (x.t === 'verb' || x.t === 'be'));
    if (verb < 0 || !/^(belong|live|go|sit|come|be|was|should|start)/.test(items[verb]!.base ?? items[verb]!.low)) continue;
    const to = items[verb + 1]?.low === 'from' ? verb + 2 : verb + 1, thing = items.slice(0, k).findLast(x => x.np)?.np;
    if (items[to] && !/^(mark|cc|adv|intj)$/.test(items[to]!.t) && !items[to]!.f) continue;
    if (thing && nounClasses(thing.said).has('tool') && !nounClasses(thing.said).has('part')) continue;
    return [...items.slice(0, k), standing({ ...items[k]!, t: 'prt', low: 'on' }, items[k]!, items[to - 1]!), ...items.slice(to)];
  }
  return items;
}
