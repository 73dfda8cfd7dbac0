import { nounClasses } from '../words/nouns.ts';
import { isClass } from '../words/verbs.ts';
import { PERSONS } from '../words/persons.ts';
import { NAMED } from '../words/quantities.ts';
import type { Item } from './items.ts';
import { isPlaceNoun } from './name-kinds.ts';
import { afterNouns, countsOf, finite, hasPredicate, isAux, isSubjectPronoun, last, predicateAt } from './predicate.ts';

/** Run-on speech: a new clause begins here though nothing marks it. */
export function opensHere(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  if (offAndOff(items, k, cur)) return true;
  if (!hasPredicate(cur)) return fragmentEnds(items, k, cur);
  const it = items[k]!, prev = last(cur);
  if (it.low === 'not' && prev && (prev.t === 'verb' && /^(past|part)$/.test(prev.form ?? '') || prev.t === 'prt' && cur.some(x => x.t === 'verb')) && !cur.some(isAux) && (items[k + 1]?.t === 'verb' && /^(past|part)$/.test(items[k + 1]!.form ?? '') || items[k + 1]?.low === 'tight')) return true; // "snugged down not torqued yet"
  if (prev?.t === 'be' && cur.at(-1)!.t === 'adv' && /^(home|here|there|away|upstairs|outside|inside|indoors|outdoors|done)$/.test(cur.at(-1)!.low) && (isSubjectPronoun(items[k]) && (isAux(items[k + 1]) || finite(items[k + 1])) || items[k]!.t === 'verb' && items[k]!.form === 'past' && items[k + 1]?.np)) return true;
  if (!prev || prev.t === 'prep' || prev.t === 'wh' || prev.t === 'to' || prev.t === 'cc' || prev.t === 'modal' || prev.t === 'be' || prev.t === 'do' || prev.t === 'neg' || prev.t === 'have') return false;
  if (prev.t === 'mark') return false;
  if (it.t === 'pron' && cur.slice(-3).some(x => x.low === 'as' && x.t === 'sub')) return false;
  if (cur.at(-1)!.f?.dim === 'measure' && (NAMED.test(it.low) || NAMED.test(`${it.low} ${items[k + 1]?.low ?? ''}`))) return false; // "has three thou run out", "nine thou slop": what the figure is of
  const verb = cur.findLast(i => i.t === 'verb');
  if (it.pause && (it.t === 'np' && predicateAt(items, afterNouns(items, k, false)) || isSubjectPronoun(it) && (isAux(items[k + 1]) || finite(items[k + 1])))) return true;
  const next = items[k + 1];
  if (it.low === 'there' && isAux(next) && (prev.t === 'np' || prev.t === 'prt' || prev.f)) return true;
  if (countsOf(items, k) && !(prev === verb && /^(have|get|find|leave|see|need|want|count|make|measure|read|show)$/.test(prev.base ?? ''))) return true;
  if (/^(those|these)$/.test(it.low) && next?.f?.dim === 'number' && (isAux(items[k + 2]) || finite(items[k + 2]))) return true;
  if (it.f?.dim === 'number' && /^(under|behind|underneath|beneath)$/.test(next?.low ?? '') && items[k + 2]?.np) return true;
  if (it.t === 'modal' && /^(should|ought|will|could|might)$/.test(it.low) && (it.pause || verb !== undefined) && prev.t !== 'pron' && prev.t !== 'np' && !cur.some(x => x.t === 'modal')) return true; // "…that's it ordered should be here friday"
  if (mustDo(items, k) && (prev.t !== 'np' && !(prev.t === 'pron' && isSubjectPronoun(prev) && cur.at(-1) === prev && !/^(verb|prep|prt)$/.test(cur.at(-2)?.t ?? '')) || /^(prep|prt|dim)$/.test(cur[cur.lastIndexOf(prev) - 1]?.t ?? '') && verb !== undefined)) return true; // "it measures twelve over the vanes must still pull the ring"
  if (prev === verb && /^(test|trial|dry|mock)$/.test(prev.low)) return false;
  if (it.t === 'verb' && it.form === 'past' && prev.t === 'pron' && cur[cur.lastIndexOf(prev) - 1]?.t === 'verb' && /^(it|them|those|these|that)$/.test(prev.low) && !/^(call|find|get|have|see|leave|keep|want|need|make|watch)$/.test(verb?.base ?? '')) return true;
  if (it.t === 'verb' && it.form === 'past' && prev === verb && verb.form === 'past' && (next?.t === 'np' || next?.t === 'pron' || (next?.t === 'cc' || next?.t === 'verb' && next.form === 'past') && isClass(it.base ?? '', 'work') && isClass(verb.base ?? '', 'work') && !cur.some(x => x.np)) && !/^(get|have|keep|start|begin|help|go|come)$/.test(verb.base ?? '')) return true;
  if (it.t === 'verb' && it.form === 'past' && prev === verb && verb.form === 'base' && !/^(help|let|make|have|get|be)$/.test(verb.base ?? '') && (next?.t === 'np' || next?.t === 'pron')) return true;
  if (/^(it|them)$/.test(it.low) && prev.t === 'prt' && /^(in|on|under)$/.test(prev.low) && !cur.some(i => isAux(i) || i.t === 'verb')) return false; // "the gasket in it is torn"
  if (/^(they|it|i|we|he|she|you)$/.test(it.low) && prev.np && /^(day|way|time|moment|minute|morning|night|first time|last time|same day|year)$/.test(prev.np.said) && !it.pause) return false; // "like the day they were cut"
  if (isSubjectPronoun(it) && (isAux(next) || finite(next) || next?.t === 'adv' && (isAux(items[k + 2]) || finite(items[k + 2])))) {
    if (it.low === 'it' || /^(that|this|those|these|them|one|both|all)$/.test(it.low)) return (prev !== verb || finite(next) && /^(swear|think|reckon|hope|know|guess|claim|suppose|figure|bet|believe)$/.test(verb?.base ?? '')) && (isAux(next) || finite(next)) && prev.t !== 'prt' || prev.t === 'prt' && isAux(next);
    return true;
  }
  if (it.t === 'np') {
    if (prev === verb && cur.some(x => x.np) && !cur.some(x => x.t === 'pron') && isAux(next) && /^(past|part)$/.test(verb!.form ?? '') && !/^(find|get|have|see|need|want|think|say|know|leave)$/.test(verb!.base ?? '')) return true;
    if (prev === verb && verb.form !== 'ing' && cur[cur.lastIndexOf(prev) - 1]?.t === 'be' && it.np?.stands && predicateAt(items, afterNouns(items, k, false))) return true; // "that one has to be replaced the right one's just worn"
    const done = items[afterNouns(items, k, false)];
    if (prev === verb && verb.form === 'past' && !cur.some(x => x.t === 'pron' || isAux(x) || PERSONS.test(x.np?.said ?? '')) && cur.find(x => x.t !== 'adv' && x.t !== 'cc' && x.t !== 'mark')?.np && isPart(cur.find(x => x.np)!) && isPart(it) && !/^(the|a|an|my|its|his|that|this|some)\b/.test(it.low) && done?.t === 'verb' && /^(past|part)$/.test(done.form ?? '') && (['work', 'on', 'off', 'tight'] as const).some(cls => isClass(done.base ?? '', cls) && isClass(verb.base ?? '', 'work') || isClass(done.base ?? '', cls) && isClass(verb.base ?? '', cls))) return true; // "oil pump primed pickup tightened"
    if (prev.t === 'prt' && /^(in|on|under)$/.test(prev.low) && isPlaceNoun(it.np!) && isClass(verb?.base ?? '', 'stow') && /^(the|a|an|my)\b/.test(it.low)) return false; // "put them in the crib leaned up behind the door"
    const tookOff = prev.t === 'prt' && verb !== undefined && cur[cur.lastIndexOf(prev) - 1]?.t === 'np' && isAux(next) && /^(off|out|on|up|down)$/.test(prev.low) && /^(take|get|pull|lift|knock|drive|press|slide|drop|put|bolt|push|slip|tap|pop|screw)$/.test(verb.base ?? '');
    if (tookOff) return true;
    if (prev.t === 'prt' && /^(in|on|over|through)$/.test(prev.low) && cur.at(-1) === prev && cur.at(-2)?.t === 'prt' && /^(off|out|up|down)$/.test(cur.at(-2)!.low)) return false; // "broke off in the housing"
    if (prev === verb && cur.at(-1)!.t === 'adv' && cur.some(x => x.np || isSubjectPronoun(x)) && /^(overnight|again|now|today|yesterday|fine|well|nicely|lovely|away)$/.test(cur.at(-1)!.low) && predicateAt(items, afterNouns(items, k, false))) return true;
    if (prev === verb || prev.t === 'prt' && !stateEnds(cur)) return false;
    if (prev.t === 'prt' && /^(the|a|an|my|his|her|our)$/.test(it.low.split(' ')[0]!) && !isAux(next) && cur[cur.lastIndexOf(prev) - 1]?.t === 'be') return false;
    return predicateAt(items, prev.t === 'prt' ? k + 1 : afterNouns(items, k, false)) && !(causative(verb, items, k) && /^(help|let|make|have|see|hear|watch|want|need|think|say|know|guess|reckon)$/.test(verb?.base ?? ''));
  }
  if (it.t === 'verb' && it.base === 'get' && next?.t === 'to' && prev === verb && /^(past|part)$/.test(prev.form ?? '') && cur.some(x => x.t === 'be' || x.np)) return true;
  if (it.t === 'verb' && it.form !== 'ing' && prev !== verb) {
    if (it.base === 'get' && next?.t === 'to' || it.base === 'need' || it.base === 'go' && next?.t === 'to') return true;
    if (causative(verb, items, k) || prev.t === 'pron' && isSubjectPronoun(prev) && !/^(prep|prt|verb)$/.test(cur[cur.indexOf(prev) - 1]?.t ?? '')) return false;
    if (!verb && prev.t === 'np') return false;
    if (it.form === 'base' && /^(look|check|see)$/.test(it.base ?? '') && /^(at|to|if)$/.test(next?.low ?? '') && prev.t === 'np') return true;
    return next?.t === 'np' || next?.t === 'pron' || next?.t === 'prt' || next?.t === 'cc' || prev.t === 'adv' || prev.t === 'prt';
  }
  if (it.t === 'verb' && it.form === 'ing' && it.base === 'go' && next?.t === 'to' && (prev !== verb || /^(past|part)$/.test(prev.form ?? '')) && prev.t !== 'pron') return true;
  return it.t === 'adj' && it.low === 'good' && next?.t === 'to' && prev.t !== 'det';
}

