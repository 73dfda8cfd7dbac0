import { isKnownPart } from '../../dimensions/part/known.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import { isMachine, isStuff, partLike } from '../../clauses/things.ts';
import { PERSONS } from '../../words/persons.ts';
import { snap } from '../../dimensions/part/snap.ts';
import { COMMON } from '../../words/common.ts';
import { singular } from '../../words/nouns.ts';
import { COUNTED, NAMED } from '../../words/quantities.ts';
import { lowText, type Telling } from '../telling.ts';
import { figuresOf, type Figure } from './figures.ts';
import { namesPart } from './named.ts';
import { labelOf, type Label } from './label.ts';
import { BY_WORD, suits } from './quantity.ts';

/** What a figure of that unit is, where nothing nearer says so. */
const BY_UNIT: Record<string, string> = {
  psi: 'pressure', bar: 'pressure', 'lb-ft': 'torque', 'lb-in': 'torque', 'N·m': 'torque', V: 'voltage', A: 'current', 'Ω': 'resistance', '°F': 'temperature', '°C': 'temperature', rpm: 'speed', mil: 'film', lb: 'weight', kg: 'weight',
};
/** What is measured on a part by its nature, when only a length is given. */
const BY_PART: readonly (readonly [RegExp, string])[] = [
  [/\b(points|plug|plugs|igniter|breaker)$/, 'gap'], [/\b(tappets?|valves?|rockers?)$/, 'clearance'], [/\b(rings?)$/, 'gap'],
  [/\b(bush|bushes|bushing|bushings|sleeve|guide|guides|cylinder|cylinders|liner|liners|barrel|bore|bores|bearing|bearings)$/, 'bore'],
  [/(journal|journals|pin|pins|crankpin|kingpin|kingpins|shaft|spindle|stem|stems|drum|drums|pivot|piston|pistons|rod|axle|bar|pulley|sheave|rotor|disc|main|mains)$/, 'diameter'],
  [/\b(plate|gasket|shim|lining|linings|pack|pad|leaf|disc)s?$/, 'thickness'], [/\b(spring|rope|cable|pipe|chain|belt|hose)s?$/, 'length'],
];
const LENGTH = /^(in|mm|ft|cm|m|mil)$/;
const INCHES = /^(gap|clearance|play|float|end float|end play|free play|free travel|travel|sag|backlash|lash|diameter|od|id|length|bore|thickness|width|depth|height|runout|wear|slack|taper|lift|step|ring gap|end gap|side clearance|interference|stroke)$/;
const MEASURED = /^(measure|read|mike|be|show|gauge|check|clock|get|make|find|have|give|see|come|hold|sit|run|draw|pull|put|weigh|register|test|lift|open|pop|crack|blow|cut|charge|drop|lose|move|sag|stand|close|take|do|rock|wear|up|say|do)$/;
const VERB_WHAT: readonly (readonly [RegExp, RegExp, string])[] = [
  [/\b(lifts?|lifted|pops?|popped|cracks?|blows?|blew)( off| open)? at\b/, /^(psi|bar)$/, 'lifting pressure'], [/\b(opens?|opened|opening) at\b/, /^(psi|bar)$/, 'opening pressure'], [/\b(opens?|opened|opening) at\b/, /^°/, 'opening temperature'],
  [/\bcuts? in\b/, /./, 'cut-in'], [/\bcuts? out\b/, /./, 'cut-out'], [/\bruns? out\b|\brunning out\b|\bout of true\b/, LENGTH, 'runout'], [/\bproud\b/, LENGTH, 'protrusion'], [/\bsags?\b/, LENGTH, 'sag'],
  [/\bclosed (up|in)\b/, LENGTH, 'closed up'], [/\bundersize\b|\bunder size\b|\b(under|down)\b[ .]*$/, LENGTH, 'undersize'], [/\boversize\b|\bover size\b|\bover\b[ .]*$/, LENGTH, 'oversize'], [/\bout of round\b/, LENGTH, 'out of round'], [/\bworn\b|\bwear\b/, LENGTH, 'wear'],
];

