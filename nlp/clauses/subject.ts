import type { Sheet } from '../types.ts';
import { nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import type { Clause } from './clause.ts';
import type { Item } from './items.ts';
import type { Memory } from './memory.ts';
import { withOwner } from './owner.ts';
import { finite, isAux, predicateAt } from './predicate.ts';
import { isStuff, partLike } from './name-kinds.ts';
import { thingsAt } from './things.ts';
import { pronoun } from './pronoun.ts';
import { shareOf } from './share.ts';
import { ownFace, owning, piece } from './piece-of.ts';

/** Reads what stands before the predicate; gives the item index where the predicate begins. */
export function subject(sheet: Sheet, c: Clause, memory: Memory): number {
  let i = 0, lead: Item | undefined;
  const share = shareOf(sheet, c, c.items.findIndex(x => !/^(cc|mark|intj)$/.test(x.t)));
  if (share && c.items[share.of]) {
    const named = c.items[share.of]!.np ? thingsAt(sheet, c.items, share.of, memory) : undefined;
    const things = named?.things.length ? named.things : pronoun(c.items[share.of]!.low, memory)?.slice(-1) ?? [];
    if (things.length) { c.subj = things; if (share.none) c.neg = true; else c.counted = share.said; return named ? named.next : share.of + 1; }
  }
  if (fronted(c.items)) { lead = c.items[1]; i = 2; }
  while (c.items[i] && ['cc', 'adv', 'mark', 'sub', 'prep', 'wh'].includes(c.items[i]!.t) || c.items[i]?.f && (c.items[i]!.f!.dim === 'when' || c.items[i]!.f!.dim === 'span' && c.items[i + 1]?.t === 'verb' && c.items[i + 1]!.form === 'ing')) {
    if (c.items[i]!.t === 'prep') { if (c.items[i + 1]?.t === 'np') { i++; if (c.items[i - 1]!.low !== 'with') lead = c.items[i]; } else if (c.items[i + 1]?.f) i++; else if (c.items[i]!.low !== 'at') break; if (c.items[i + 1]?.t === 'prt' && (c.items[i + 2]?.t === 'pron' || c.items[i + 2]?.np)) i++; }
    i++;
  }
  if (c.items[i]?.t === 'neg' && c.items[i]!.low === 'not' && /^(a|an|one)\b/.test(c.items[i + 1]?.low ?? '') && c.items[i + 1]?.np && predicateAt(c.items, i + 2)) { c.neg = true; i++; } // "not a bolt gets tightened"
  const within = owning(c.items, i);
  if (within) i = within;
  if (c.items[i]?.t === 'prt' && /^(on|in|over|up|down)$/.test(c.items[i]!.low) && c.items[i + 1]?.np && !c.items[i + 1]!.np!.stands && c.items[i + 2]?.np && (isAux(c.items[i + 3]) || finite(c.items[i + 3]))) i += 2; // "on the left side the bush is worn"
  if (/^(those|these)$/.test(c.items[i]?.low ?? '') && c.items[i + 1]?.np && !c.items[i + 1]!.np!.stands && (isAux(c.items[i + 2]) || finite(c.items[i + 2]))) i++; // "those two cracked spokes have been…"
  const it = c.items[i];
  if (it?.t === 'pron') {
    if (/^(those|these)$/.test(it.low) && c.items[i + 1]?.f?.dim === 'number') { c.who = 'they'; c.subj = pronoun('them', memory) ?? []; return i + 2; } // "those four have got to go"
    if (it.low === 'one' && isAux(c.items[i + 1]) && memory.several()[0]?.plural && memory.several().length === 1) { c.subj = pronoun('them', memory) ?? []; c.counted = 'one'; return i + 1; } // "one's good, one's junk"
    c.who = /^(himself|herself)$/.test(it.low) ? 'person' : it.low;
    if (/^(nobody|nothing|none)$/.test(it.low)) c.neg = true;
    const named = lead?.np && /^(it|they|them|she)$/.test(it.low) && partLike(sheet, lead.np.name) && !isStuff(lead.np.name) ? thingsAt(sheet, c.items, c.items.indexOf(lead), memory).things : pronoun(it.low, memory); // "on the chain this morning, it's cleaned"
    if (named) c.subj = named;
    let next = i + 1;
    if (/^(all|both|each)$/.test(c.items[next]?.low ?? '')) next++;
    return next;
  }
  const more = /^(more|others?)$/.test(c.items[i + 1]?.low ?? '') ? i + 1 : i;
  if ((it?.f?.dim === 'number' || it?.t === 'num') && c.items[more + 1]?.low === 'of' && c.items[more + 2]) {
    const of = c.items[more + 2]!;
    const named = of.np ? thingsAt(sheet, c.items, more + 2, memory) : undefined;
    c.subj = named?.things ?? (pronoun(of.low, memory) ?? []).slice(-1);
    c.counted = it.low;
    const end = named ? Math.max(named.next, more + 3) : more + 3;
    if (/^(i|we)$/.test(c.items[end]?.low ?? '') && (finite(c.items[end + 1]) || isAux(c.items[end + 1]))) { c.who = c.items[end]!.low; return end + 1; } // "three of them I drilled"
    return end;
  }
  if (it?.f?.dim === 'number' && (isAux(c.items[i + 1]) && c.items[i + 1]!.t !== 'do' || c.items[i + 1]?.t === 'adj' && c.items[i + 1]!.from > 0 || /^(need|want)$/.test(c.items[i + 1]?.base ?? '')) && memory.several().length) {
    c.subj = pronoun('them', memory) ?? []; // "four are chipped"
    c.counted = it.low;
    return i + 1;
  }
  if (it?.f?.dim === 'number' && Number.isInteger(it.f.value.value) && c.items[i + 1]?.t === 'verb' && /^(past|part)$/.test(c.items[i + 1]!.form ?? '') && (c.items[i + 2] === undefined || /^(mark|cc|adv)$/.test(c.items[i + 2]!.t)) && memory.topic()?.plural) { c.subj = [{ ...memory.topic()!, carried: true }]; c.counted = it.low; return i + 1; } // "reel bats: six replaced, two splinted"
  if (it?.np?.stands && /^all\b/.test(it.low) && c.items[i + 1]?.f?.dim === 'number' && isAux(c.items[i + 2]) && memory.topic()) { c.subj = pronoun('them', memory) ?? []; return i + 2; } // "all four are up"
  if (it?.t === 'np') {
    if (PERSONS.test(it.np!.said) && it.np!.said.split(' ').length < 4 && !/\b(pin|pivot|bearing|hub|shaft|clutch|spline|bush|mounting|hinge|plate|pawl|roller|seal|planet|tool|pinion|brush|cutter|blade|tine|knife|finger|wheel|spring|diff|differential|side|screen|seat) (boss|carrier)$|\b(conveyor|clutch|belt|tool|wheel) (driver|follower)$|\b(cam|gland|cam ?shaft|valve|pump|belt|chain|governor|die) (driver|follower|guy|collector)$/.test(it.np!.said) && !(it.np!.said.includes(' ') && ['part', 'consumable', 'fastener'].some(k => nounClasses(it.np!.said).has(k as 'part')))) { // gasket paper is nobody
      c.who = 'person';
      // "the fella with the forge in town says": where he is found stands before the verb
      let n = i + 1;
      while (/^(in|on|at|from|down|up|over|across|along|near|with|by|out|round|behind|of|off)$/.test(c.items[n]?.low ?? '') && c.items[n + 1]?.t === 'np') n += 2;
      return n > i + 1 && (isAux(c.items[n]) || finite(c.items[n])) ? n : i + 1;
    }
    if (/^(trial|test|dry|mock)$/.test(it.np!.said) && c.items[i + 1]?.base === 'fit') return i + 1; // "trial fitted both fenders"
    const { things, next } = thingsAt(sheet, c.items, i, memory);
    if (within) for (const t of things) if (t.np && !t.np.stands && !t.np.known) t.name = piece(sheet, t.name, c.items[within - 2]!.np!, memory);
    c.subj = ownFace(things, sheet, memory);
    if (it.np!.quant === 'neither') c.neg = true;
    let n = next;
    if (c.items[n]?.np?.stands && /^(all|both|each)$/.test(c.items[n]!.np!.said) && things.length && c.items[n + 1]) return n + 1; // "starter, dynamo and fan all off"
    // a topic first, then the real subject: "beater bearings the left one is fine"
    if (c.items[n]?.t === 'np' && things.length && c.items[n - 1]?.t === 'np') {
      memory.note(things);
      const second = thingsAt(sheet, c.items, n, memory);
      if (second.things.length) { c.subj = second.things; return second.next; }
    }
    // "the front tyre now that one is perished"
    let m = n;
    while (c.items[m]?.t === 'adv') m++;
    if (m > n && things.length && c.items[m]?.np?.stands && /^ones?$/.test(c.items[m]!.np!.said) && (isAux(c.items[m + 1]) || finite(c.items[m + 1]))) return m + 1;
    // "the carburettor from the yard cost me": a phrase that only says which one stands before the verb
    while (c.items[n] && /^(from|at|off|by|behind|under|down|up|over|across|along|near|round)$/.test(c.items[n]!.low) && c.items[n + 1]?.t === 'np' && (isAux(c.items[n + 2]) || finite(c.items[n + 2]))) n += 2;
    if (/^(from|between)$/.test(c.items[n]?.low ?? '') && c.items[n + 1]?.t === 'np' && /^(to|and)$/.test(c.items[n + 2]?.low ?? '') && c.items[n + 3]?.t === 'np' && (isAux(c.items[n + 4]) || finite(c.items[n + 4]))) {
      const [one] = things, first = c.items[n + 1]!.np!;
      if (things.length === 1 && !one!.np?.stands && c.items[n]!.low === 'between') one!.name = withOwner(sheet, one!.name, first, 'of', memory) ?? one!.name; // "the gasket between the manifold and the head is blown"
      n += 4; // "the chain from the gearbox to the beater is stiff"
    }
    if (/^(in|on|with|under|to|for|behind|over|around|inside|below|above)$/.test(c.items[n]?.low ?? '') && /^(it|them|that)$/.test(c.items[n + 1]?.low ?? '') && (isAux(c.items[n + 2]) || finite(c.items[n + 2]))) n += 2; // "the gasket in it is torn"
    // "one adapter M18 on G half inch is": its size stands before the verb
    if (/^(thread|measure|number)$/.test(c.items[n]?.f?.dim ?? '')) {
      let j = n;
      while (c.items[j] && j < n + 7 && (/^(thread|measure|number)$/.test(c.items[j]!.f?.dim ?? '') || /^(by|x|on|,)$/.test(c.items[j]!.low) || c.items[j]!.np && /^(on|by)$/.test(c.items[j - 1]!.low))) j++;
      if (c.items[j]?.t === 'be' || c.items[j]?.t === 'modal') n = j;
    }
    // "the blades for the mill I sanded": what only says which one stands before who did it
    while (/^(for|from|off|on|in|of)$/.test(c.items[n]?.low ?? '') && c.items[n + 1]?.t === 'np' && /^(i|we)$/.test(c.items[n + 2]?.low ?? '') && (finite(c.items[n + 3]) || isAux(c.items[n + 3]))) n += 2;
    // "the rears I honed": the object stands first
    if (c.items[n]?.t === 'pron' && /^(i|we)$/.test(c.items[n]!.low)) { c.who = c.items[n]!.low; n++; }
    // said twice: "the shaker cam, it's not bent"
    else if (c.items[n]?.np?.stands && c.items[n - 1]?.low === ',' && /^ones?$/.test(c.items[n]!.np!.said) && /^(i|we)$/.test(c.items[n + 1]?.low ?? '')) { c.who = c.items[n + 1]!.low; n += 2; } // "the shaft, that one I had to drive off"
    else if (c.items[n]?.t === 'pron' && /^(it|they|she|that|he)$/.test(c.items[n]!.low)) n++;
    else if (c.items[n]?.low === ',' && c.items[n + 1]?.t === 'pron' && /^(it|they|she|that|them|those)$/.test(c.items[n + 1]!.low) && (isAux(c.items[n + 2]) || finite(c.items[n + 2])) && things.length) n += 2; // "the pawls, them's good"
    return Math.max(n, i + 1);
  }
  return i;
}

/** "on the planter chain this morning it's cleaned": what is spoken of stands first, with a subject of its own after it. */
function fronted(items: readonly Item[]): boolean {
  if (!/^(on|in)$/.test(items[0]?.low ?? '') || !items[1]?.np) return false;
  const k = items.findIndex((x, n) => n > 1 && x.f?.dim !== 'when' && x.low !== ',');
  return k > 0 && /^(it|they|she)$/.test(items[k]!.low) && (isAux(items[k + 1]) || finite(items[k + 1]));
}