/** "must still pull the ring", "have to polish that one": what he has to do, with its object and without himself. */
function mustDo(items: readonly Item[], k: number): boolean {
  const to = items[k]!.low === 'must' ? k + 1 : items[k]!.low === 'have' && items[k + 1]?.t === 'to' ? k + 2 : 0;
  const at = items[to]?.t === 'adv' ? to + 1 : to, verb = items[at];
  return to > 0 && verb?.t === 'verb' && verb.form === 'base' && (items[at + 1]?.np !== undefined || items[at + 1]?.t === 'pron' || items[at + 1]?.t === 'prt');
}

const isPart = (i: Item): boolean => i.np !== undefined && !i.np.stands && (i.np.known === true || nounClasses(i.np.said).has('part') || nounClasses(i.np.said.split(' ').at(-1)!).has('part'));

/** "exhaust off manifold off studs came out": one thing and how it sits, right after another. */
function offAndOff(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  const prt = cur.at(-1), next = items[k + 1];
  if (!items[k]!.np || prt?.t !== 'prt' || !/^(off|out|apart|on|in|back)$/.test(prt.low) || !cur.at(-2)?.np || PERSONS.test(cur.at(-2)!.np!.said) || /^(the|a|an|my|its|his|that|this)\b/.test(items[k]!.low) || cur.some(x => x.t === 'verb' || isAux(x))) return false;
  return next?.t === 'prt' && /^(off|out|apart|on|in|back)$/.test(next.low) && !(items[k + 2]?.np && !items[k + 3]) || /^(off|apart)$/.test(prt.low) && next?.np?.stands === true && finite(items[k + 2]);
}

