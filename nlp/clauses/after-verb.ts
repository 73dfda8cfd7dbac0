import type { Sheet } from '../types.ts';
import { NAMED } from '../words/quantities.ts';
import { isClass } from '../words/verbs.ts';
import { causes, DONE_TO, PARTICLE } from './caused.ts';
import type { Clause } from './clause.ts';
import type { Item } from './items.ts';
import type { Memory } from './memory.ts';
import { pronoun } from './pronoun.ts';
import { isSource } from './name-kinds.ts';
import { thingAt, thingsAt } from './things.ts';

/** Reads particles, object and what is left after the verb of `c` into it. */
export function afterVerb(sheet: Sheet, c: Clause, memory: Memory): void {
  if (c.pred !== 'verb' && c.pred !== 'have') return;
  let i = c.vi + 1;
  const { items } = c;
  const particles = (): void => {
    for (; items[i]; i++) {
      const it = items[i]!;
      if (it.low === 'home' && it.t === 'adv') { c.prt.push('home'); continue; }
      if (it.t === 'adj' && /^(straight|right|back)$/.test(it.low) && (items[i + 1]?.t === 'prt' && PARTICLE.test(items[i + 1]!.low) || items[i + 1]?.low === 'back' && items[i + 2]?.t === 'prt')) { if (it.low === 'back') c.prt.push('back'); continue; } // "came straight back out"
      if (it.t === 'adv' || it.t === 'neg') { if (it.t === 'neg') c.neg = true; continue; }
      if ((it.t === 'prt' || it.t === 'adj' && it.low === 'loose') && PARTICLE.test(it.low) && !prepHere(items, i, c)) { c.prt.push(it.low); continue; }
      break;
    }
  };
  particles();
  const it = items[i];
  if (it?.t === 'pron' && /^(it|them|that|this|those|these|one|both|all|everything|her|him)$/.test(it.low)) {
    c.obj = c.subj.length && !c.subj[0]!.carried && (!c.who || /^(i|we)$/.test(c.who)) && !(c.subj[0]!.np && isSource(c.subj[0]!.np)) ? c.subj : pronoun(it.low === 'her' ? 'it' : it.low, memory) ?? [];
    i++;
    if (items[i]?.np?.stands && /^(all|both)$/.test(items[i]!.np!.said)) i++;
    if (it.low === 'all' && items[i]?.low === 'of') i += 2;
  } else if (it?.t === 'np') {
    const list = thingsAt(sheet, items, i, memory, !PLACES.test(c.verb?.base ?? '') || NAMED.test(it.np!.said));
    if (list.things.length) { c.obj = list.things; i = list.next; } else i++;
  } else if (it?.f?.dim === 'number' && items[i + 1]?.low === 'of' && (items[i + 2]?.np || items[i + 2]?.t === 'pron')) {
    const of = items[i + 2]!;
    c.obj = of.np ? thingAt(sheet, items, i + 2, memory) ? [thingAt(sheet, items, i + 2, memory)!.thing] : [] : pronoun(of.low, memory) ?? [];
    i += 3;
  }
  else if (it?.f?.dim === 'measure' && /^(off|from)$/.test(items[i + 1]?.low ?? '') && items[i + 2]?.np && isClass(c.verb?.base ?? '', 'work') && !c.passive) { const of = thingAt(sheet, items, i + 2, memory); if (of) { c.obj = [of.thing]; i = of.next; } } // "skimmed ten thou off the head"
  else if (it?.f?.dim === 'number' && items[i + 1]?.t === 'prt' && PARTICLE.test(items[i + 1]!.low) && !items[i + 2]?.np && /^(i|we|he|they)$/.test(c.who ?? 'i') && DONE_TO.some(k => isClass(c.verb?.base ?? '', k)) && memory.topic()?.plural) { c.obj = [{ ...memory.topic()!, carried: true }]; i++; } // "they're here, drove thirty in"
  particles();
  c.rest = items.slice(i);
  causes(c, i);
  // "left the cover soaking": what is being done to it
  if (c.pred === 'verb' && /^(leave|keep|set)$/.test(c.verb!.base ?? '') && c.verb!.form !== 'base' && c.obj.length && items[i]?.t === 'verb' && items[i]!.form === 'ing' && isClass(items[i]!.base!, 'work') && !items[i + 1]?.np) { c.verb = items[i]!; c.vi = i; c.ing = true; c.rest = items.slice(i + 1); }
  if (c.pred === 'verb' && c.subj.length && !c.who && !c.obj.length && /^(past|part)$/.test(c.verb!.form ?? '') && !c.passive && DONE_TO.some(k => isClass(c.verb!.base!, k)) && (!(isClass(c.verb!.base!, 'fail') || isClass(c.verb!.base!, 'state')) || /^(pull|draw|drop|lift|strip)$/.test(c.verb!.base!) && !c.verb!.low.endsWith('rew') && !c.prt.length && /^(undefined|and|,|with|for|from|ready)$/.test(String(c.rest.find(x => x.low !== '.')?.low)) && c.subj.some(s => s.from >= c.from && !s.machine) || c.verb!.form === 'past' && /^(to|at)$/.test(c.rest[0]?.low ?? '') && c.rest[1]?.f && /^(pull|draw|run|set|bring|tighten|wind|nip)$/.test(c.verb!.base!)) && !/^(come|go|arrive|turn|show|sit|land|take|get|have|run|break|fall)$/.test(c.verb!.base!)) c.passive = true;
  if (c.pred === 'verb' && c.verb!.base === 'turn' && c.verb!.form === 'past' && c.prt.includes('up') && /^(from|out)$/.test(c.rest[0]?.low ?? '') && c.subj.length && !c.who && !c.obj.length) c.passive = true; // "pins turned up from bar"
}

/** Verbs that put one thing on another, which does not own it: "tried the sprocket on the shaft". */
const PLACES = /^(pop|shove|chuck|stash|store|stow|tuck|hide|keep|toss|throw|bung|try|put|run|set|slide|press|fit|mount|slip|hang|bolt|drop|tap|drive|screw|push|stick|place|lay|soak|dip|dunk|steep|boil|quench|pickle|bathe|simmer|stew|stand|perch|stick|prop|balance|offer|install|shrink|thread|lower|seat)$/;

/** "off the tractor", "in the tin": a particle that takes a noun is a preposition, unless the verb has no other object ("took off the hood"). */
function prepHere(items: readonly Item[], i: number, c: Clause): boolean {
  const next = items[i + 1];
  const noun = next?.t === 'np' || next?.f?.dim === 'number' && items[i + 2]?.low === 'of' || next?.t === 'pron' && /^(it|them|that|there|one)$/.test(next.low);
  if (!noun) return false;
  if (items[i]!.low === 'in' || items[i]!.low === 'on' || items[i]!.low === 'through' || items[i]!.low === 'over') {
    if (i !== c.vi + 1) return true;
    return c.passive || c.subj.length > 0 && !/^(i|we|you|he|person)$/.test(c.who ?? '') || c.subj.some(s => s.from >= c.from) || /^(place|position)$/.test(next?.np?.said ?? '') || /^(be|sit|hang|lie|go|rest|get|work|stand|lay|run|spend)$/.test(c.verb?.base ?? '');
  }
  if (i !== c.vi + 1 || c.passive) return items[i]!.low !== 'back';
  return c.subj.length > 0 && !/^(i|we)$/.test(c.who ?? '');
}
