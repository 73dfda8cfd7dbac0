import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { isMachine, isPlaceNoun, partLike } from '../../clauses/name-kinds.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { CONDITION } from '../../words/conditions.ts';
import { placeFrom } from '../lib/fields.ts';
import { lowText, type Telling } from '../telling.ts';

/** The place is said first, or told to whoever looks: "shelf three: brake drums", "coffee tin on the sill, that's where the shims live", "you'll find the jets in a jar". */
export function placeFirst(t: Telling): Entry[] | undefined {
  const c = t.clause, before = t.clauses[t.at - 1];
  const own = (list: Clause['subj']): Clause['subj'] => list.filter(s => partLike(t.sheet, s.name) && !isMachine(t.sheet, s.name) && !(s.np && isPlaceNoun(s.np)));
  if (c.who === 'you' && c.verb?.base === 'find' && /^(plan|maybe|deed)$/.test(c.reality) && !c.neg) {
    const place = placeFrom(t.sheet, c.items, c.vi + 1), things = own(c.obj);
    return place && things.length ? things.map(s => stow(s.name, place.where)) : undefined;
  }
  if (c.join === ':' && c.pred === 'none' && !c.verb && before && placeAlone(before) && !c.items.some(i => i.f || i.t === 'adj' && CONDITION.has(i.low))) {
    const things = own(c.subj);
    return things.length ? things.map(s => stow(s.name, textOf(t.sheet, before.from, before.to).replace(/[\s:]+$/, '').toLowerCase())) : undefined;
  }
  const says = /^(and )?(that's|that is|which is|is) where (?:i (?:put|keep|stuck|left|have|stashed|hid) )?(.+?)(?: (?:is|are|live|lives|go|goes|stay|sit|sits|'s))?(?: now)?$/.exec(c.sub === 'where' && before ? `${lowText(t, before)} where ${lowText(t, c)}`.replace(/ where where /, ' where ') : '');
  const at = says && t.clauses.slice(Math.max(0, t.at - 2), t.at).find(p => placeAlone(p));
  const things = own(c.subj.concat(c.obj).filter(s => !s.carried));
  if (!at || !things.length) return undefined;
  const k = t.told.findIndex(x => x.clause === at && x.entry.kind === 'stow');
  if (k >= 0) t.told.splice(k, 1);
  return things.map(s => stow(s.name.replace(/ (?:live|go|are|is)$/, ''), textOf(t.sheet, at.from, at.to).replace(/[\s,:]+$/, '')));
}

const stow = (part: string, where: string): Entry => ({ kind: 'stow', part, where }) as Entry;
/** A clause that is no more than a place: "shelf three", "coffee tin on the windowsill", "in the loft". */
const placeAlone = (c: Clause): boolean => {
  const np = c.items.find(i => i.np)?.np;
  return c.pred === 'none' && !c.verb && np !== undefined && isPlaceNoun(np) && c.items.every(i => i.np !== undefined || i.f?.dim === 'number' || /^(prep|prt|adv|mark|num|cc)$/.test(i.t));
};
