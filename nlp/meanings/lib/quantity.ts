import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { said } from '../../clauses/as-said.ts';
import { isMachine } from '../../clauses/name-kinds.ts';
import type { Found } from '../../types.ts';
import { nounClasses, singular } from '../../words/nouns.ts';
import { BY_UNIT } from '../../words/gauging.ts';
import { NAMED } from '../../words/quantities.ts';
import { measurable, spokenOf } from './measurable.ts';
import { namesPart } from './named.ts';
import { lowText, type Telling, type Told } from '../telling.ts';

export const BY_WORD: readonly (readonly [RegExp, string])[] = [
  [/\bthick(ness)?\b/, 'thickness'], [/\blong\b|\blength\b/, 'length'], [/\bwide\b|\bwidth\b/, 'width'], [/\bdeep\b|\bdepth\b/, 'depth'], [/\b(tall|high|height)\b/, 'height'], [/\bacross\b|\bdiameter\b|\bdia\b/, 'diameter'],
  [/\bout of round\b/, 'out of round'], [/\bout of true\b|\brun-?out\b|\bruns? (out\b|.{1,20} out\b)/, 'runout'], [/\bend ?play\b/, 'end play'], [/\bend ?float\b/, 'end float'], [/\bfree travel\b/, 'free travel'], [/\bfree play\b/, 'free play'], [/\bbacklash\b/, 'backlash'],
  [/\bclearance\b/, 'clearance'], [/\bcompression\b/, 'compression'], [/\boversize\b/, 'oversize'], [/\bundersize\b/, 'undersize'], [/\bworn\b|\bwear\b/, 'wear'], [/\bgap\b/, 'gap'], [/\bslack\b/, 'slack'], [/\bsag\b/, 'sag'], [/\bbore\b/, 'bore'], [/\bplay\b/, 'play'], [/\btoe\b/, 'toe-in'], [/\bapart\b/, 'spacing'], [/\b(pulled|pulls) .* vacuum|\bvacuum\b/, 'vacuum'],
];
const FAMILY: readonly (readonly [RegExp, RegExp])[] = [[/^running time$/, /^h$/], [/pressure|compression|vacuum/, /^(psi|bar|kPa)$/], [/torque/, /^(lb-ft|lb-in|N·m)$/], [/voltage/, /^V$/], [/current|draw/, /^A$/], [/resistance/, /^[kM]?Ω$/], [/temperature/, /^°/], [/^(?:(?:ring|end|side|free|tip|valve|piston|axial|radial) )?(lift|travel|play|float|gap|bore|od|id|diameter|length|width|height|depth|thickness|stroke|clearance|backlash|wear|wobble|runout|step|bow|drop|offset)(?: (?:at|in|on) .*)?$/, /^(in|ft|mm|m|mil|cm)$/]];
/** A quantity named beside a figure of another kind is not what it measures: "lifts at 148 psi". */
export const suits = (what: string, unit: string | undefined): boolean => unit === undefined || FAMILY.every(([w, u]) => !w.test(what) || u.test(unit));

export interface Quantity { part: string; what: string; unit?: string }

/** What a figure measures and on what part, from the nouns and the verb around it; undefined when the clause does not say. */
export function quantityOf(t: Telling, c: Clause, f: Found, k: number): Quantity | undefined {
  if (/^(not|never)$/.test(t.sheet.tokens[f.from - 1]?.low ?? '')) return undefined; // "3 foot, not 2"
  const unit = f.dim === 'measure' ? f.value.unit : f.dim === 'percent' ? '%' : undefined;
  const apiece = /^(each|apiece)$/.test(t.sheet.tokens[f.to]?.low ?? '') ? c.items.slice(0, k).findLast(i => i.np?.count !== undefined)?.np?.name : undefined;
  if (apiece && unit) return { part: apiece, what: BY_WORD.find(([re]) => re.test(lowText(t)))?.[1] ?? BY_UNIT[unit] ?? 'length', unit };
  const evident = measuring(c);
  const named = namedIn(t, c, k, unit);
  if (f.dim === 'number' && !named?.what) {
    const last = lastTold(t, c);
    if (last?.kind !== 'reading' || last.what === 'running time' || !/^(drop|rise|fall|read|climb|be|sit|go|come|measure)$/.test(c.verb?.base ?? 'be') || c.subj.length > 0 && !c.subj.some(s => s.carried) && c.pred !== 'none' || Number.isInteger(f.value.value) && last.unit === undefined) return undefined;
    return { part: last.part, what: last.what + qualifier(t, c, k), ...(last.unit ? { unit: last.unit } : {}) };
  }
  if (f.dim === 'thread' && !named?.what) return undefined;
  if (unit === '%' && !named?.what) return undefined;
  const part = named?.part ?? partBeside(t, c);
  if (!part || !evident && !named?.what && !BY_UNIT[unit ?? '']) return undefined;
  const words = `${lowText(t)}`;
  const what = named?.what ?? sameAs(t, c, unit) ?? BY_WORD.find(([re, w]) => re.test(words) && suits(w, unit))?.[1] ?? (unit !== undefined ? BY_UNIT[unit] : undefined) ?? (/^(measure|mike|be|read)$/.test(c.verb?.base ?? '') && c.verb ? 'size' : undefined);
  if (!what) return undefined;
  return { part, what: what + qualifier(t, c, k), ...(unit !== undefined ? { unit } : f.dim === 'thread' || f.dim === 'number' ? { unit: /gap|clearance|play|travel|sag|backlash|diameter|length|bore|thick|width|depth|lash|runout/.test(what) ? 'in' : undefined } : {}) } as Quantity;
}

