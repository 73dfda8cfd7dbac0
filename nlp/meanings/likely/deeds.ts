import { nameKey } from '../../../domain/model/names.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Thing } from '../../clauses/clause.ts';
import { isStuff, partLike } from '../../clauses/name-kinds.ts';
import { singular } from '../../words/nouns.ts';
import { saidIn } from '../../likely/said.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { dayIn } from '../lib/day.ts';
import { isTool, trim } from '../lib/fields.ts';
import { later } from '../recheck.ts';
import { tends } from '../recheck/tends.ts';
import { coatIn, coatOfAnything, laidOn } from '../work/coat.ts';
import { productOf } from '../work/product.ts';
import type { Telling } from '../telling.ts';
import { about, mayBeDone } from './about.ts';

/** Verbs that say nothing of the deed by themselves: what they are done with, or the noun after them, says it. */
const LIGHT = /^(put|give|run|get|do|have|go|take|make|use|be|come|let|keep|start|begin|finish|want|need|try|manage|lay|throw|slap|stick|spend|see|leave|stay|work)$/;

/** Work done: its verb is the clause's own, or the one of the trade's that it leads to ("had the … cleaned"), or what was put on in a coat. */
export function worked(t: Telling): Entry[] {
  const c = t.clause, coat = coatIn(t) ?? coatOfAnything(t) ?? laidOn(t);
  const verb = [c.verb, ...c.items].find(i => i?.t === 'verb' && isClass(i.base ?? '', 'work') && !LIGHT.test(i.base!)) ?? (c.verb && !LIGHT.test(c.verb.base ?? '') && /^(past|part)$/.test(c.verb.form ?? '') ? c.verb : undefined);
  const action = coat?.action ?? verb?.base;
  return action ? workedOn(t, coat?.product).map(p => trim({ kind: 'work', part: p.name, action, product: coat?.product ?? (c.verb ? productOf(t, c) : undefined) }) as Entry) : [];
}

/** What was worked on: a part's oil is drained and filled for the part; what the verb names is what it was done to, though the trade has no such part. */
function workedOn(t: Telling, product: string | undefined): Thing[] {
  const c = t.clause, topic = t.memory.topic(), named = about(t, true).map(p => ({ ...p, name: bare(t, p.name, product) }));
  if (named.length) return named;
  const own = c.obj.filter(o => !o.carried && partLike(t.sheet, o.name) && !isStuff(o.name) && !isTool(o.name));
  if (own.length || !topic) return own;
  return c.obj.every(o => o.carried || isStuff(o.name)) && c.subj.every(s => s.carried || isStuff(s.name)) && partLike(t.sheet, topic.name) && !isStuff(topic.name) && mayBeDone(c, topic.name) ? [{ ...topic, carried: true }] : [];
}

/** "grease in the bearings", "red oxide on the beam", "the gearbox oil": what the stuff is in or on, in the words that name it. */
function bare(t: Telling, name: string, product: string | undefined): string {
  const owner = product && name.endsWith(` ${product}`) ? name.slice(0, -product.length - 1) : name.replace(/ (oil|water|coolant|grease|paint)$/, '');
  return owner === name ? name : t.clause.items.find(i => i.np && nameKey(i.np.name) === nameKey(owner))?.np?.name ?? t.clause.items.find(i => i.np && singular(i.np.name) === owner)?.np?.name ?? owner;
}

/** Work still to do: the first verb that says a deed, after what only says that it must be. */
export function toDo(t: Telling): Entry[] {
  const c = t.clause, bound = c.items.findIndex(i => i.t === 'modal' || i.t === 'to' || /^(need|want|get|gotta|going)$/.test(i.base ?? ''));
  const verb = c.items.find((i, k) => k > bound && i.t === 'verb' && !/^(need|want|have|get|go|be|try|start|must|remember|let|make|think|reckon|say|come|sit|stay|cool|wait)$/.test(i.base ?? '')) ?? c.verb;
  if (/^(come|sit|stay|cool|wait)$/.test(verb?.base ?? '')) return []; // it does so by itself
  if (!verb?.base) return [];
  return about(t, true).map(p => ({ kind: 'job', do: verb.base!, part: p.name }) as Entry);
}

/** A part to be left alone until then. */
export function left(t: Telling): Entry[] {
  const until = dayIn(t, t.clause), span = dims(t.clause.items, 'span')[0]?.value;
  if (!until && !(span && /^(hours|days|weeks)$/.test(span.unit))) return [];
  return about(t, true).map(p => ({ kind: 'wait', part: p.name, ...(until ? { until } : { after: span!.amount, unit: span!.unit }) }) as Entry);
}

/** A part to be looked at again; what is to be done to it in the verb that the clause has for it, else the one that the net takes for it. */
export function again(t: Telling, net: Weighed): Entry[] {
  const c = t.clause, time = later(t, c), said = saidIn(t.sheet, net, c, 'recheck do');
  const verb = c.items.find((i, k) => i.t === 'verb' && (!/^(get|put|run|take|give|do)$/.test(i.base ?? '') && tends(i.base ?? '') || /^(go|run)$/.test(i.base ?? '') && /^(over|round|around)$/.test(c.items[k + 1]?.low ?? '')));
  const deed = verb?.base ?? t.sheet.tokens.slice(said?.from, said?.to ?? 0).flatMap(w => verbForms(w.low))[0]?.base ?? 'check';
  return time ? about(t, true).map(p => ({ kind: 'recheck', part: p.name, do: deed, ...time }) as Entry) : [];
}
