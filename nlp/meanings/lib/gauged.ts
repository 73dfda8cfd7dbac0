import { isKnownPart } from '../../dimensions/part/known.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { isMachine, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { PERSONS } from '../../words/persons.ts';
import { snap } from '../../dimensions/part/snap.ts';
import { COMMON } from '../../words/common.ts';
import { singular } from '../../words/nouns.ts';
import { BY_PART, BY_UNIT, BY_VERB, MEASURES } from '../../words/gauging.ts';
import { COUNTED, NAMED } from '../../words/quantities.ts';
import { lowText, type Telling } from '../telling.ts';
import { inFull, inThousandths, unitsOf } from './figure-units.ts';
import { figuresOf, type Figure } from './figures.ts';
import { opening, type State } from './gauge-state.ts';
import { namesPart } from './named.ts';
import { labelOf, type Label } from './label.ts';
import { BY_WORD, suits } from './quantity.ts';

const LENGTH = /^(in|mm|ft|cm|m|mil)$/;
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
  inThousandths(figures, state);
  const units = unitsOf(figures, state);
  const out: Gauged[] = [];
  let book = false;
  if (c.pred === 'verb' && !brought && (c.verb!.base === 'put' && !c.prt.includes('out') || secondHand(c))) return undefined;
  figures.forEach((f, n) => {
    const lead = n === 0 ? nearest(t, f.lead, state) : labelOf(t.sheet, ...f.lead), tail = labelOf(t.sheet, ...f.tail, true);
    if (f.bare && !f.unit && state.unit === 'count') return;
    if (lead.book || tail.book && f.tail[1] - f.tail[0] > 0 && n === figures.length - 1 && figures.length > 1) { book = true; if (n === 0) state.of = state.part = partOf(t, lead, tail, state); return; }
    if (/^(new|nominal|max|min|maximum|minimum)$/.test(t.sheet.tokens[f.to]?.low ?? '') && t.sheet.tags[f.to + 1] !== 'noun') { book = true; state.of = state.part = partOf(t, lead, tail, state) ?? state.part; state.what ??= lead.what; state.unit ??= f.unit; return; } // "212 mm new"
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
    state.part = part; state.what = what; state.unit = unit ?? state.unit;
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

const singularLast = (name: string): string => name.replace(/\S+$/, w => singular(w));
const plural = (word: string): string => (singular(word) !== word ? word : `${word}s`);

/** "my neighbour reckons the head takes 60": another's word. */
export const secondHand = (c: Clause): boolean => c.items.some((x, k) => x.t === 'verb' && /^(reckon|claim|swear|believe|guess|bet|suppose)$/.test(x.base ?? '') && c.items.slice(0, k).some(p => p.np)) || c.items.some((x, k) => x.t === 'verb' && /^(say|reckon|claim|tell|swear|figure|think|guess|suppose|believe|bet)$/.test(x.base ?? '') && c.items.slice(0, k).some(p => p.np && PERSONS.test(p.np.said) || /^(he|she|they|somebody|someone|everybody|i)$/.test(p.low)))
  || c.who === 'person' && c.items.some(x => /^(claims?|says|reckons|swears|tells)$/.test(x.low));

/** "right one's an inch and a quarter", "rear main 1.9965": a fragment that goes on from the figure before it measures the same. */
const inherits = (t: Telling, c: Clause, lead: Label): boolean => c.join === ':' || (c.pred === 'none' || c.pred === 'be' || c.pred === 'have' || c.pred === 'verb' && /^(make|read|show|mike|measure|come|give|get|check|run|sit|pull|blow|go|drop)$/.test(c.verb?.base ?? '') && (c.who !== undefined || c.subj.some(s => s.np?.stands || s.carried))) && lead.what === undefined && !BY_WORD.some(([re]) => re.test(lowText(t, c)));

/** "stem 0.3105, guide 0.3135": what is a diameter on a shaft is a bore in a bush. */
const natural = (what: string | undefined, part: string | undefined): string | undefined => {
  const own = part && /^(diameter|bore)$/.test(what ?? '') ? BY_PART.find(([re]) => re.test(part))?.[1] : undefined;
  return own && /^(diameter|bore)$/.test(own) ? own : what;
};

function partOf(t: Telling, lead: Label, tail: Label, state: State): string | undefined {
  const own = lead.part ?? tail.part;
  const which = lead.which ?? tail.which ?? otherSide(state.of, tail.where);
  const many = lead.part !== undefined && singular(lead.part.split(' ').at(-1)!) !== lead.part.split(' ').at(-1);
  if (many && tail.which && whichIsPart(t, lead.part, tail.which)) { state.of = lead.part; return sided(t, lead.part!, tail.which); } // "track rod ends, 17 threads on the left"
  const numbered = many ? lead.part : tail.part && state.of && singular(state.of.split(' ').at(-1)!) !== state.of.split(' ').at(-1) ? state.of : undefined;
  if (numbered && /^number \S+$/.test(tail.part ?? '')) { state.of = numbered; return `${tail.part} ${singularLast(numbered)}`; } // "camshaft lobes down to .238 on number 3"
  if (own && !isMachine(t.sheet, own) && !isStuff(own)) { state.of = own; return own; }
  if (which && state.of && whichIsPart(t, state.of, which)) return sided(t, state.of, which);
  if (lead.what && tail.what === 'bore') return 'bore'; // "a ridge of six thou at the top of the bore"
  return state.part && !isMachine(t.sheet, state.part) ? state.part : /^(oil pressure|idle speed|top speed)$/.test(lead.what ?? tail.what ?? '') ? 'engine' : undefined;
}

/** The words of the first figure: what stands after the last comma is nearer to it than what stands before ("injectors in, hold-downs 18 foot pounds", "tyre on the spreader, near side, 12 psi"). */
function nearest(t: Telling, [from, to]: [number, number], state: State): Label {
  const whole = labelOf(t.sheet, from, to), comma = t.sheet.tokens.slice(from, to).findLastIndex(x => x.low === ',');
  const near = comma < 0 ? {} : labelOf(t.sheet, from + comma + 1, to) as Label;
  if (near.part) return { ...whole, ...near };
  if (!near.which || !whole.part || !whichIsPart(t, whole.part, near.which)) return whole;
  state.of = whole.part;
  return { ...whole, part: undefined, which: near.which };
}

/** "60 percent on the front way, seventy on the rear": a side that the part before was told by, and the other one now. */
const otherSide = (of: string | undefined, where: string | undefined): string | undefined => {
  const side = /^(?:on|at) the (front|rear|back|top|bottom|inside|outside)$/.exec(where ?? '')?.[1];
  return side && of && OPPOSED.some(([a, b]) => (a.test(side) && b.test(of)) || (b.test(side) && a.test(of))) ? side : undefined;
};
const OPPOSED: readonly (readonly [RegExp, RegExp])[] = [[/\bfront\b/, /\b(rear|back)\b/], [/\btop\b/, /\bbottom\b/], [/\binside\b/, /\boutside\b/]];

const PAIRED = /^((left|right|near|off|nearside|offside|front|rear|top|bottom|inner|outer|inlet|exhaust|intake|cylinder) \S+|lefts|rights|fronts|rears|inners|outers|uppers|lowers|inlets|exhausts|intakes|tops|bottoms|seconds|thirds|middles|top|bottom|left|right|inlet|exhaust|intake|primary|secondary|first|second|third|fourth|inner|outer|other|lh|rh|nearside|offside|near side|off side|upper|lower|east|west|north|south)$/;
/** "left 3, right 2" tells parts apart; "front 3, rear 7" of one thing tells where on it. */
const whichIsPart = (t: Telling, part: string | undefined, which: string): boolean => {
  if (!part) return false;
  const head = part.split(' ').at(-1)!;
  return PAIRED.test(which) || singular(head) !== head || /\b(front|rear|back)\b/.test(part) || snap(`${which} ${part}`, t.sheet.ctx).known === true;
};
export function sided(t: Telling, part: string, which: string): string {
  const words = part.split(' ').filter(w => !PAIRED.test(w) && !/^(front|rear|back)$/.test(w));
  if (!words.length) return which;
  const many = /s$/.test(which) && singular(which) !== which, several = many || / (two|three|four|pair)$/.test(which), head = words.at(-1)!;
  const name = `${(many ? singular(which) : which).replace(/ (two|three|four|pair)$/, '')} ${[...words.slice(0, -1), several ? plural(head) : singular(head)].join(' ')}`;
  const known = snap(name, t.sheet.ctx);
  return known.known ? known.name : name;
}

/** What the verb says that the figure is; three decimals without a unit are inches to a machinist. */
const byVerb = (t: Telling, f: Figure, unit: string | undefined): string | undefined => {
  const text = t.sheet.tokens.slice(f.lead[0], f.tail[1]).map(x => x.low).join(' ');
  return BY_VERB.find(([re, u]) => re.test(text) && u.test(unit ?? (f.places >= 3 ? 'in' : '')))?.[2];
};
const byWord = (t: Telling, unit: string | undefined): string | undefined => (unit === undefined ? undefined : BY_WORD.find(([re, w]) => re.test(lowText(t)) && suits(w, unit))?.[1]);

/** By the unit, or for lengths by the part's nature where the verb says that it was measured. */
function byNature(c: Clause, part: string | undefined, f: Figure, unit: string | undefined): string | undefined {
  if (unit && BY_UNIT[unit]) return BY_UNIT[unit];
  const measured = /^(measure|mike|gauge|read|check|clock|be|get|come|make)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : c.pred === 'none' ? 'be' : ''));
  if (!part || !measured || !(unit && LENGTH.test(unit) || f.bare && (f.places >= 3 || f.places === 2 && c.verb?.base === 'measure' || f.places === 0 && !Number.isInteger(f.value) && f.value > 0.1))) return undefined;
  const small = f.value < 0.1 && (unit === 'in' || f.bare);
  if (small && c.pred === 'have' && !/^(i|we)$/.test(c.who ?? '') && /\b(bearing|bush|bushing|pin|joint|journal|slide|gib|fit)s?$/.test(part)) return 'clearance';
  return BY_PART.find(([re, what]) => re.test(part) && !(small && /^(bore|diameter|length)$/.test(what)))?.[1] ?? (/^(measure|mike|gauge)$/.test(c.verb?.base ?? '') ? 'size' : undefined);
}

/** A number without a unit is a reading where its quantity is said and it is plainly no count, or where the one before it had the unit. */
function mayBeBare(f: Figure, what: string, said: boolean, unit: string | undefined, follows: boolean): boolean {
  if (unit) return true;
  if (Number.isInteger(f.value) && f.places === 0) return /pressure|compression|timing|dwell|advance|rpm|speed|temperature|gravity|charge|freezing/.test(what) && (said || follows);
  return said || follows || f.places >= 2;
}