/** The last entry told up to a clause: what the clauses after it tell may be known already. */
const lastTold = (t: Telling, c: Clause): Entry | undefined => t.told.reduce<Told | undefined>((last, x) => (x.clause.from <= c.from && (!last || x.clause.from >= last.clause.from) ? x : last), undefined)?.entry;

/** "…is 1 5/16 thick, the right one's an inch and a quarter": the same thing measured on the next part. */
function sameAs(t: Telling, c: Clause, unit: string | undefined): string | undefined {
  const last = lastTold(t, c);
  return last?.kind === 'reading' && last.unit === unit && (c.pred === 'be' || c.pred === 'none' || c.pred === 'have') && !BY_WORD.some(([re]) => re.test(lowText(t))) ? last.what : undefined;
}

const measuring = (c: Clause): boolean => c.pred === 'be' || c.pred === 'have' || c.pred === 'none' || /^(measure|read|mike|get|show|be|have|hold|make|sit|draw|weigh|check|find|run|give|pull|test|see|set|register|gauge|clock|come|drop|count|take|blow|turn|do|put)$/.test(c.verb?.base ?? '');

/** The quantity said by name ("flywheel end play", "gap on the points"), with the part that it is of. */
function namedIn(t: Telling, c: Clause, k: number, unit: string | undefined): { part?: string; what: string } | undefined {
  const nps = c.items.flatMap((i, n) => (i.np ? [{ np: i.np, n }] : []));
  for (const { np, n } of nps.sort((a, b) => Math.abs(a.n - k) - Math.abs(b.n - k))) {
    const words = np.said.split(' ');
    for (let cut = 0; cut < words.length; cut++) {
      const tail = words.slice(cut).join(' ');
      const name = NAMED.test(tail) ? tail : NAMED.test(words.slice(cut).map(singular).join(' ')) ? words.slice(cut).map(singular).join(' ') : undefined;
      if (!name || !suits(name, unit) || name === 'charge' && unit !== 'V' || name === 'weight' && !/^(lb|kg|g)$/.test(unit ?? '')) continue;
      const ownedBy = /^(.+)'s (\w+)$/.exec(words.slice(0, cut).join(' '));
      const before = ownedBy && !namesPart(t.sheet, ownedBy[2]!) ? ownedBy[1]! : words.slice(0, cut).join(' ');
      if (ownedBy && before !== words.slice(0, cut).join(' ')) return { what: `${ownedBy[2]} ${name}`, part: before }; // "the coil's primary resistance"
      const owner = ownerOf(t, c, n);
      const part = before && !/^(the|a|some|about|running|total|good|cold|hot|static|open|right|left|mid|full|half)$/.test(before) ? (owner ? `${owner} ${before}` : before) : owner;
      return { what: name, ...(part ? { part: part } : {}) };
    }
  }
  for (const s of c.subj.filter(x => x.carried || !c.items.some(i => i.np))) {
    const words = s.name.split(' ');
    for (let cut = 1; cut < words.length; cut++) if (NAMED.test(words.slice(cut).join(' ')) && suits(words.slice(cut).join(' '), unit)) return { what: words.slice(cut).join(' '), part: words.slice(0, cut).join(' ') };
  }
  return undefined;
}

/** "end play in the crank", "gap at the points", "the crank's end play". */
function ownerOf(t: Telling, c: Clause, n: number): string | undefined {
  const prep = c.items[n + 1], np = c.items[n + 2]?.np;
  if (prep && np && /^(on|in|at|of|between|for|across|under)$/.test(prep.low) && np.nameFrom > 0 && !/^(top|bottom|end|front|back|nose|middle|centre|center|idle|edge|rim|skirt|load|rest|moment)$/.test(np.said) && !isMachine(t.sheet, np.name) && !np.stands) return np.name;
  return undefined;
}

/** The part a bare figure is of: the subject, the object of "measured", a part after "on"; else what was last named. */
function partBeside(t: Telling, c: Clause): string | undefined {
  const own = [...c.subj, ...c.obj].find(s => s.name && !nounClasses(s.name).has('quantity') && measurable(t.sheet, s.name));
  if (own) return own.name;
  const on = c.items.findIndex((i, n) => /^(on|in|at|of|for|across|between|under|from)$/.test(i.low) && c.items[n + 1]?.np && !c.items[n + 1]!.np!.stands && measurable(t.sheet, c.items[n + 1]!.np!.name) && !/^(top|bottom|end|rim|middle|centre|center|edge|side|front|back)$/.test(c.items[n + 1]!.np!.said));
  if (on >= 0) return c.items[on + 1]!.np!.name;
  return spokenOf(t)?.name;
}

/** "at the top", "with the lights on": tells one of two figures from the other, and stays with what was measured. */
function qualifier(t: Telling, c: Clause, k: number): string {
  const end = c.items.findIndex((i, n) => n > k && (i.t === 'dim' && n > k || i.low === ','));
  const stop = end < 0 ? c.items.length : end;
  const p = c.items.findIndex((i, n) => n > k && n < stop && (i.low === 'at' && (/^(top|bottom|middle|centre|center|end|idle|front|back|rear|skirt|nose|rim|flange|edge|root|tip|small end|big end|(far|near|drive|outer|inner|top|bottom|front|rear|back|left|right|other|free|non-drive) end|fast \w+|full \w+|half \w+|tickover)$/.test(c.items[n + 1]?.np?.said ?? '') || c.items[n + 1]?.f?.dim === 'measure')));
  if (p >= 0) return ` ${said(t.sheet, c.items[p]!.from, c.items[p + 1]!.to)}`;
  const w = c.items.findIndex((i, n) => n < k && i.low === 'with' && c.items[n + 1]?.np && /^(on|off|running)$/.test(c.items[n + 2]?.low ?? ''));
  return w >= 0 ? ` ${said(t.sheet, c.items[w]!.from, c.items[w + 2]!.to)}` : '';
}