interface State { part?: string; what?: string; unit?: string; /** The figure before was less than a tenth of an inch. */ small?: boolean }

/** Readings of a clause that is all figures: each with the part, quantity and spot that its own words name, else those of the figure or heading before it. */
export function gauged(t: Telling, c: Clause): { part: string; what: string; value: number; unit?: string }[] | undefined {
  const figures = figuresOf(t.sheet, c);
  if (!figures.length || c.pred === 'verb' && !MEASURED.test(c.verb!.base ?? '')) return undefined;
  if (tallied(c)) return undefined;
  const state = opening(t, c);
  const first = c.subj[0];
  const fronted = first && first.from >= figures[0]!.lead[0] && first.to <= figures[0]!.from && (first.np?.stands || isKnownPart(t.sheet.ctx.parts, first.name)) && partLike(t.sheet, first.name) ? first.name : undefined;
  inThousandths(figures, state);
  const units = unitsOf(figures, state);
  const out: { part: string; what: string; value: number; unit?: string }[] = [];
  let book = false;
  if (c.pred === 'verb' && (c.verb!.base === 'put' && !c.prt.includes('out') || secondHand(c))) return undefined;
  figures.forEach((f, n) => {
    const lead = labelOf(t.sheet, ...f.lead), tail = labelOf(t.sheet, ...f.tail, true);
    if (f.bare && !f.unit && state.unit === 'count') return;
    if (lead.book || tail.book && f.tail[1] - f.tail[0] > 0 && n === figures.length - 1 && figures.length > 1) { book = true; return; }
    const own = lead.what ?? tail.what;
    const part = n === 0 && fronted && !NAMED.test(fronted) ? fronted : partOf(t, lead, tail, state);
    const unit = f.unit ?? units[n];
    const what = (own && suits(own, unit) ? own : undefined) ?? byVerb(t, f, unit) ?? (n > 0 || state.what && inherits(t, c, lead) ? natural(state.what, part) : undefined) ?? byWord(t, unit) ?? byNature(c, part, f, unit);
    const turns = f.bare && !Number.isInteger(f.value) && COUNTED.has(singular(t.sheet.tokens[f.to]?.low ?? ''));
    if (part && /^turns?$/.test(f.unit ?? '')) { out.push({ part, what: 'turns', value: f.value, unit: 'count' }); return; }
    if (part && turns) { out.push({ part, what: t.sheet.tokens[f.to]!.low, value: f.value, unit: 'count' }); return; }
    if (!part || !what || /^(reading|measurement)$/.test(what) || !namesPart(t.sheet, part) && COMMON.has(singular(part.split(' ').at(-1)!)) || f.bare && !mayBeBare(f, what, own !== undefined, unit, n > 0 || state.unit !== undefined)) return;
    const where = tail.where ?? lead.where ?? (lead.which && !whichIsPart(t, state.part, lead.which) ? `at the ${lead.which}` : undefined);
    out.push({ part, what: where && where !== what ? `${what} ${where}` : what, value: f.value, ...(unit ? { unit } : f.bare && f.places >= 3 && f.value < 60 && INCHES.test(what) || f.bare && !Number.isInteger(f.value) && f.places === 0 && INCHES.test(what) ? { unit: 'in' } : {}) });
    state.part = part; state.what = what; state.unit = unit ?? state.unit;
  });
  return out.length || figures.length > 1 || book ? out : undefined;
}

/** "thirty-one are good", "the remaining five are worn": how many are so is no figure of the gauge before. */
const tallied = (c: Clause): boolean => {
  const be = c.items.findIndex(i => i.t === 'be'), lead = c.items.slice(0, Math.max(be, 0));
  const half = c.items.findIndex(i => /^half\b/.test(i.low) && (i.f?.dim === 'number' || i.np !== undefined));
  if (c.pred === 'have' && half >= 0 && c.items.slice(half + 1).some(i => i.t === 'adj' || i.t === 'verb' && i.form === 'part') && !dims(c.items, 'measure').length) return true; // "has half its crown burnt away"
  return c.pred === 'be' && lead.some(i => i.f?.dim === 'number' || i.np?.stands && i.np.count !== undefined) && c.items.slice(be + 1).every(i => !i.f) && c.items.slice(be + 1).some(i => i.t === 'adj' || i.t === 'verb');
};

