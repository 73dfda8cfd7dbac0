import { isKnownPart } from '../../dimensions/part/known.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { PERSONS } from '../../words/persons.ts';
import { COMMON } from '../../words/common.ts';
import { singular } from '../../words/nouns.ts';
import { MEASURES } from '../../words/gauging.ts';
import { COUNTED, NAMED } from '../../words/quantities.ts';
import { lowText, type Telling } from '../telling.ts';
import { inFull, inThousandths, unitsOf } from './figure-units.ts';
import { figuresOf, type Figure } from './figures.ts';
import { opening } from './gauge-state.ts';
import { namesPart } from './named.ts';
import { labelOf, type Label } from './label.ts';
import { BY_WORD, suits } from './quantity.ts';
import { nearest, partOf, whichIsPart } from './gauged-part.ts';
import { byNature, byVerb, byWord, mayBeBare, natural } from './gauged-what.ts';

const INCHES = /^(gap|clearance|play|float|end float|end play|free play|free travel|travel|sag|backlash|lash|diameter|od|id|length|bore|thickness|width|depth|height|runout|wear|slack|taper|lift|step|ring gap|end gap|side clearance|interference|stroke)$/;
/** A figure of a clause, with what it was read of; `was`: as it had been before. */
export interface Gauged { part: string; what: string; value: number; unit?: string; was?: boolean }

/** Readings of a clause that is all figures: each with the part, quantity and spot that its own words name, else those of the figure or heading before it. */
export function gauged(t: Telling, c: Clause, brought = false): Gauged[] | undefined {
  const figures = figuresOf(t.sheet, c);
  if (!figures.length || c.pred === 'verb' && !brought && !MEASURES.test(c.verb!.base ?? '')) return undefined;
  if (tallied(c) || c.who === 'person' && figures.every(f => f.bare)) return undefined; // "my neighbour runs two"
  const state = opening(t, c);
  state.of = state.part;
  const first = c.subj[0];
  const fronted = first && !((state.headed || state.what !== undefined && state.part !== undefined) && first.np?.stands) && first.from >= figures[0]!.lead[0] && first.to <= figures[0]!.from && (first.np?.stands || isKnownPart(t.sheet.ctx.parts, first.name)) && partLike(t.sheet, first.name) ? first.name : undefined;
  inFull(figures, `${lowText(t)} ${state.what ?? ''}`);
  inThousandths(figures, state, t.sheet);
  const units = unitsOf(figures, state);
  const out: Gauged[] = [];
  let book = false;
  if (c.pred === 'verb' && !brought && (c.verb!.base === 'put' && !c.prt.includes('out') || secondHand(c))) return undefined;
  figures.forEach((f, n) => {
    const lead = n === 0 ? nearest(t, f.lead, state) : labelOf(t.sheet, ...f.lead), tail = labelOf(t.sheet, ...f.tail, true);
    if (f.bare && !f.unit && state.unit === 'count') return;
    if (lead.book || tail.book && f.tail[1] - f.tail[0] > 0 && n === figures.length - 1 && figures.length > 1) { book = true; if (n === 0) state.of = state.part = partOf(t, lead, tail, state); return; }
    if (/^(new|nominal|max|min|maximum|minimum)$/.test(t.sheet.tokens[f.to]?.low ?? '') && t.sheet.tags[f.to + 1] !== 'noun') { book = true; state.of = state.part = partOf(t, lead, tail, state) ?? state.part; state.what ??= lead.what; state.unit ??= f.unit; return; } // "212 mm new"
    if (n > 0 && state.where !== undefined && tail.part && !tail.where && !lead.part && /^(at|in|near|by)$/.test(t.sheet.tokens[f.to]?.low ?? '')) { tail.where = `${t.sheet.tokens[f.to]!.low} the ${tail.part}`; delete tail.part; } // "2.183 at the saw end and 2.187 at the pulley"
    const own = lead.what ?? tail.what;
    const part = n === 0 && fronted && !NAMED.test(fronted) && (!lead.part || lead.part === fronted || fronted.endsWith(` ${lead.part}`)) && !lead.which ? fronted : partOf(t, lead, tail, state);
    const unit = f.unit ?? units[n];
    const verbal = byVerb(t, f, unit);
    const what = (own && suits(own, unit) ? own : undefined) ?? verbal ?? (n > 0 || state.what && (state.headed || inherits(t, c, lead)) ? natural(state.what && suits(state.what, unit) ? state.what : undefined, part) : undefined) ?? byWord(t, unit) ?? byNature(c, part, f, unit);
    const turns = f.bare && !Number.isInteger(f.value) && COUNTED.has(singular(t.sheet.tokens[f.to]?.low ?? ''));
    const counted = countedIn(t, f) ?? (f.bare && Number.isInteger(f.value) && n > 0 ? state.counted : undefined);
    if (part && counted) { state.counted = counted; state.part = part; out.push({ part, what: counted, value: f.value, unit: 'count' }); return; }
    if (part && turns) { out.push({ part, what: t.sheet.tokens[f.to]!.low, value: f.value, unit: 'count' }); return; }
    if (!part || !what || /^(reading|measurement)$/.test(what) || !namesPart(t.sheet, part) && COMMON.has(singular(part.split(' ').at(-1)!)) || f.bare && !mayBeBare(f, what, own !== undefined || verbal !== undefined || state.headed === true, unit, n > 0 || state.unit !== undefined || state.what !== undefined)) return;
    const where = tail.where ?? lead.where ?? (lead.which && !whichIsPart(t, state.part, lead.which) ? `at the ${lead.which}` : undefined);
    const was = /^(from)$/.test(t.sheet.tokens[f.from - 1]?.low ?? '') && (figures[n + 1] !== undefined || /\b(up|down) from$/.test(t.sheet.tokens.slice(f.from - 2, f.from).map(x => x.low).join(' '))); // "from nineteen thou to six"
    out.push({ ...(was ? { was } : {}), part, what: where && where !== what && !(what === 'charge' && where === 'charging') ? `${what} ${where}` : what, value: f.value, ...(unit ? { unit } : f.bare && f.places >= 3 && f.value < 60 && INCHES.test(what) || f.bare && !Number.isInteger(f.value) && f.places === 0 && INCHES.test(what) ? { unit: 'in' } : {}) });
    state.part = part; state.what = what; state.where = where; state.unit = unit ?? state.unit;
  });
  return out.length || figures.length > 1 || book ? out : undefined;
}

