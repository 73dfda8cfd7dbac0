import type { Entry } from '../../../domain/model/entry.ts';
import { isMachine, partLike } from '../../clauses/name-kinds.ts';
import { CONDITION } from '../../words/conditions.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
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

const MODIFIES = /^(dead|paper|wafer|bone|razor|rock|very|a|bit|little|wee|all|both|still|quite|pretty|badly|slightly|nearly|good|nice|and|but|as|like|new|so|so-so|too|enough|just|only|well|fairly|mostly|totally|completely|clean|right|solid|through|up|out|over|in|places|here|there|otherwise|near|enough|worse|for|wear|the)$/;
const NO_FLAW = /^no (?:signs? of )?(?:marks?|play|wear|cracks?|pitting|pits|scor(?:es|ing)|ridges?|rust|leaks?|slop|damage|movement|float|spark|compression|burrs?|chips?|corrosion)(?: (?:at all|anywhere|whatsoever|to speak of))?$/;

/** "riving knife: bent", "pinion, crown and both side gears: no marks": after a colon nothing but the state of what the heading names. */
export function headed(t: Telling): Entry[] | undefined {
  const c = t.clause, before = previous(t), text = lowText(t);
  if (c.join !== ':' || c.neg || c.asks || c.sub || /^(i|we|he|she|they|it|you|that)$/.test(c.who ?? '') || !before || before.verb || before.pred !== 'none' || !before.subj.length || before.subj.some(s => s.carried || s.machine || isMachine(t.sheet, s.name) || !partLike(t.sheet, s.name))) return undefined;
  const words = text.split(' ');
  const state = (w: string): boolean => CONDITION.has(w) && !verbForms(w).some(f => /^(past|part)$/.test(f.form) && isClass(f.base, 'work') && !isClass(f.base, 'fail'));
  if (!NO_FLAW.test(text) && !(words.length < 7 && words.some(state) && words.every(w => state(w) || MODIFIES.test(w)))) return undefined;
  return before.subj.map(s => make(s.name, text, verdictIn(text)));
}