/** "frost for tonight i drained the block": after a verbless headline that ends in a day or a figure, someone does something. */
function fragmentEnds(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  const it = items[k]!, dim = last(cur)?.f?.dim, next = items[k + 1];
  if (it.pause && topicOnly(cur) && (it.t === 'np' && predicateAt(items, afterNouns(items, k, false)) || it.t === 'verb' && it.form === 'past' && next?.np && !/^(come|go|have|get|take)$/.test(it.base ?? ''))) return true;
  if (dim && cur.some(x => x.np) && /^(it|they)$/.test(it.low) && isAux(next)) return true; // "on the chain this morning it's cleaned"
  if (!dim || !cur.some(x => x.np) || !/^(i|we|he|she|they)$/.test(items[k]!.low)) return false;
  let i = k + 1;
  while (items[i] && (isAux(items[i]) || items[i]!.t === 'adv' || items[i]!.t === 'neg')) i++;
  return finite(items[i]) && items.slice(i + 1, i + 4).some(x => x.np);
}

/** "…with a cold chisel um hour and a half on that": after a breath a new clause or a headline may begin where the one before can end. */
export function opensAfterBreath(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  const it = items[k]!, prev = last(cur);
  if (!prev || !hasPredicate(cur) || !(prev.np || prev.f || /^(pron|prt|adj|adv)$/.test(prev.t) || prev.t === 'verb' && cur.some(x => x.np) && prev.form !== 'ing')) return false;
  if (isSubjectPronoun(it)) return predicateAt(items, k + 1);
  if (it.t === 'verb') return it.form === 'past' || it.form === 'base' && (items[k + 1]?.np !== undefined || items[k + 1]?.t === 'pron');
  if (!it.np && it.f?.dim !== 'span' && it.f?.dim !== 'number') return false;
  if (predicateAt(items, afterNouns(items, k))) return true;
  return prev.t !== 'prt' && prev.t !== 'verb' && !(prev.t === 'pron' && cur.at(-2)?.t === 'verb' && it.np?.stands);
}