/** "twelve turns off the nut", "17 threads showing": counted where a screw is measured by how far it is turned or stands out. */
function countedIn(t: Telling, f: Figure): string | undefined {
  if (/^turns?$/.test(f.unit ?? '')) return 'turns';
  const low = (k: number): string => t.sheet.tokens[k]?.low ?? '', showing = /^(showing|left|proud|visible|exposed|out|in|above|past|beyond|through|sticking|poking|standing)$/;
  return f.unit === 'tpi' && /^threads?$/.test(low(f.to - 1)) ? `threads ${showing.test(low(f.to)) ? low(f.to) : ''}`.trim() : undefined;
}

/** "thirty-one are good", "the remaining five are worn": how many are so is no figure of the gauge before. */
const tallied = (c: Clause): boolean => {
  const be = c.items.findIndex(i => i.t === 'be'), lead = c.items.slice(0, Math.max(be, 0));
  const half = c.items.findIndex(i => /^half\b/.test(i.low) && (i.f?.dim === 'number' || i.np !== undefined));
  if (c.pred === 'have' && half >= 0 && c.items.slice(half + 1).some(i => i.t === 'adj' || i.t === 'verb' && i.form === 'part') && !dims(c.items, 'measure').length) return true; // "has half its crown burnt away"
  return c.pred === 'be' && lead.some(i => i.f?.dim === 'number' || i.np?.stands && i.np.count !== undefined) && c.items.slice(be + 1).every(i => !i.f) && c.items.slice(be + 1).some(i => i.t === 'adj' || i.t === 'verb');
};

/** "my neighbour reckons the head takes 60": another's word. */
export const secondHand = (c: Clause): boolean => c.items.some((x, k) => x.t === 'verb' && /^(reckon|claim|swear|believe|guess|bet|suppose)$/.test(x.base ?? '') && c.items.slice(0, k).some(p => p.np)) || c.items.some((x, k) => x.t === 'verb' && /^(say|reckon|claim|tell|swear|figure|think|guess|suppose|believe|bet)$/.test(x.base ?? '') && c.items.slice(0, k).some(p => p.np && PERSONS.test(p.np.said) || /^(he|she|they|somebody|someone|everybody|i)$/.test(p.low)))
  || c.who === 'person' && c.items.some(x => /^(claims?|says|reckons|swears|tells)$/.test(x.low));

/** "right one's an inch and a quarter", "rear main 1.9965": a fragment that goes on from the figure before it measures the same. */
const inherits = (t: Telling, c: Clause, lead: Label): boolean => c.join === ':' || (c.pred === 'none' || c.pred === 'be' || c.pred === 'have' || c.pred === 'verb' && /^(make|read|show|mike|measure|come|give|get|check|run|sit|pull|blow|go|drop)$/.test(c.verb?.base ?? '') && (c.who !== undefined || c.subj.some(s => s.np?.stands || s.carried))) && lead.what === undefined && !BY_WORD.some(([re]) => re.test(lowText(t, c)));
