import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause, type Thing } from '../../clauses/clause.ts';
import { said } from '../../clauses/as-said.ts';
import { isMachine, partLike } from '../../clauses/name-kinds.ts';
import { ARTEFACTS } from '../../words/artefacts.ts';
import { FAULT } from '../../words/faults.ts';
import { EVERYDAY_PARTS } from '../../words/everyday-parts.ts';
import { PERSONS } from '../../words/persons.ts';
import { COMMON } from '../../words/common.ts';
import { nounClasses, singular } from '../../words/nouns.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { trim } from '../lib/fields.ts';
import { namesPart } from '../lib/named.ts';
import type { Verdict } from '../lib/verdict.ts';
import { lowText, type Telling } from '../telling.ts';

export const make = (part: string, condition: string, verdict?: Verdict): Entry => trim({ kind: 'finding', part, condition, verdict }) as Entry;
export const partsOf = (t: Telling, things: readonly Thing[]): Thing[] => things.filter(p => p.name && !(p.machine && !p.carried) && !isMachine(t.sheet, p.name) && partLike(t.sheet, p.name) && (namesPart(t.sheet, p.name) || ruined(t) || spokenOfShop(t, p)) && !(p.carried && FAULT.test(p.name)) && !othersOwn(t, p) && !/^(van|car|truck|ute|pickup|lorry|bus|bike|taxi|tin|can|bottle|jar|bucket|jug|kettle|paint tin)$/.test(p.name));

/** "Jim's engine", "my neighbour's mower": a person's, not the shop's. What a machine or a part owns is named without an article only where it has a name of its own. */
export function othersOwn(t: Telling, p: Thing): boolean {
  const owner = /^(.+?)'s /.exec(p.name)?.[1];
  if (owner === undefined) return false;
  if (PERSONS.test(owner)) return true;
  const lone = p.np !== undefined && t.sheet.tokens[p.np.from]?.low === owner && !owner.includes(' ');
  return lone && !nounClasses(owner).size && !(t.sheet.ctx.machines ?? []).some(m => m.toLowerCase().split(' ').includes(owner));
}

/** "had the chuck apart, scroll full of swarf": after what was just told of a part, a made thing that the trade's lists don't hold is a piece of it. */
const spokenOfShop = (t: Telling, p: Thing): boolean => !p.carried && t.told.at(-1)?.clause === t.clauses[t.at - 1] && /^(fit|work|finding)$/.test(t.told.at(-1)?.entry.kind ?? '') && ARTEFACTS.has(singular(p.name.split(' ').at(-1)!)) && !COMMON.has(singular(p.name.split(' ').at(-1)!));

/** "the gubbins is cracked": a name nobody knows counts only with a state that none but a part can be in. */
const ruined = (t: Telling): boolean => {
  const c = t.clause;
  if (c.pred === 'have') { const had = c.obj[0]?.np ?? c.items.slice(c.vi + 1).find(i => i.np)?.np; return had !== undefined && nounClasses(had.said.split(' ').at(-1)!).has('part') && (had.quant === 'no' || had.states.length > 0 || c.items[c.vi + 1]?.t === 'adj'); } // "the haydog has no spring"
  const word = c.pred === 'verb' ? c.verb : c.rest.find(i => i.t === 'adj' || i.t === 'verb');
  return word !== undefined && /(ed|en|nt|rn|wn)$/.test(word.low) && /^(be|none|verb)$/.test(c.pred) && verbForms(word.low).some(f => isClass(f.base, 'fail') && f.form !== 'base') && !c.obj.length && (!COMMON.has(singular(c.subj[0]?.name.split(' ').at(-1) ?? '')) || EVERYDAY_PARTS.test(c.subj[0]!.name) && !/^(my|his|her|your|their|our)$/.test(t.sheet.tokens[c.subj[0]!.np?.from ?? c.from]?.low ?? ''));
};

/** The words after "is", without days and the closing mark; a number of them stays in: "three cracked". */
export function condition(t: Telling, c: Clause, from: number): string {
  let end = c.to;
  const when = dims(c.items, 'when').find(f => f.to >= c.to - 1 && f.from > from);
  if (when) end = when.from;
  return said(t.sheet, from, end).replace(/^(?:still|just|only|now|all|really|actually|definitely)\s+(?=\w+$)/i, m => (/still|just/i.test(m) ? m : '')).replace(/\s+for (?:now|the moment|the time being|tonight)$/i, '').replace(/\s+(?:though|now|anyway|too|as well|either|today|on|at|in|of|mind you|mind|unfortunately|sadly|I think|i think|by the way)$/i, '').replace(/^(?:'s|is|are|was|were)\s+/, '').trim();
}

/** "three of them", "six tines": the count goes into the condition. */
export function counted(t: Telling, c: Clause): string {
  const thing = c.subj[0];
  const np = thing?.np;
  if (c.counted) return `${c.counted} `;
  if (c.who === 'one' && c.rest[0]?.t === 'adj' && c.subj.every(s => s.carried)) return 'one '; // "one good, one bent, one missing"
  if (/^(rest|others)$/.test(c.subj[0]?.np?.said ?? '')) return `${c.subj[0]!.np!.said} `;
  const text = lowText(t);
  const of = /^(?:\w+ )?(\w+) of (?:them|the|those|these|my)\b/.exec(text);
  if (of && !/^(all|most|some|none|bottom|top|end|inside|side|each|set|pair|edge|lot|back|front|both|rest)$/.test(of[1]!) && c.items.some(i => i.f?.dim === 'number' || i.np?.count !== undefined || i.t === 'num')) return `${of[1]} `;
  if (np?.count !== undefined && np.count > 1 && (!thing!.carried || np.stands)) return `${t.sheet.tokens.slice(np.from, np.stands ? np.to : np.nameFrom).map(x => x.low).filter(w => !/^(the|other|others|remaining|my|ones?)$/.test(w)).join(' ')} `;
  return '';
}
