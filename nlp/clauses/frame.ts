import type { Sheet } from '../types.ts';
import { NAMED } from '../words/quantities.ts';
import { nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import type { Clause, Reality, Thing } from './clause.ts';
import type { Item } from './items.ts';
import type { Memory } from './memory.ts';
import type { Cut } from './split.ts';
import { finite, isAux } from './predicate.ts';
import { isStuff, partLike, thingAt, thingsAt } from './things.ts';

/** What only people do. */
const SPEAKS = /^(say|tell|reckon|promise|ask|think|phone|ring|email|text|forecast|quote|swear|claim|guess|figure|predict)$/;
const PARTICLE = /^(off|on|out|in|up|down|back|apart|away|over|together|loose|through|home|along)$/;

/** Takes a clause apart. `before` is the clause before it in the same sentence, whose subject it may share. */
export function frame(sheet: Sheet, cut: Cut, memory: Memory, before: Clause | undefined): Clause {
  const items = cut.items.filter(i => i.t !== 'intj');
  const c: Clause = {
    from: cut.items[0]!.from, to: cut.items.at(-1)!.to, items, subj: [], pred: 'none', vi: -1, passive: false, ing: false, neg: false, reality: 'deed', prt: [], obj: [], rest: [],
    ...(cut.join ? { join: cut.join } : {}), ...(cut.sub ? { sub: cut.sub } : {}), ...(cut.asks ? { asks: true } : {}),
  };
  const start = subject(sheet, c, memory);
  predicate(c, start);
  if (/^(they|she|he)$/.test(c.who ?? '') && c.subj.every(x => x.carried) && c.verb && !c.passive && SPEAKS.test(c.verb.base ?? '')) c.subj = []; // parts don't speak
  if (!c.subj.length && !c.who && !c.counted && before) carry(c, before);
  afterVerb(sheet, c, memory);
  if (c.reality === 'deed') c.reality = supposed(sheet, c) ? 'cond' : reality(c);
  const when = c.items.find(i => i.f?.dim === 'when')?.f;
  if (c.reality === 'deed' && !c.who && c.verb && when?.dim === 'when' && (when.value.from ?? '') > sheet.ctx.at.slice(0, 10) && verbForms(c.verb.low).some(f => f.form === 'base') && c.verb.form === 'past' && !c.subj.some(s => s.from >= c.from)) { c.reality = 'plan'; c.verb = { ...c.verb, form: 'base' }; }
  if (c.reality === 'deed' && /^(i|we)$/.test(c.who ?? '') && c.verb?.form === 'base' && !c.sub && when?.dim === 'when' && ((when.value.from ?? '') > sheet.ctx.at.slice(0, 10) || (when.value.from ?? '') === sheet.ctx.at.slice(0, 10) && verbForms(c.verb.low).every(f => f.form === 'base'))) c.reality = 'plan'; // "tomorrow I grind the valve"
  if (c.reality === 'deed' && !c.neg && c.passive && when?.dim === 'when' && (when.value.from ?? '') > sheet.ctx.at.slice(0, 10) && (c.items.slice(0, c.vi).some(i => /^gets?$/.test(i.low)) || NOT_YET.some(k => isClass(c.verb!.base!, k)) && c.items.slice(0, c.vi).some(i => /^(is|are|'s|'re)$/.test(i.low)) && !['order', 'send', 'arrive', 'buy', 'say'].some(k => isClass(c.verb!.base!, k as 'order')))) c.reality = 'plan'; // "tomorrow the sieve gets cleaned"
  if (c.reality === 'deed' && !c.neg && c.passive && c.items.slice(0, c.vi).some((i, k) => /^(getting|being)$/.test(i.low) && c.items.slice(0, k).some(b => /^(is|are|'s|'re)$/.test(b.low)))) c.reality = 'plan'; // "it's getting replaced"
  if (c.reality === 'deed' && c.verb?.form === 'base' && /\b(managed to|had to|got to|went and|decided to|ended up|have to say)\b/.test(c.items.slice(0, c.vi + 1).map(i => i.low).join(' ')) && /\b(managed|had|went|decided) /.test(c.items.slice(0, c.vi + 1).map(i => i.low).join(' '))) c.verb = { ...c.verb, form: 'past' };
  return c;
}

/** "on the planter chain this morning it's cleaned": what is spoken of stands first, with a subject of its own after it. */
function fronted(items: readonly Item[]): boolean {
  if (!/^(on|in)$/.test(items[0]?.low ?? '') || !items[1]?.np) return false;
  const k = items.findIndex((x, n) => n > 1 && x.f?.dim !== 'when' && x.low !== ',');
  return k > 0 && /^(it|they|she)$/.test(items[k]!.low) && (isAux(items[k + 1]) || finite(items[k + 1]));
}

/** Reads what stands before the predicate; gives the item index where the predicate begins. */
function subject(sheet: Sheet, c: Clause, memory: Memory): number {
  let i = 0, lead: Item | undefined;
  if (fronted(c.items)) { lead = c.items[1]; i = 2; }
  while (c.items[i] && ['cc', 'adv', 'mark', 'sub', 'prep', 'wh'].includes(c.items[i]!.t) || c.items[i]?.f && (c.items[i]!.f!.dim === 'when' || c.items[i]!.f!.dim === 'span' && c.items[i + 1]?.t === 'verb' && c.items[i + 1]!.form === 'ing')) {
    if (c.items[i]!.t === 'prep') { if (c.items[i + 1]?.t === 'np') { i++; lead = c.items[i]; } else if (c.items[i + 1]?.f) i++; else if (c.items[i]!.low !== 'at') break; if (c.items[i + 1]?.t === 'prt' && (c.items[i + 2]?.t === 'pron' || c.items[i + 2]?.np)) i++; }
    i++;
  }
  if (c.items[i]?.t === 'prt' && /^(on|in|over|up|down)$/.test(c.items[i]!.low) && c.items[i + 1]?.np && !c.items[i + 1]!.np!.stands && c.items[i + 2]?.np && (isAux(c.items[i + 3]) || finite(c.items[i + 3]))) i += 2; // "on the left side the bush is worn"
  const it = c.items[i];
  if (it?.t === 'pron') {
    if (/^(those|these)$/.test(it.low) && c.items[i + 1]?.f?.dim === 'number') { c.who = 'they'; c.subj = pronoun('them', memory) ?? []; return i + 2; } // "those four have got to go"
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
    return named ? Math.max(named.next, more + 3) : more + 3;
  }
  if (it?.f?.dim === 'number' && (isAux(c.items[i + 1]) && c.items[i + 1]!.t !== 'do' || c.items[i + 1]?.t === 'adj' && c.items[i + 1]!.from > 0 || /^(need|want)$/.test(c.items[i + 1]?.base ?? '')) && memory.several().length) {
    c.subj = pronoun('them', memory) ?? []; // "four are chipped"
    c.counted = it.low;
    return i + 1;
  }
  if (it?.t === 'np') {
    if (PERSONS.test(it.np!.said) && it.np!.said.split(' ').length < 4 && !/\b(pin|pivot|bearing|hub|shaft|clutch|spline|bush|mounting|hinge) boss$/.test(it.np!.said) && !(it.np!.said.includes(' ') && ['part', 'consumable', 'fastener'].some(k => nounClasses(it.np!.said).has(k as 'part')))) { // gasket paper is nobody
      c.who = 'person';
      // "the fella with the forge in town says": where he is found stands before the verb
      let n = i + 1;
      while (/^(in|on|at|from|down|up|over|across|along|near|with|by|out|round|behind|of|off)$/.test(c.items[n]?.low ?? '') && c.items[n + 1]?.t === 'np') n += 2;
      return n > i + 1 && (isAux(c.items[n]) || finite(c.items[n])) ? n : i + 1;
    }
    if (/^(trial|test|dry|mock)$/.test(it.np!.said) && c.items[i + 1]?.base === 'fit') return i + 1; // "trial fitted both fenders"
    const { things, next } = thingsAt(sheet, c.items, i, memory);
    c.subj = things;
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
    if (/^(from|between)$/.test(c.items[n]?.low ?? '') && c.items[n + 1]?.t === 'np' && /^(to|and)$/.test(c.items[n + 2]?.low ?? '') && c.items[n + 3]?.t === 'np' && (isAux(c.items[n + 4]) || finite(c.items[n + 4]))) n += 4; // "the chain from the gearbox to the beater is stiff"
    if (/^(in|on|with|under|to|for)$/.test(c.items[n]?.low ?? '') && /^(it|them|that)$/.test(c.items[n + 1]?.low ?? '') && (isAux(c.items[n + 2]) || finite(c.items[n + 2]))) n += 2; // "the gasket in it is torn"
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
    else if (c.items[n]?.low === ',' && c.items[n + 1]?.t === 'pron' && /^(it|they|she|that)$/.test(c.items[n + 1]!.low) && things.length) n += 2;
    return Math.max(n, i + 1);
  }
  return i;
}

/** What a pronoun stands for; undefined for persons. */
export function pronoun(low: string, memory: Memory): Thing[] | undefined {
  if (/^(i|we|you|he|me|us|him|himself|herself|myself|yourself|who|nobody|somebody|someone|everyone|whoever)$/.test(low)) return undefined;
  const carried = (ts: readonly Thing[]): Thing[] => ts.filter((t, i) => ts.findIndex(o => o.name === t.name) === i).map(t => ({ ...t, carried: true }));
  if (/^(they|them|those|these|both|all|everything|ones)$/.test(low)) return carried(memory.several());
  if (/^(nothing|something|anything)$/.test(low)) return [];
  const t = memory.topic();
  return t ? carried([t]) : [];
}

/** Finds auxiliaries and the main verb. */
function predicate(c: Clause, start: number): void {
  let i = start;
  const step = (): Item | undefined => c.items[i];
  let be = false, have = -1;
  for (; step(); i++) {
    const it = step()!;
    if (it.t === 'neg' || it.t === 'adv' || it.t === 'mark' && it.low === ',' && !be) { if (it.t === 'neg') c.neg = true; continue; }
    if (it.t === 'be') { if (c.verb && c.items[i - 1]?.t === 'to') delete c.verb; be = true; c.neg ||= /n't$|ain't/.test(it.low); c.pred = 'be'; c.vi = i; continue; }
    if (it.t === 'have') { have = i; c.pred = 'have'; c.vi = i; c.neg ||= /n't$/.test(it.low); continue; }
    if (it.t === 'modal' || it.t === 'do') { c.neg ||= /n't$/.test(it.low); c.vi = i; if (it.t === 'do' && !c.items.slice(i + 1).some(x => x.t === 'verb')) { c.pred = 'verb'; c.verb = { ...it, t: 'verb', base: 'do', form: /^(did|done)$/.test(it.low) ? 'past' : 'base' }; } continue; }
    if (be && it.np?.stands && /^(all|both|each)$/.test(it.np.said) && c.items[i + 1]?.t === 'verb') continue; // "are all cleaned"
    if (it.t === 'to') continue;
    if (it.low === 'you' && c.neg && c.items[i - 1]?.t === 'do') continue; // "don't you let me"
    if (it.t === 'verb') {
      const next = c.items[i + 1];
      if (it.base === 'spend' || it.base === 'put' && next?.t === 'prt') {
        const ing = c.items.findIndex((x, n) => n > i && x.t === 'verb' && x.form === 'ing');
        if (ing > 0 && c.items.slice(i + 1, ing).some(x => x.f?.dim === 'span')) { c.pred = 'verb'; c.verb = c.items[ing]!; c.vi = ing; c.ing = true; return; }
      }
      if (it.base === 'make' && next?.np?.said === 'start' && /^(on|at|with)$/.test(c.items[i + 2]?.low ?? '') && c.items[i + 3]?.t === 'verb' && c.items[i + 3]!.form === 'ing') { c.pred = 'verb'; c.verb = c.items[i + 3]!; c.vi = i + 3; c.ing = true; return; }
      if (it.base === 'find' && /^(past|part)$/.test(it.form ?? '') && next?.t === 'to' && c.items[i + 2]?.t === 'be' && !c.items.slice(0, i).some(x => x.np && x.from > (c.subj.at(-1)?.to ?? 0))) continue; // "found to be cracked"
      if (it.base === 'get' && next?.t === 'verb' && /^(past|part)$/.test(next.form ?? '') && c.subj.length && !/^(i|we)$/.test(c.who ?? '')) { be = true; continue; }
      if (it.base === 'let' && next?.t === 'pron' && /^(me|us)$/.test(next.low) && c.items[i + 2]?.t === 'verb') { i++; continue; }
      if (chains(it, next)) { c.pred = 'verb'; c.verb = it; c.vi = i; continue; }
      c.verb = it; c.vi = i; c.pred = 'verb';
      c.ing = it.form === 'ing';
      c.passive = (be || have >= 0 && c.items.slice(have).some(x => x.low === 'been')) && it.form !== 'ing' && it.form !== 'base' && it.form !== 's';
      if (it.base === 'get' && (be || have >= 0) && next && (next.t === 'np' || next.t === 'det' || next.f)) c.pred = 'have';
      return;
    }
    break;
  }
  c.rest = c.items.slice(i);
}

/** Verbs that only lead on to the main one: "need to paint", "going to weld", "started sanding", "got to". */
const chains = (it: Item, next: Item | undefined): boolean =>
  next?.t === 'to' && /^(need|want|go|get|have|try|manage|like|suppose|hope|plan|mean|start|begin|intend|decide|remember|forget|expect|love|use|ought|propose)$/.test(it.base ?? '')
  || next?.base === 'fit' && /^(test|trial|dry)$/.test(it.low)
  || next?.t === 'verb' && next.form === 'ing' && /^(start|begin|finish|stop|quit|keep|try|commence|need|want|get|go)$/.test(it.base ?? '');

/** A clause without a subject of its own shares the one before: "boiled out and sealed", "it came off and went on the bench". */
function carry(c: Clause, before: Clause): void {
  if (before.subj.length && !(before.who && /^(i|we)$/.test(before.who))) { c.subj = before.subj.map(t => ({ ...t, carried: true })); c.carriedSubj = true; }
  if (c.verb?.form === 's' && !c.subj.length && before.obj.length && /^(i|we)?$/.test(before.who ?? '')) { c.subj = before.obj.map(t => ({ ...t, carried: true })); c.carriedSubj = true; return; } // "tested the lamp, burns blue"
  const bidding = c.verb?.form === 'base' && c.items.find(i => i.t !== 'cc' && i.t !== 'adv' && i.t !== 'mark') === c.verb && !/^(put|set|cut|shut|fit|read|let|hit|split)$/.test(c.verb.low) && before.reality === 'deed' && !/^(say|tell|ask|beg|warn|remind)$/.test(before.verb?.base ?? '');
  if (before.who && /^(he|they|person|i|we|she)$/.test(before.who) && !(bidding && /^(he|they|person|she)$/.test(before.who))) c.who = before.who; // "my father never trusted cork, so look at those again"
  if (before.passive && /^(must|plan)$/.test(before.reality) && c.verb && /^(past|part)$/.test(c.verb.form ?? '') && c.join === 'and') { c.reality = before.reality; c.passive = true; return; }
  if (/^(must|plan|maybe|wish)$/.test(before.reality) && c.verb && (c.join === 'and' || c.join === ',' || c.join === 'then') && verbForms(c.verb.low).some(f => f.form === 'base')) { c.reality = before.reality; c.verb = { ...c.verb, form: 'base' }; }
  if ((before.passive || before.pred === 'none' || before.pred === 'be') && c.verb && /^(past|part)$/.test(c.verb.form ?? '') && before.subj.length) c.passive = !c.items.slice(c.vi + 1).some(x => x.t === 'np' && !c.items.slice(c.vi + 1, c.items.indexOf(x)).some(p => p.t === 'prep' || p.t === 'prt'));
}

/** Particles, object and what is left after the verb. */
function afterVerb(sheet: Sheet, c: Clause, memory: Memory): void {
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
    c.obj = c.subj.length && !c.subj[0]!.carried && (!c.who || /^(i|we)$/.test(c.who)) ? c.subj : pronoun(it.low === 'her' ? 'it' : it.low, memory) ?? [];
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
  particles();
  c.rest = items.slice(i);
  causes(c, i);
  // "left the cover soaking": what is being done to it
  if (c.pred === 'verb' && /^(leave|keep|set)$/.test(c.verb!.base ?? '') && c.verb!.form !== 'base' && c.obj.length && items[i]?.t === 'verb' && items[i]!.form === 'ing' && isClass(items[i]!.base!, 'work') && !items[i + 1]?.np) { c.verb = items[i]!; c.vi = i; c.ing = true; c.rest = items.slice(i + 1); }
  if (c.pred === 'verb' && c.subj.length && !c.who && !c.obj.length && /^(past|part)$/.test(c.verb!.form ?? '') && !c.passive && DONE_TO.some(k => isClass(c.verb!.base!, k)) && (!(isClass(c.verb!.base!, 'fail') || isClass(c.verb!.base!, 'state')) || c.verb!.form === 'past' && /^(to|at)$/.test(c.rest[0]?.low ?? '') && c.rest[1]?.f && /^(pull|draw|run|set|bring|tighten|wind|nip)$/.test(c.verb!.base!)) && !/^(come|go|arrive|turn|show|sit|land|take|get|have|run|break|fall)$/.test(c.verb!.base!)) c.passive = true;
}
/** Work that is said of a coming day as if it were done. */
const NOT_YET = ['work', 'on', 'off', 'tight'] as const;
/** "had the crank ground", "the gearbox has the seal driven in", "need the head skimmed": what is said is done to the thing had. */
function causes(c: Clause, i: number): void {
  const by = c.pred === 'have' ? c.verb?.base ?? 'have' : c.verb?.base ?? '', done = c.items[i], after = c.items[i + 1], thing = c.obj[0];
  if (!/^(have|get|need|want)$/.test(by) || !thing || done?.t !== 'verb' || !/^(past|part)$/.test(done.form ?? '') || after?.np || after?.t === 'pron' || !DONE_TO.some(k => isClass(done.base!, k)) || c.asks) return;
  const definite = thing.carried || thing.np?.known || /^(the|my|our|his|her|its|both|all|that|this|those|these|one|it|them)$/.test(c.items.find(x => x.np && x.from === thing.from)?.low.split(' ')[0] ?? '');
  if (!definite) return;
  const owner = c.subj[0];
  const owned = owner && !c.who && !owner.carried && !owner.machine && !thing.np?.known && !thing.carried;
  if (owned) c.obj = c.obj.map(o => ({ ...o, name: o.name.startsWith(owner.name) ? o.name : `${owner.name} ${o.name}` }));
  if (!c.who && owner && !owner.carried) { c.about = c.subj; c.subj = c.obj; c.obj = []; c.passive = true; }
  if (/^(need|want)$/.test(by)) c.reality = 'must';
  const head = c.items.slice(0, c.vi + 1).map(x => x.low).join(' ');
  const due = c.reality === 'must' || /\bto have\b|\bto get\b|'ll|\b(will|must|should|shall|gonna|going to|want|need)\b/.test(head);
  c.pred = 'verb'; c.verb = { ...done, form: due ? 'base' : 'past' }; c.vi = i; c.prt = [];
  let k = i + 1;
  while (c.items[k] && (c.items[k]!.t === 'adv' || c.items[k]!.t === 'prt' && PARTICLE.test(c.items[k]!.low) && !c.items[k + 1]?.np)) { if (c.items[k]!.t === 'prt') c.prt.push(c.items[k]!.low); k++; }
  c.rest = c.items.slice(k);
}

const DONE_TO = ['work', 'on', 'off', 'tight', 'hang', 'stow', 'order'] as const;

/** Verbs that put one thing on another, which does not own it: "tried the sprocket on the shaft". */
const PLACES = /^(try|put|run|set|slide|press|fit|mount|slip|hang|bolt|drop|tap|drive|screw|push|stick|place|lay|soak|dip|dunk|steep|boil|quench|pickle|bathe|simmer|stew|stand|perch|stick|prop|balance|offer|install|shrink|thread|lower|seat)$/;

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

/** "assuming the block is sound", "as long as it's straight", "in case it leaks": said as a condition without an "if". */
function supposed(sheet: Sheet, c: Clause): boolean {
  const lead = sheet.tokens.slice(Math.max(0, c.from - 3), c.from).map(t => t.low).join(' '), own = sheet.tokens.slice(c.from, c.from + 3).map(t => t.low).join(' ');
  return /(^| )(assuming|supposing|suppose|provided|provided that|providing|in case|as long as|so long as|on condition that)$/.test(lead) || /^(assuming|supposing|suppose|provided|providing|in case|as long as|so long as|on condition)\b/.test(own);
}

function reality(c: Clause): Reality {
  const words = c.items.map(i => i.low);
  const head = c.items.map(i => (i.np && /\b(must|may|might|will|can|should)\b/.test(i.low) ? '·' : i.low)).slice(0, Math.max(c.vi, 0) + 1).join(' ');
  if (c.sub && /^(if|unless|lest|except|whether)$/.test(c.sub)) return 'cond';
  if (/\b(apparently|supposedly|allegedly|reportedly|by all accounts)\b/.test(words.join(' '))) return 'hearsay';
  if (c.passive && /\bby (somebody|someone|whoever|the (last|previous) \w+)\b/.test(words.join(' '))) return 'hearsay';
  if (/^(somebody|someone|whoever)$/.test(c.who ?? '') && c.verb && !c.passive && /^(past|part)$/.test(c.verb.form ?? '') && !/^(come|call|ring|phone|offer|help|be|say)$/.test(c.verb.base ?? '')) return 'hearsay';
  if (/\b(nearly|almost|damn near|all but)\b/.test(head) && c.pred !== 'be' && c.pred !== 'none' && !/^(finish|do|complete)$/.test(c.verb?.base ?? '') && !/\b(finished|done)\b/.test(head)) return 'past plan';
  if (/\b(probably|possibly|perhaps|maybe|likely)\b/.test(c.items.filter((i, k) => !(/^(maybe|perhaps|possibly|probably)$/.test(i.low) && (c.items[k + 1]?.f || c.items[k + 1]?.np?.count !== undefined))).map(i => i.low).join(' ')) && (c.pred === 'be' || c.pred === 'none') && !c.items.some(i => i.f?.dim === 'when' || i.f?.dim === 'money')) return 'maybe';
  if (/\b(was|were) (just |only |really )?(going|gonna|about|meant|supposed|planning|hoping) to\b|\bmeant to\b|\bshould 've\b|\bshould have\b|\bcould 've\b|\bwould 've\b|\bwould have\b|\bcould have\b|\bought to have\b/.test(head)) return 'past plan';
  if (/\b(needs?|wants?|requires?) \w+ing\b/.test(words.join(' ')) || /^(?:\S+ ){0,4}?(?:still |yet )?to be\b/.test(head) && !c.items.slice(0, c.vi).some(i => i.t === 'have' || i.t === 'modal' || i.t === 'verb' || i.t === 'be' && i.low !== 'be')) return 'must';
  if (/(^| )(is|are|'s|'re|'m) (all |just |finally )?getting \w+$/.test(head) && c.verb && /^(past|part)$/.test(c.verb.form ?? '')) return 'plan'; // "it's getting replaced"
  if (/\b(need|needs|have|has|had|'ve got|'s got|got|must|ought) to\b|\bmust\b|\bshould\b|\bwants? to be\b|\bbetter\b|\bsupposed to\b/.test(head)) return /\bhad to\b/.test(head) ? 'deed' : 'must';
  if (/\bto be$|\bto be \S+$/.test(head) && c.passive && !/\b(want|wants|going|gonna|likely|sure)\b/.test(head)) return 'must'; // "head bolts to be retorqued"
  if (/\b(wouldn't|couldn't|won't)\b/.test(head)) return 'maybe';
  if (/\b(might|may|could|perhaps|maybe|possibly|probably|would|i 'd)\b/.test(head) && !/\bcould (see|hear|feel|get)\b/.test(head)) return /\b(would|'d) (like|love|rather)|\bwish\b/.test(head) ? 'wish' : 'maybe';
  if (/(^|\s)'d\b/.test(head)) return 'maybe';
  if (/(^| )'ll( |$)|\b(will|shall|going to|won't|shan't|plan to|planning to|propose to|want to|intend to|about to)\b/.test(head)) return 'plan';
  if (/\b(wish|hope|hoping|hopefully|like to|love to)\b/.test(head)) return 'wish';
  if (/\bcan\b/.test(head)) return 'maybe';
  return 'deed';
}