/** A thing named and nothing said of it yet. */
const topicOnly = (cur: readonly Item[]): boolean => cur.some(x => x.np && !PERSONS.test(x.np.said)) && cur.every(x => x.np || /^(adv|intj|mark|cc)$/.test(x.t) || x.t === 'prep' || x.t === 'prt') && !/^(prep|prt|cc)$/.test(cur.at(-1)!.t);

/** A particle that closed its clause: "…is off", "took it out". */
const stateEnds = (cur: readonly Item[]): boolean => { const k = cur.length - 1; return k > 0 && (cur[k - 1]!.t === 'be' || cur[k - 1]!.t === 'pron' || cur[k - 1]!.t === 'adv' || cur[k - 1]!.t === 'prt'); };

/** "had the head skimmed", "found the seal split": the second verb is said of the first one's object. */
function causative(verb: Item | undefined, items: readonly Item[], k: number): boolean {
  if (!verb || !/^(have|find|get|see|want|need|leave|keep|make|let|help|hear|watch)$/.test(verb.base ?? '')) return false;
  const it = items[k]!;
  if (/^(help|let|make|have)$/.test(verb.base ?? '')) return true;
  return it.t !== 'verb' || items[k + 1]?.t !== 'np' && items[k + 1]?.t !== 'pron';
}
