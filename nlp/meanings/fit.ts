import { isKnownPart } from '../dimensions/part/known.ts';
import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { isMachine, isPlaceNoun, isStuff, partLike } from '../clauses/name-kinds.ts';
import { nameClasses } from '../words/nouns.ts';
import { NAMED } from '../words/quantities.ts';
import { isFastener, nounsFrom, SHAVING, trim, withPhrase } from './lib/fields.ts';
import { lowText, patients, type Meaning, type Telling } from './telling.ts';
import { headingOf, underHeading } from './lib/heading.ts';
import { INSTRUMENT } from '../words/instruments.ts';
import { figures, measuredName, othersTo, toldApart } from './fit/brought-to.ts';
import { asWas } from './reading/as-was.ts';
import { HOLDERS, ONLY_HOLDS, STAYS, WRONG_WAY } from './lib/fit-phrases.ts';
import { fitState, type FitState } from './lib/fit-state.ts';
import { table } from '../words/table.ts';

/** How a part now sits: taken off, tried, held for now, on for good, brought to its torque. */
export const fit: Meaning = t => {
  const c = t.clause;
  if (STAYS.test(lowText(t)) && c.neg && t.told.at(-1)?.entry.kind === 'fit' && !c.subj.some(s => !s.carried)) return [];
  if (/\bonly (one|two|three|four|five|six|half|\d+) of\b/.test(lowText(t)) && c.pred !== 'verb') return []; // so many of them is not all of them
  if (/^(come|fall|break)$/.test(c.verb?.base ?? '') && /\b(off|away|out|apart) in (my|your|the|his) (hands?|fingers?)\b/.test(lowText(t))) return undefined; // so rotten that nobody took it off
  if (c.verb?.base === 'come' && /\b(twice|\w+ times|every time|time and again)\b/.test(lowText(t))) return undefined; // shed again and again
  if (c.ing && c.pred === 'verb' && c.items.slice(0, c.vi).some(i => /^(is|'s|are|'re|'m|am)$/.test(i.low)) && /^(put|fit|take|pull|bolt|press|refit|install|mount|get|swap)$/.test(c.verb!.base!)) return undefined; // at it, not done
  if (/\bby a thread\b/.test(lowText(t)) || /\b(was|were) (still |only |just |all )?(hanging|held|wired|tied|sitting|clamped|hung|pinned|bolted)\b/.test(lowText(t)) && /\b(before|when) (i|we) (touched|started|got|came|opened|took|looked)\b/.test(`${lowText(t)} ${t.clauses[t.at + 1]?.sub ?? ''} ${t.clauses[t.at + 1] ? lowText(t, t.clauses[t.at + 1]!) : ''}`)) return undefined; // how it was before anyone was at it
  if (c.neg || c.asks || c.reality !== 'deed' || c.sub && /^(before|after|until|till|if|unless|when|while|as)$/.test(c.sub) && !(c.sub === 'while' && /^(i|we)$/.test(c.who ?? '') && c.verb?.form === 'past')) return undefined;
  if (dims(c.items, 'measure').some(m => m.value.unit === 'turns') && /^(take|need|come|count|back|go|wind|unscrew|want|make)$/.test(c.verb?.base ?? '')) return undefined; // "took 22 turns to back off"
  if (t.told.at(-1)?.rule === 'stow' && c.pred !== 'verb' && c.rest.some((i, k) => /^(in|on|under)$/.test(i.low) && (c.rest[k + 1]?.np?.stands || c.rest[k + 1]?.t === 'det' && (!c.rest[k + 2] || c.rest[k + 2]!.t === 'adj')))) return undefined; // "…and the nuts are in the red one"
  if (/\b(was|were)\b/.test(lowText(t)) && (WRONG_WAY.test(lowText(t)) || /^(before|when)$/.test(t.clauses[t.at - 1]?.sub ?? '') && c.passive && !c.carriedSubj)) return undefined; // how it was before
  if (/^(put|throw|chuck|toss|drop|go|stick|pop)$/.test(c.verb?.base ?? '') && /\bin with (the|my|its|his|all|them|it)\b/.test(lowText(t)) && !c.rest.some((i, k) => i.low === 'with' && c.rest[k + 1]?.np && isFastener(c.rest[k + 1]!.np!.said))) return undefined; // kept together
  if (c.subj.some(s => INSTRUMENT.test(s.name)) && c.items.some(i => i.f && i.f.dim !== 'when') || /^(rest|sit|hover|settle)$/.test(c.verb?.base ?? '') && c.items.some((i, k) => /^(on|at|to|around)$/.test(c.items[k - 1]?.low ?? '') && i.f && i.f.dim !== 'when' && !c.items[k + 1]?.np)) return undefined; // "battery's resting on 12.4"
  if (c.obj.some(o => (o.count ?? 0) > 0 && /^(shim|washer|spacer|packer|packing piece|leaf)s?$/.test(o.name)) && /\bfrom (under|behind|between|below|inside)\b/.test(lowText(t))) return undefined; // counted as it came apart
  if (c.sub === 'once' && t.clauses[t.at + 1] && t.clauses[t.at + 1]!.reality !== 'deed') return undefined; // "once the head is on I can…"
  if (/^(go|come)$/.test(c.verb?.base ?? '') && c.verb!.form === 'ing' && /^(back|off|out|down)$/.test(c.prt.join(' ')) && !c.rest.some((i, k) => i.np && c.rest[k - 1]?.low !== 'for')) return undefined; // "it's going back", "it's coming off again"
  if (/\b(put|drilled|cut|fitted|bored|welded)\b.* (on|in|at|to) the wrong (side|way|end|place|hole)\b/.test(lowText(t))) return undefined; // a blunder, whatever sits where
  if (/\bon (its|their|the|his|her|my) way\b/.test(lowText(t))) return undefined; // going somewhere, not on anything
  if (c.verb?.base === 'take' && /^(he|she|they|person)$/.test(c.who ?? '') && c.items.some(i => i.f?.dim === 'measure') && !c.items.slice(c.vi).some(i => i.np)) return undefined; // "they took off twenty thou"
  const listed = underHeading(t);
  const as = listed && headState(listed.says);
  if (headState(headingOf(t) ?? '') && (HEADS[headingOf(t)!] || !c.obj.length && !c.subj.some(s => !s.carried))) return [];
  if (listed && as) return listed.things.filter(p => partLike(t.sheet, p.name)).map(p => ({ kind: 'fit', part: p.name, state: as }) as Entry);
  const renewed = newOnes(t);
  if (renewed) return renewed;
  const trial = t.told.at(-1)?.entry;
  if (trial?.kind === 'fit' && trial.state === 'tried' && c.verb?.base === 'come' && c.verb.form === 'past' && /\b(off|down|out|away)\b/.test(lowText(t)) && c.subj.every(s => s.carried || s.name === trial.part)) return [{ kind: 'fit', part: trial.part, state: 'off' } as Entry]; // "…, then down it came again"
  const state = fitState(t);
  const anew = state ? undefined : thereNew(t);
  if (anew) return [{ kind: 'fit', part: anew, state: 'on' } as Entry];
  if (!state) return undefined;
  const went = t.told.at(-1)?.entry;
  if (state === 'on' && (c.carriedSubj || /^(it|they)$/.test(c.who ?? '')) && went?.kind === 'fit' && went.state === 'off' && c.subj.some(s => s.name === went.part || went.part.endsWith(` ${s.name}`)) && /^(sit|lie|stand|hang|lean|rest|be|go)$/.test(c.verb?.base ?? 'be') && c.rest.some(i => i.np)) return undefined; // "off and sitting on the step"
  const parts = patientsOf(c).filter(p => !SHAVING.test(p.name) && !/(^| )(smear|dab|blob|squirt|film|wipe|bead|coat|lick|drop|shot) ?$/.test(p.name) && (partLike(t.sheet, measuredName(p.name).part) || bareQuantity(p.name) && state === 'tight') && !/^(no|half)$/.test(p.np?.quant ?? '') && !/ (cracks?|chips?|dents?|holes?|burrs?)$/.test(` ${p.name}`) && !appliedTool(t, p, state) && !/^(one|two|three|four|five|six|seven|eight|nine|ten|twent(y|ie)|thirt(y|ie)|fort(y|ie)|fift(y|ie))(e?s)?$/.test(p.name) && !((isStuff(p.name) || / (oil|grease|paint|primer|fuel|diesel|petrol|water|coolant|sealer)$/.test(p.name)) && !p.np?.known && !isKnownPart(t.sheet.ctx.parts, p.name)) && (!isMachine(t.sheet, p.name) || state === 'on' && c.obj.length > 0 || / (pump|engine)$/.test(p.name) && !t.sheet.ctx.machines?.includes(p.name)));
  if (!parts.length) {
    const again = c.pred === 'none' && !c.subj.length && !c.obj.length && /^(and |but |then |now )?(back )?(off|on|out|in)( again| now| for good)*$/.test(lowText(t)) ? t.memory.topic() : undefined;
    const brought = state === 'tight' && c.pred === 'verb' && !c.who && !c.subj.length && !c.obj.length && dims(c.items, 'measure').length ? t.memory.topic() : undefined; // "…gapped at 25 thou"
    const whole = again ?? brought;
    if (!whole || whole.machine) return undefined;
    parts.push(whole);
  }
  const named = parts.map(p => (bareQuantity(p.name) && state === 'tight' ? { part: hasIt(t, p.to) ?? p.name, what: p.name } : measuredName(p.name)));
  const figuresWere = state === 'tight' && /\b(was|were)\b/.test(lowText(t)) && asWas(t, c) ? figures(t, c, named.map(n => n.part), named[0]?.what) : [];
  if (figuresWere.length) return figuresWere.map(e => ({ ...e, asWas: true }) as Entry); // "were set at thirty thou before I touched them"
  const held = holds(t, state) ?? (state === 'temporary' ? heldByNext(t) : undefined);
  return [...named.map(n => trim({ kind: 'fit', part: state === 'off' ? outOf(t, n.part) : n.part, state, with: held })) as Entry[], ...(state === 'tight' ? toldApart(t, c) : undefined) ?? [...figures(t, c, named.map(n => n.part), named[0]?.what), ...(state === 'tight' ? othersTo(t, c, named[0]?.what) : [])]];
};

/** "put a straightedge across the deck", "had a level on the bed": a tool laid on to see by is no part of the machine. */
const appliedTool = (t: Telling, p: Clause['subj'][number], state: FitState): boolean => {
  const classes = nameClasses(p.name);
  return state !== 'off' && state !== 'tight' && classes.has('tool') && !['part', 'fastener', 'machine'].some(k => classes.has(k as 'part')) && !isKnownPart(t.sheet.ctx.parts, p.name) && /^(put|lay|run|set|throw|clap|hold|have|stick|try|get)$/.test(t.clause.verb?.base ?? (t.clause.pred === 'have' ? 'have' : ''));
};

/** "end play", "air gap": a quantity without what has it. */
const bareQuantity = (name: string): boolean => NAMED.test(name);

/** "set the gap on the valves to…", "front bearings… set the end play to…": what has the quantity that was set. */
function hasIt(t: Telling, after: number): string | undefined {
  const c = t.clause, k = c.items.findIndex((i, n) => i.from >= after && /^(on|of|in|for)$/.test(i.low) && c.items[n + 1]?.np);
  const np = k >= 0 ? c.items[k + 1]!.np! : undefined;
  return np && !np.stands ? np.name : (c.subj.find(s => !bareQuantity(s.name)) ?? t.memory.topic())?.name;
}

/** "so there's a new one on", "there's a new gasket in it now": what is new and in its place was put there. */
function thereNew(t: Telling): string | undefined {
  const { items, pred } = t.clause, k = items.findIndex(i => i.low === 'there' && i.t === 'adv'), np = items[k + 2]?.np;
  if (pred !== 'be' || k < 0 || items[k + 1]?.low !== "'s" && items[k + 1]?.low !== 'is' || !np || !/\b(new|fresh|another)\b/.test(items[k + 2]!.low) || !/^(on|in)$/.test(items[k + 3]?.low ?? '')) return undefined;
  const rest = items.slice(k + 4).filter(i => i.t !== 'adv' && i.t !== 'mark');
  if (rest.some(i => !(i.t === 'pron' && /^(it|there)$/.test(i.low)))) return undefined;
  const name = np.stands || /^ones?$/.test(np.said) ? t.clause.subj[0]?.name ?? t.memory.topic()?.name : np.name;
  return name !== undefined && partLike(t.sheet, name) && !isStuff(name) && !isMachine(t.sheet, name) ? name : undefined;
}

/** "Rebuilt the pump. New seals, new bearing.": what is new, named alone after work or fitting, was put in. */
function newOnes(t: Telling): Entry[] | undefined {
  const c = t.clause, nps = c.items.filter(i => i.np), last = t.told.at(-1);
  if (c.pred !== 'none' || c.verb || !nps.length || !last || !/^(fit|work)$/.test(last.rule) || last.entry.kind === 'fit' && last.entry.state !== 'on' && last.entry.state !== 'tight' || last.clause !== t.clauses[t.at - 1] || t.clauses[t.at + 1]?.join === ':' || c.items.some(i => i.f || !i.np && !/^(mark|cc|adv)$/.test(i.t)) || !nps.every(i => /^(a |the |both |two |four |all )?(new|fresh) /.test(i.low) && !i.np!.stands && partLike(t.sheet, i.np!.name) && !isStuff(i.np!.name) && !isMachine(t.sheet, i.np!.name))) return undefined;
  return nps.map(i => ({ kind: 'fit', part: i.np!.name, state: 'on' }) as Entry);
}

/** "everything forward of the firewall is off: …", "I've refitted what I could: …" say it in a clause. */
function headState(says: string): FitState | undefined {
  const all = /^(?:everything|all|the lot|what(?: i|'s| is| i've)?|these|those|the following|bits|parts|things)\b.* (off|out|removed|on|back on|back in|in|fitted|refitted|tightened|torqued)$/.exec(says)?.[1];
  const mine = /^(?:(?:i|we)(?:'ve| have)? )?(?:now |also |just |only |already )*(fitted|refitted|removed|installed|replaced|tightened|torqued|taken off|stripped off|put back)(?: (?:what|these|those|the following|as much|most|the lot|everything|a few|some)\b.*)?$/.exec(says)?.[1];
  return HEADS[says] ?? HEADS[all ?? ''] ?? HEADS[mine ?? ''];
}

/** What a heading over a list of parts says of them. */
const HEADS: Record<string, FitState> = table({ off: 'off', out: 'off', removed: 'off', 'taken off': 'off', 'stripped off': 'off', on: 'on', 'back on': 'on', in: 'on', 'back in': 'on', fitted: 'on', refitted: 'on', installed: 'on', replaced: 'on', 'put on': 'on', 'put back': 'on', tightened: 'tight', torqued: 'tight', adjusted: 'tight' });

/** What the deed was done to; "came away no bother" has no object but a manner of speaking. */
const patientsOf = (c: Clause): Clause['subj'] => (/^(come|go)$/.test(c.verb?.base ?? '') && c.subj.length ? c.subj : patients(c));

/** "old packing is out of the feed pump": the part it came out of owns it. */
function outOf(t: Telling, name: string): string {
  const { items } = t.clause;
  const k = items.findIndex((i, n) => i.low === 'out' && items[n + 1]?.low === 'of' && items[n + 2]?.np);
  const np = k >= 0 ? items[k + 2]!.np! : undefined;
  const known = (n: string): boolean => isKnownPart(t.sheet.ctx.parts, n);
  return np && !np.stands && !known(name) && partLike(t.sheet, np.name) && !isMachine(t.sheet, np.name) && !isPlaceNoun(np) ? `${np.name} ${name}` : name;
}

/** "…but the cotter pin's only there to hold it": the clause after says what holds it. */
function heldByNext(t: Telling): string | undefined {
  const n = t.clauses[t.at + 1];
  if (!n || !ONLY_HOLDS.test(lowText(t, n)) || !n.subj[0] || n.subj[0].carried) return undefined;
  (n as Clause & { spoken?: boolean }).spoken = true;
  return n.subj.map(s => s.name).join(' and ');
}

/** What holds it: "with four bolts", "on two bolts", or fasteners named after a comma. */
function holds(t: Telling, state: FitState): string | undefined {
  const { items } = t.clause;
  if (state === 'off') return undefined;
  const w = withPhrase(t.sheet, items.slice(Math.max(t.clause.vi, 0)));
  if (w) return w;
  const on = items.findIndex((i, k) => k > 0 && /^(on|by|from|off)$/.test(i.low) && items[k + 1]?.np && holder(items, k + 1) && (state === 'temporary' || state === 'tried'));
  if (on >= 0) return nounsFrom(t.sheet, items, on + 1);
  const comma = items.findIndex((i, k) => i.low === ',' && items[k + 1]?.np && items[k + 1]!.np!.quant !== 'no' && isFastener(lastNoun(items.slice(k + 1))) && k > t.clause.vi);
  return comma >= 0 ? nounsFrom(t.sheet, items, comma + 1) : undefined;
}
/** "one bolt", "a wire", "a bit of wire". */
const holder = (items: Clause['items'], k: number): boolean => [items[k], items[k + 1]?.low === 'of' ? items[k + 2] : undefined].some(i => i?.np && (isFastener(i.np.said) || HOLDERS.test(i.np.said)));
const lastNoun = (items: Clause['items']): string => items.find(i => i.np)!.np!.said;
