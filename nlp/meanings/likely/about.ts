import type { Clause, Thing } from '../../clauses/clause.ts';
import { isMachine, isPlaceNoun, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { thingAt } from '../../clauses/things.ts';
import { NAMED } from '../../words/quantities.ts';
import { isFastener, isTool } from '../lib/fields.ts';
import { isSeller } from '../lib/goods.ts';
import { namesPart } from '../lib/named.ts';
import { patients, type Telling } from '../telling.ts';

/** The parts that a clause is about, where its kind is known: what its deed was done to, or else what it speaks of; else the first part it names, or what was spoken of before. */
export function about(t: Telling, done: boolean): Thing[] {
  const c = t.clause;
  if (t.pointed) return [...t.pointed];
  const own = (done ? patients(c) : c.subj.length ? c.subj : c.obj).filter(x => isPart(t, x));
  if (own.length) return own;
  for (const [k, i] of c.items.entries()) {
    if (!i.np || i.np.stands || HOLDS.test(c.items[k - 1]?.low ?? '')) continue;
    const one = thingAt(t.sheet, c.items, k, t.memory)?.thing;
    if (one && isPart(t, one)) return [one];
  }
  const topic = namesOther(c) ? undefined : t.memory.topic();
  return topic && isPart(t, topic) && mayBeDone(c, topic.name) ? [{ ...topic, carried: true }] : [];
}

/** What is done to a thing that holds something, and things that hold nothing: after "ordered a gasket" no gasket is drained. */
const EMPTIES = /^(drain|fill|refill|flush|bleed|top)$/, SOLID = /\b(gasket|seal|belt|ring|bearing|shim|blade|spring|wire|bulb|lamp|plug|filter)s?$/;
/** Whether what a clause tells of can be done to a thing that only was spoken of before. */
export const mayBeDone = (c: Clause, name: string): boolean => !(EMPTIES.test(c.verb?.base ?? '') && (SOLID.test(name) || isFastener(name)));

/** Words after which stands what holds a part, what was used on it or where it lies, not the part. */
const HOLDS = /^(with|by|using|in|into|under|behind|from|at|beside|till|until|before|after|for)$/;

const isPart = (t: Telling, x: Thing): boolean => x.name !== '' && partLike(t.sheet, x.name) && (x.carried === true || namesPart(t.sheet, x.name)) && !NAMED.test(x.name) && !isStuff(x.name) && !isSeller(x.name) && !isMachine(t.sheet, x.name) && !isTool(x.name)
  && !(x.np && isPlaceNoun(x.np) && !x.np.known);

/** Whether the clause's own subject or object is something else than a part, so that it is not about what was spoken of before. */
const namesOther = (c: Clause): boolean => [...c.subj, ...c.obj].some(x => !x.carried && x.from >= c.from);
