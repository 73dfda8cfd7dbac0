import type { Clause } from '../../clauses/clause.ts';
import { BY_PART, BY_UNIT, BY_VERB } from '../../words/gauging.ts';
import { lowText, type Telling } from '../telling.ts';
import type { Figure } from './figures.ts';
import { BY_WORD, suits } from './quantity.ts';

const LENGTH = /^(in|mm|ft|cm|m|mil)$/;
/** "stem 0.3105, guide 0.3135": what is a diameter on a shaft is a bore in a bush. */
export const natural = (what: string | undefined, part: string | undefined): string | undefined => {
  const own = part && /^(diameter|bore)$/.test(what ?? '') ? BY_PART.find(([re]) => re.test(part))?.[1] : undefined;
  return own && /^(diameter|bore)$/.test(own) ? own : what;
};

/** What the verb says that the figure is; three decimals without a unit are inches to a machinist. */
export const byVerb = (t: Telling, f: Figure, unit: string | undefined): string | undefined => {
  const text = t.sheet.tokens.slice(f.lead[0], f.tail[1]).map(x => x.low).join(' ');
  return BY_VERB.find(([re, u]) => re.test(text) && u.test(unit ?? (f.places >= 3 ? 'in' : '')))?.[2];
};
/** What the words of the clause say that it is, where that is measured in the unit. */
export const byWord = (t: Telling, unit: string | undefined): string | undefined => (unit === undefined ? undefined : BY_WORD.find(([re, w]) => re.test(lowText(t)) && suits(w, unit))?.[1]);

/** By the unit, or for lengths by the part's nature where the verb says that it was measured. */
export function byNature(c: Clause, part: string | undefined, f: Figure, unit: string | undefined): string | undefined {
  if (unit && BY_UNIT[unit]) return BY_UNIT[unit];
  const measured = /^(measure|mike|gauge|read|check|clock|be|get|come|make)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : c.pred === 'none' ? 'be' : ''));
  if (!part || !measured || !(unit && LENGTH.test(unit) || f.bare && (f.places >= 3 || f.places === 2 && c.verb?.base === 'measure' || f.places === 0 && !Number.isInteger(f.value) && f.value > 0.1))) return undefined;
  const small = f.value < 0.1 && (unit === 'in' || f.bare);
  if (small && c.pred === 'have' && !/^(i|we)$/.test(c.who ?? '') && /\b(bearing|bush|bushing|pin|joint|journal|slide|gib|fit)s?$/.test(part)) return 'clearance';
  return BY_PART.find(([re, what]) => re.test(part) && suits(what, unit) && !(small && /^(bore|diameter|length)$/.test(what)))?.[1] ?? (/^(measure|mike|gauge)$/.test(c.verb?.base ?? '') ? 'size' : undefined);
}

/** A number without a unit is a reading where its quantity is said and it is plainly no count, or where the one before it had the unit. */
export function mayBeBare(f: Figure, what: string, said: boolean, unit: string | undefined, follows: boolean): boolean {
  if (unit) return true;
  if (Number.isInteger(f.value) && f.places === 0) return /pressure|compression|timing|dwell|advance|rpm|speed|temperature|gravity|charge|freezing/.test(what) && (said || follows);
  return said || follows || f.places >= 2;
}