/** "my neighbour reckons the head takes 60": another's word. */
export const secondHand = (c: Clause): boolean => c.items.some((x, k) => x.t === 'verb' && /^(say|reckon|claim|tell|swear|figure|think|guess|suppose|believe|bet)$/.test(x.base ?? '') && c.items.slice(0, k).some(p => p.np && PERSONS.test(p.np.said) || /^(he|she|they|somebody|someone|everybody|i)$/.test(p.low)))
  || c.who === 'person' && c.items.some(x => /^(claims?|says|reckons|swears|tells)$/.test(x.low));

/** What is known before the first figure: the heading ("Spindle runout:"), or the reading that the clause goes on from. */
function opening(t: Telling, c: Clause): State {
  const before = t.clauses[t.at - 1], last = t.told.at(-1);
  if (before && c.join === ':' && !before.asks && before.sub === undefined) {
    const h = labelOf(t.sheet, before.from, before.to), heading = t.clauses[t.at - 2];
    const above = !h.part && heading && (heading as Placed).sentence === (c as Placed).sentence ? labelOf(t.sheet, heading.from, heading.to) : undefined;
    return { part: h.part ?? above?.part ?? before.subj.find(s => !s.machine)?.name, what: h.what ?? above?.what };
  }
  const near = last?.entry.kind === 'reading' && before && (last.clause === before || t.told.at(-2)?.clause === before) && !before.asks && Math.abs((before as Placed).sentence - (c as Placed).sentence) <= 1 ? last.entry : undefined;
  const subj = c.subj.filter(s => !s.machine && partLike(t.sheet, s.name) && !/^(hot|cold|top|bottom|middle)$/.test(s.name)).map(s => ownPart(s.name, t.sheet.ctx.parts)).find(Boolean);
  const topic = subj ?? t.memory.topic()?.name;
  return near ? { part: near.part, what: near.what?.replace(/ (at|with|on|in|over) .*| (hot|cold|cranking)$/, ''), unit: near.unit, small: (near.value ?? 1) < 0.1 } : { part: topic };
}

/** The part in "number one bore", "clutch pedal free play"; empty for a quantity alone. */
const ownPart = (name: string, known: readonly string[] | undefined): string => { if (isKnownPart(known, name)) return name; const w = name.split(' '); for (let k = 0; k < w.length; k++) if (NAMED.test(w.slice(k).join(' ')) || NAMED.test(w.slice(k).map(singular).join(' '))) return w.slice(0, k).join(' '); return name; };

/** "right one's an inch and a quarter", "rear main 1.9965": a fragment that goes on from the figure before it measures the same. */
const inherits = (t: Telling, c: Clause, lead: Label): boolean => c.join === ':' || (c.pred === 'none' || c.pred === 'be' || c.pred === 'have') && lead.what === undefined && !BY_WORD.some(([re]) => re.test(lowText(t, c)));

/** "stem 0.3105, guide 0.3135": what is a diameter on a shaft is a bore in a bush. */
const natural = (what: string | undefined, part: string | undefined): string | undefined => {
  const own = part && /^(diameter|bore)$/.test(what ?? '') ? BY_PART.find(([re]) => re.test(part))?.[1] : undefined;
  return own && /^(diameter|bore)$/.test(own) ? own : what;
};

