import type { Clause } from '../clauses/clause.ts';
import type { Placed } from '../clauses/clauses.ts';
import type { Item } from '../clauses/items.ts';
import { CONDITION } from '../words/conditions.ts';
import { FAULT } from '../words/faults.ts';
import { nameClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { isClass, VERB_CLASSES } from '../words/verbs.ts';

/**
 * The signs by which a clause is told for one kind or another: its words, what they are to the trade, how they follow one another, the state of its
 * predicate, and its neighbours in the sentence. A sign is a short string; a clause has each at most once.
 */
export function signsOf(clauses: readonly Placed[], at: number): Set<string> {
  const c = clauses[at]!, out = new Set<string>();
  const words = ['^', ...c.items.map(word), '$'], shapes = ['^', ...c.items.map(shape), '$'];
  for (let k = 0; k < words.length; k++) {
    out.add(`w ${words[k]}`).add(`s ${shapes[k]}`);
    if (k === 0) continue;
    const [w, v, s, r] = [words[k - 1]!, words[k]!, shapes[k - 1]!, shapes[k]!];
    out.add(`ww ${w} ${v}`).add(`ss ${s} ${r}`).add(`ws ${w} ${r}`).add(`sw ${s} ${v}`);
    if (k > 1) out.add(`sss ${shapes[k - 2]} ${s} ${r}`).add(`sws ${shapes[k - 2]} ${w} ${r}`);
  }
  for (const i of c.items) {
    for (const x of classes(i)) out.add(`c ${x}`);
    if (i.np || i.f) for (const w of i.low.split(' ')) out.add(`r ${w}`);
  }
  const verb = c.verb?.base ?? '-', form = c.verb?.form ?? '-', state = `${c.pred} ${c.reality}${c.neg ? ' not' : ''}`;
  out.add(`pred ${state}`).add(`form ${c.pred} ${form} ${c.passive ? 'passive' : c.ing ? 'ing' : 'active'}`).add(`verb ${verb} ${form}`).add(`verb ${verb} ${c.prt.join(' ')}`);
  for (const v of c.verb ? verbClasses(verb) : []) out.add(`vc ${v} ${form}`).add(`vc ${v} ${c.reality}`).add(`vc ${v} ${c.prt[0] ?? '-'}`).add(`vc ${v} ${c.passive ? 'passive' : who(c)}`);
  out.add(`who ${who(c)} ${c.pred} ${c.reality}`).add(`sub ${c.sub ?? '-'}`).add(`join ${c.join ?? '-'}`);
  out.add(`about ${c.subj.length ? 'subj' : '-'} ${c.obj.length ? 'obj' : '-'} ${c.pred}`);
  for (const [side, o] of [['before', clauses[at - 1]], ['after', clauses[at + 1]]] as const) {
    if (!o || o.sentence !== c.sentence) { out.add(`${side} ${o ? 'stop' : 'none'}`); if (!o) continue; }
    out.add(`${side} ${o.pred} ${o.reality}`).add(`${side} verb ${o.verb?.base ?? '-'} ${o.verb?.form ?? '-'}`);
    for (const i of o.items) out.add(`${side} ${shape(i)}`);
  }
  out.add(`place ${at === 0 ? 'first' : ''} ${at === clauses.length - 1 ? 'last' : ''}`);
  return out;
}

/** A word as the signs have it: verbs by their base, values by what they measure, names of things by what they are. */
const word = (i: Item): string => (i.f ? `<${i.f.dim}>` : i.np ? (i.np.stands ? '<that>' : `<${i.np.name.split(' ').at(-1)}>`) : i.base ?? i.low);

function shape(i: Item): string {
  if (i.f) return i.f.dim === 'measure' ? `<${i.f.value.unit}>` : `<${i.f.dim}>`;
  if (i.np) return i.np.stands ? 'NP that' : `NP ${classes(i)[0]}`;
  if (i.t === 'verb') return `V ${i.form}`;
  return /^(prep|prt|cc|sub|neg|modal|wh|mark|to|pron)$/.test(i.t) ? i.low : i.t === 'adj' && CONDITION.has(i.low) ? 'state' : i.t;
}

function classes(i: Item): string[] {
  if (i.np) {
    const head = i.np.name.split(' ').at(-1)!, of = nameClasses(i.np.name);
    const own = FAULT.test(head) ? 'fault' : PERSONS.test(head) ? 'person' : of.has('part') || i.np.known ? 'part' : [...of][0] ?? 'thing';
    return [own, ...of, ...(i.np.known ? ['known'] : []), ...(i.np.count !== undefined ? ['counted'] : []), ...(i.np.spec ? ['sized'] : []), ...(i.np.states.length ? ['in a state'] : []), ...(i.np.quant ? [`quant ${i.np.quant}`] : [])];
  }
  if (i.t === 'verb' && i.base) return verbClasses(i.base).map(v => `V ${v}`);
  return CONDITION.has(i.low) ? ['state'] : FAULT.test(i.low) ? ['fault'] : PERSONS.test(i.low) ? ['person'] : [];
}

const known = new Map<string, readonly string[]>();
/** The classes of a verb; kept, for every clause asks for those of its words. */
function verbClasses(base: string): readonly string[] {
  let have = known.get(base);
  if (!have) known.set(base, have = VERB_CLASSES.filter(v => isClass(base, v)));
  return have;
}
const who = (c: Clause): string => (/^(i|we)$/.test(c.who ?? '') ? 'I' : /^(he|she|they|person)$/.test(c.who ?? '') ? 'they' : c.who ?? '-');
