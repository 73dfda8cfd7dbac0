import { isMachine, isStuff } from '../../clauses/name-kinds.ts';
import { nameWords } from '../../../domain/model/names.ts';
import { knownNames } from '../../dimensions/part/known.ts';
import { snap } from '../../dimensions/part/snap.ts';
import { singular } from '../../words/nouns.ts';
import type { Telling } from '../telling.ts';
import type { State } from './gauge-state.ts';
import { labelOf, type Label } from './label.ts';

const singularLast = (name: string): string => name.replace(/\S+$/, w => singular(w));
const plural = (word: string): string => (singular(word) !== word ? word : `${word}s`);

/** The part that a figure is of, by the words before it (`lead`) and after it (`tail`), else by what was measured before; keeps in `state` what sides are told of. Undefined where nothing says it. */
export function partOf(t: Telling, lead: Label, tail: Label, state: State): string | undefined {
  const own = lead.part ?? tail.part;
  const which = lead.which ?? tail.which ?? otherSide(state.of, tail.where);
  const many = lead.part !== undefined && singular(lead.part.split(' ').at(-1)!) !== lead.part.split(' ').at(-1);
  if (many && tail.which && whichIsPart(t, lead.part, tail.which)) { state.of = lead.part; return sided(t, lead.part!, tail.which); } // "track rod ends, 17 threads on the left"
  const numbered = many ? lead.part : tail.part && state.of && singular(state.of.split(' ').at(-1)!) !== state.of.split(' ').at(-1) ? state.of : undefined;
  if (numbered && /^number \S+$/.test(tail.part ?? '')) { state.of = numbered; return `${tail.part} ${singularLast(numbered)}`; } // "camshaft lobes down to .238 on number 3"
  if (own && state.headed && state.of && !/^number /.test(state.of) && /^number \S+$/.test(own) && !knownNames(t.sheet.ctx.parts ?? []).holding(nameWords(own)).length) { return `${own} ${singularLast(state.of)}`; } // "big end clearances: number one two thou"
  if (own && !isMachine(t.sheet, own) && !isStuff(own)) { state.of = own; return own; }
  if (which && state.of && whichIsPart(t, state.of, which)) return sided(t, state.of, which);
  if (lead.what && tail.what === 'bore') return 'bore'; // "a ridge of six thou at the top of the bore"
  return state.part && !isMachine(t.sheet, state.part) ? state.part : /^(oil pressure|idle speed|top speed)$/.test(lead.what ?? tail.what ?? '') ? 'engine' : undefined;
}

/** The words of the first figure: what stands after the last comma is nearer to it than what stands before ("injectors in, hold-downs 18 foot pounds", "tyre on the spreader, near side, 12 psi"). */
export function nearest(t: Telling, [from, to]: [number, number], state: State): Label {
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
export const whichIsPart = (t: Telling, part: string | undefined, which: string): boolean => {
  if (!part) return false;
  const head = part.split(' ').at(-1)!;
  return PAIRED.test(which) || singular(head) !== head || /\b(front|rear|back)\b/.test(part) || snap(`${which} ${part}`, t.sheet.ctx).known === true;
};
/** A part's name with the side in place of the one that it had: "left" of "right front bearings" is "left bearing"; as the shop has it, where it does. */
export function sided(t: Telling, part: string, which: string): string {
  const words = part.split(' ').filter(w => !PAIRED.test(w) && !/^(front|rear|back)$/.test(w));
  if (!words.length) return which;
  const many = /s$/.test(which) && singular(which) !== which, several = many || / (two|three|four|pair)$/.test(which), head = words.at(-1)!;
  const name = `${(many ? singular(which) : which).replace(/ (two|three|four|pair)$/, '')} ${[...words.slice(0, -1), several ? plural(head) : singular(head)].join(' ')}`;
  const known = snap(name, t.sheet.ctx);
  return known.known ? known.name : name;
}