/** Units by figure: a bare one takes that of the figure before it, else the next one's ("18, 20 and 19 thou"). */
function unitsOf(figures: readonly Figure[], state: State): (string | undefined)[] {
  return figures.map((f, n) => {
    if (f.unit) return f.unit;
    const before = figures.slice(0, n).findLast(x => x.unit)?.unit ?? state.unit;
    const after = figures.slice(n + 1).find(x => x.unit)?.unit;
    return before && !thouNeeded(before, f) ? before : before === undefined && after && !thouNeeded(after, f) ? after : undefined;
  });
}
/** "twelve thou, fifteen", "18, 20 and 19 thou": a whole number beside thousandths means thousandths. */
function inThousandths(figures: Figure[], state: State): void {
  figures.forEach((f, n) => {
    const beside = figures.slice(0, n).findLast(x => x.unit) ?? (state.unit ? undefined : figures.slice(n + 1).find(x => x.unit));
    if (!f.bare || !Number.isInteger(f.value) || f.value < 1 || !(beside ? beside.thou : state.unit === 'in' && state.small && f.value > 1)) return;
    f.value = Math.round(f.value * 100) / 100_000; f.unit = 'in'; f.thou = true;
  });
}
const thouNeeded = (unit: string, f: Figure): boolean => unit === 'in' && Number.isInteger(f.value) && f.value > 1;

function partOf(t: Telling, lead: Label, tail: Label, state: State): string | undefined {
  const own = lead.part ?? tail.part;
  const which = lead.which ?? tail.which;
  if (own && !isMachine(t.sheet, own) && !isStuff(own)) return own;
  if (which && state.part && whichIsPart(t, state.part, which)) return sided(t, state.part, which);
  return state.part && !isMachine(t.sheet, state.part) ? state.part : undefined;
}

const PAIRED = /^(top|bottom|left|right|inlet|exhaust|intake|primary|secondary|first|second|third|fourth|inner|outer|other|lh|rh|nearside|offside|near side|off side|upper|lower)$/;
/** "left 3, right 2" tells parts apart; "front 3, rear 7" of one thing tells where on it. */
const whichIsPart = (t: Telling, part: string | undefined, which: string): boolean => {
  if (!part) return false;
  const head = part.split(' ').at(-1)!;
  return PAIRED.test(which) || singular(head) !== head || /\b(front|rear|back)\b/.test(part) || snap(`${which} ${part}`, t.sheet.ctx).known === true;
};
export function sided(t: Telling, part: string, which: string): string {
  const words = part.split(' ').filter(w => !PAIRED.test(w) && !/^(front|rear|back)$/.test(w));
  if (!words.length) return which;
  const name = `${which} ${[...words.slice(0, -1), singular(words.at(-1)!)].join(' ')}`;
  const known = snap(name, t.sheet.ctx);
  return known.known ? known.name : name;
}

const byVerb = (t: Telling, f: Figure, unit: string | undefined): string | undefined => VERB_WHAT.find(([re, u]) => re.test(t.sheet.tokens.slice(f.lead[0], f.tail[1]).map(x => x.low).join(' ')) && unit !== undefined && u.test(unit))?.[2];
const byWord = (t: Telling, unit: string | undefined): string | undefined => (unit === undefined ? undefined : BY_WORD.find(([re, w]) => re.test(lowText(t)) && suits(w, unit))?.[1]);

/** By the unit, or for lengths by the part's nature where the verb says that it was measured. */
function byNature(c: Clause, part: string | undefined, f: Figure, unit: string | undefined): string | undefined {
  if (unit && BY_UNIT[unit]) return BY_UNIT[unit];
  const measured = /^(measure|mike|gauge|read|check|clock|be|get|come|make)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : c.pred === 'none' ? 'be' : ''));
  if (!part || !measured || !(unit && LENGTH.test(unit) || f.bare && (f.places >= 3 || f.places === 2 && c.verb?.base === 'measure'))) return undefined;
  const small = f.value < 0.1 && (unit === 'in' || f.bare);
  return BY_PART.find(([re, what]) => re.test(part) && !(small && /^(bore|diameter|length)$/.test(what)))?.[1] ?? (/^(measure|mike|gauge)$/.test(c.verb?.base ?? '') ? 'size' : undefined);
}

/** A number without a unit is a reading where its quantity is said and it is plainly no count, or where the one before it had the unit. */
function mayBeBare(f: Figure, what: string, said: boolean, unit: string | undefined, follows: boolean): boolean {
  if (unit) return true;
  if (Number.isInteger(f.value) && f.places === 0) return /pressure|compression|timing|dwell|advance|rpm|speed|temperature|gravity/.test(what) && (said || follows);
  return said || follows || f.places >= 2;
}
