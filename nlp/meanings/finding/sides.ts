import type { Entry } from '../../../domain/model/entry.ts';
import { CONDITION } from '../../words/conditions.ts';
import { SIDES } from '../../words/sides.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, previous, type Telling } from '../telling.ts';
import { make } from './part.ts';

/** "swing jaw bushes: left tight, right sloppy", "tyres: front good, rear bald": each side of what was named, with its state. */
export function sides(t: Telling): Entry[] | undefined {
  const c = t.clause, before = previous(t);
  if (c.verb || c.neg || c.asks || c.sub || /\d/.test(lowText(t))) return undefined;
  const pieces = lowText(t).split(/ ?[,;] ?| and | but /).map(p => p.replace(/^(and|but|the) /, '').trim()).filter(Boolean);
  const heads = before && c.join === ':' && before.subj.length === 1 && !before.verb ? before.subj[0]!.name : t.memory.topic()?.plural ? t.memory.topic()!.name : undefined;
  if (pieces.length < 2 || !heads) return undefined;
  const read = pieces.map(p => /^(\S+)(?: one)?(?: (?:is|was|'s))? (.+)$/.exec(p));
  if (!read.every(m => m && SIDES.has(m[1]!) && m[2]!.split(' ').some(w => CONDITION.has(w)) && m[2]!.split(' ').length < 5) || new Set(read.map(m => m![1])).size !== read.length) return undefined;
  return read.map(m => make(t.memory.sided(m![1]!, t.sheet) ?? `${m![1]} ${heads}`, m![2]!, verdictIn(m![2]!)));
}
