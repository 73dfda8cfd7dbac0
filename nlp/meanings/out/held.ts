import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause, Thing } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { bare } from '../../clauses/as-said.ts';
import { isMachine, isSource, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { nounClasses } from '../../words/nouns.ts';
import { PERSONS } from '../../words/persons.ts';
import { TRADE_ENDING } from '../../words/sources.ts';
import { isClass } from '../../words/verbs.ts';
import { dayIn } from '../lib/day.ts';
import { trim } from '../lib/fields.ts';
import { moneyClause } from '../lib/money.ts';
import { spanForward } from '../lib/reach.ts';
import { lowText, type Telling } from '../telling.ts';
import { isPart, proper } from './place.ts';
import { purpose } from './purpose.ts';
import { tells } from './tells.ts';

/**
 * Who works for the shop has it or has come for it: "the welder has both brackets since Tuesday", "my brother has the carb at his place, he's
 * rebuilding it", "the blaster picked up the frame this morning".
 */
export function heldBy(t: Telling, c: Clause): Entry[] | undefined {
  const who = c.items.find(i => i.t !== 'adv' && i.t !== 'mark' && i.t !== 'cc'), np = who?.np;
  if (!who || !np || np.stands || isPart(t, np.said) || moneyClause(t, c) || !c.obj.length) return undefined;
  const worked = worksOnIt(t), text = lowText(t), trade = isSource(np) || TRADE_ENDING.test(np.said), person = PERSONS.test(np.said) || proper(t, np);
  const has = c.pred === 'have' && (!c.verb || c.verb.base === 'get');
  const takes = /^(collect|pick|fetch|take)$/.test(c.verb?.base ?? '') && /^(past|part)$/.test(c.verb!.form ?? '') && !c.passive && !c.prt.includes('off') && !/\bfor (me|us)\b/.test(text) && (WORKS.test(np.said) || person && /\b(to (have|get) (a )?\w+|to \w+ (it|them)|for (a )?\w+ing)\b/.test(text) && purpose(c) !== undefined);
  const theirs = WORKS.test(np.said) && c.obj.every(o => /^(the|my|our|both|all)$/.test(t.sheet.tokens[o.np?.from ?? o.from]!.low));
  if (has ? !(trade || person) || !worked && !theirs && !SO_LONG.test(text) && !HIS_PLACE.test(text) : !takes) return undefined;
  const own = (o: Thing): boolean => partLike(t.sheet, o.name) && !isMachine(t.sheet, o.name) && !isStuff(o.name) && !/^(no|some|any|several)$/.test(o.np?.quant ?? '');
  const parts = c.obj.filter(o => own(o) && (SO_LONG.test(text) || !has || o.carried || o.np?.known || nounClasses(o.name.split(' ').at(-1)!).has('part')));
  if (!parts.length) return undefined;
  const reach = t.clauses.slice(t.at, spanForward(t, n => tells(t, n), 3) + 1);
  const until = reach.map((r, n) => (n === 0 && has && /\b(since|last|yesterday|ago|on|been)\b/.test(text) ? undefined : dayIn(t, r, true))).find(Boolean);
  return parts.map(p => trim({ kind: 'out', part: p.name, where: bare(textOf(t.sheet, who.from, nameEnd(c, who))), until, do: purpose(c) ?? worked }) as Entry);
}
/** Trades that work on what is brought to them and sell nothing of their own. */
const WORKS = /\b(welder|grinder|machinist|blacksmith|smith|fabricator|blaster|plater|painter|rewinder|upholsterer|electrician|rebuilder|reliner|balancer|turner|sharpener|saw doctor|galvaniser|platers|grinders|tinsmith|panel beater|coater|engineer|machine shop|engine shop|radiator shop|body shop|paint shop|chrome shop|starter shop)s?$/;
const SO_LONG = /\b(since|for (a|the|two|three|four|five|six) (day|week|month|fortnight|year)s?|a (week|fortnight|month)|still|at the (moment|minute))\b/;
/** "at his place", "over in her workshop": his, not ours. */
const HIS_PLACE = /\b(at|in|over at|up at|down at|round at|over in|back at) (his|her|their) (own )?(place|shop|workshop|shed|garage|yard|barn|bench|works)\b/;
/** "…, he's rebuilding it": what whoever has it does to it. */
const worksOnIt = (t: Telling): string | undefined => { const n = t.clauses[t.at + 1]; return n && /^(he|she|they)$/.test(n.who ?? '') && /^(ing|base)$/.test(n.verb?.form ?? '') && isClass(n.verb!.base!, 'work') && n.obj.some(o => o.carried) && !n.neg ? purpose(n) : undefined; };
/** "the lad from the garage": with where he is found. */
function nameEnd(c: Clause, who: Item): number {
  let k = c.items.indexOf(who) + 1;
  while (k < c.vi && c.items[k] && /^(from|at|in|down|up|of|with)$/.test(c.items[k]!.low) && c.items[k + 1]?.np) k += 2;
  return c.items[k - 1]!.to;
}
