import type { Thing } from '../../clauses/clause.ts';
import { isMachine, isPlaceNoun, isSource, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { EVERYDAY } from '../../words/everyday.ts';
import { FAULT } from '../../words/faults.ts';
import { NO_THINGS } from '../../words/no-things.ts';
import { singular } from '../../words/nouns.ts';
import { PERSONS } from '../../words/persons.ts';
import { NAMED } from '../../words/quantities.ts';
import { isTool } from '../lib/fields.ts';
import type { Telling } from '../telling.ts';
import { about } from './about.ts';

/** What a state is said of, and the item from which the state is told. */
export interface Borne { parts: Thing[]; from: number }

/** Pieces that everything has: said alone, they are of what was spoken of ("the ends are gone"). */
const PIECE = /^(ends?|edges?|tips?|corners?|sides?|face|faces|threads?|inside|outside|bottom|top|middle|paint|holes?|lips?|rims?)$/;

/**
 * The parts that a clause known to tell a state tells it of. Its own subject may be a thing that neither the shop nor the trade knows ("impeller eye", "suction side"), for
 * the words said of it are those that are said of parts; what is said without one ("looks brand new", "not a mark on it") is of what was spoken of before.
 */
export function bearer(t: Telling): Borne | undefined {
  const c = t.clause, own = c.subj.filter(s => !s.carried && s.from >= c.from), opens = c.items.findIndex(i => !/^(be|cc|mark|intj)$/.test(i.t));
  if (t.pointed) { const last = t.pointed.at(-1)!, at = c.items.findLastIndex(i => i.from <= last.from && last.from < i.to); return { parts: [...t.pointed], from: at < 0 ? opens : at + 1 }; }
  const flaw = own.length === 1 && FAULT.test(own[0]!.name.split(' ').at(-1)!) && c.items[opens]?.t !== 'np' || own[0]?.np?.quant === 'no';
  if (own.length && !flaw && !(own.every(s => PIECE.test(s.name)) && c.items.find(i => i.np)?.np === own[0]!.np)) {
    const parts = own.filter(s => mayBear(t, s));
    return parts.length ? { parts, from: c.items.findLastIndex(i => parts.some(p => i.from >= p.from && i.to <= p.to)) + 1 } : undefined;
  }
  const before = flaw || own.length || (!c.subj.length && c.pred === 'verb' && !c.who) ? spokenOf(t) : undefined;
  if (before) return { parts: [before], from: opens };
  const parts = about(t, false), here = parts.filter(p => !p.carried || p.np?.stands && p.from >= c.from), named = c.items.findLastIndex(i => here.some(p => i.from >= p.from && i.to <= p.to));
  const start = c.items.findIndex((i, k) => k > named && !/^(be|cc|mark)$/.test(i.t) && !(i.t === 'pron' && !here.length));
  return parts.length && start >= 0 ? { parts, from: start } : undefined;
}

/** Whether a finding may be told of a thing by its name: no person, seller, stuff, machine or what everybody knows that no machine has. */
export function mayBear(t: Telling, s: Thing): boolean {
  const words = s.name.split(' '), head = words.at(-1)!, mine = /^(my|your|his|her)$/.test(t.sheet.tokens[s.np?.from ?? s.from]?.low ?? '');
  if (s.name === '' || PERSONS.test(s.name) || NAMED.test(s.name) || isStuff(s.name) || isMachine(t.sheet, s.name) || s.np && (isSource(s.np) || isPlaceNoun(s.np) && !s.np.known) || isTool(s.name)) return false;
  if (partLike(t.sheet, s.name)) return true;
  return words.length > 1 ? PIECE.test(head) || BODILY.test(head) || ![head, singular(head)].some(w => EVERYDAY.has(w) || NO_THINGS.has(w)) : BODILY.test(head) && !mine;
}

/** Pieces of machines that are named after those of a body: with "my" in front they are the person's. */
const BODILY = /^(dog|finger|leg|foot|feet|ear|eye|nose|knee|arm|back|cheek|tongue|jaw)s?$/;

/** The part that the clause before told of, else what was spoken of. */
function spokenOf(t: Telling): Thing | undefined {
  const last = t.told.findLast(x => t.clauses.slice(Math.max(0, t.at - 2), t.at).includes(x.clause)), topic = t.memory.topic();
  const name = last && ('part' in last.entry ? last.entry.part : 'item' in last.entry ? last.entry.item : undefined) || (topic?.machine ? undefined : topic?.name);
  return name ? { ...(topic?.name === name ? topic : { from: t.clause.from, to: t.clause.from, plural: /s$/.test(name) }), name, carried: true } : undefined;
}
