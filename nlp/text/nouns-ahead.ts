import type { Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { ARTICLE, AUX_BE, AUX_HAVE, MODAL, PREP } from '../words/grammar.ts';
import { nounClasses, singular } from '../words/nouns.ts';
import { NAMED } from '../words/quantities.ts';
import { verbForms } from '../words/verbs.ts';
import { nominal } from './nominal.ts';
import { isNumberWord } from './number-words.ts';

/** The first token from here on that is no noun. */
const pastNouns = (tokens: readonly Token[], from: number, solid: ReadonlySet<number>): number => {
  let i = from;
  while (i < tokens.length && (nominal(tokens, i, solid) || solid.has(i))) i++;
  return i;
};

/** Whether a noun run from here is all of what is said between its marks. */
export function wholeStretch(tokens: readonly Token[], i: number, solid: ReadonlySet<number>): boolean {
  const to = pastNouns(tokens, i + 1, solid);
  return (i === 0 || /^[.:;!?]$/.test(tokens[i - 1]!.low)) && /^[.:]$/.test(tokens[to]?.low ?? '');
}

/** "greasing bearings is a dirty job": a plural before "is" is what is done to, not what is. */
export function gerundOf(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  const i = pastNouns(tokens, from, solid);
  return /^(is|'s|was)$/.test(tokens[i]?.low ?? '') && singular(tokens[i - 1]!.low) !== tokens[i - 1]!.low;
}

/** "crank pulley 5 inch", "fan belt: …": the noun phrase from here is measured or is a heading, so it is no object. */
export function figureAhead(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  const i = pastNouns(tokens, from, solid);
  const low = tokens[i]?.low ?? '';
  return /^(\d|[:–—-]$)/.test(low) || isNumberWord(low);
}

/** Whether a comma closes the nouns from here, as in a list of things. */
export function listAhead(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  const i = pastNouns(tokens, from, solid);
  return i > from && tokens[i]?.low === ',';
}

/** Whether a colon closes the nouns from here, which are then a heading. */
export function headingAhead(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  const i = pastNouns(tokens, from, solid);
  return i > from && tokens[i]?.low === ':';
}

/** Whether the noun phrase from here is followed by a verb or a state, so that it is a subject and not an object. */
export function finiteAhead(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  let i = from;
  while (i < tokens.length && (nominal(tokens, i, solid) || solid.has(i)) && !(i > from && tellsFigure(tokens, i, solid))) i++;
  let on = i;
  while (/^(on|of|in|for|from|off)$/.test(tokens[on]?.low ?? '')) { on++; while (on < tokens.length && (ARTICLE.has(tokens[on]!.low) || nominal(tokens, on, solid) || solid.has(on))) on++; }
  if (/^(i|we)$/.test(tokens[on]?.low ?? '') && verbForms(tokens[on + 1]?.low ?? '').some(f => f.form === 'past')) return true; // "pin boss on the bucket i welded"
  const low = tokens[i]?.low ?? '';
  if (i > from && i < tokens.length && tellsFigure(tokens, i, solid)) return true;
  if (/^(all|both|each)$/.test(low) && verbForms(tokens[i + 1]?.low ?? '').some(f => f.form === 'past')) return true; // "rod journals all came in at…"
  return AUX_BE.has(low) || AUX_HAVE.has(low) || MODAL.has(low) || low === "'s" || CONDITION.has(low) || /^(off|on|out|in|came|got|wants?|needs?)$/.test(low)
    || verbForms(low).some(f => f.form !== 'base') && !PREP.has(low) || /^\d/.test(low) && NAMED.test(tokens[i - 1]?.low ?? '') || isNumberWord(low) && NAMED.test(tokens[i - 1]?.low ?? '');
}

/** Whether something was done to the nouns from here, and nothing more is said than where or with what: they are a subject without "is". */
export function doneAhead(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  const i = pastNouns(tokens, from, solid);
  const forms = verbForms(tokens[i]?.low ?? '');
  return forms.some(f => f.form === 'part') && !forms.some(f => f.form === 'base') && !ARTICLE.has(tokens[i + 1]?.low ?? '') && !/^(it|them)$/.test(tokens[i + 1]?.low ?? '');
}

/** Whether "is" or the like follows the nouns from here, which are then a subject. */
export function isAhead(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  const i = pastNouns(tokens, from, solid);
  return /^(is|are|was|were)$/.test(tokens[i]?.low ?? '');
}

/** Whether the noun run from here ends what is said, or only its place follows. */
export function standsAlone(tokens: readonly Token[], from: number, solid: ReadonlySet<number>): boolean {
  let i = from;
  while (i < tokens.length && !PREP.has(tokens[i]!.low) && (nominal(tokens, i, solid) || solid.has(i))) i++;
  return i >= tokens.length || /^([.,;:!?]|in|on|at|under|behind|inside)$/.test(tokens[i]!.low);
}

const TELLS = /^(mike|mic|measure|read|gauge|check|test|weigh|draw|pull|make|show|run|lift|crack|pop|open|idle|rev|top|sag|charge|blow|pump|kick|come|work|register|clock|vent|bypass|sit|settle|tick|turn|spin|stand|leak|drop|float|rock|lean|bow|stretch|wear|start|cut)s?$/;
/** "the mains mike out at two and a quarter", "valve cracks off at 1900": a verb that agrees with the noun before it and leads on to a figure. */
export function tellsFigure(tokens: readonly Token[], i: number, solid: ReadonlySet<number>): boolean {
  const low = tokens[i]!.low, before = tokens[i - 1]?.low ?? '';
  if (i === 0 || !TELLS.test(low) || solid.has(i) || nounClasses(`${before} ${low}`).size || /s$/.test(low) !== (singular(before) === before)) return false;
  let k = i + 1;
  while (/^(out|off|up|down|in|over|open|at|to|around|about|near|nearly|just|only|roughly|a|an|between|under|less|more|than|back|by|itself)$/.test(tokens[k]?.low ?? '') && k < i + 5) k++;
  const led = tokens.slice(i + 1, k).some(t => /^(at|to|between|by|around|about|under|over)$/.test(t.low));
  return (led || /^(mike|mic|measure|read|weigh|draw|show|register|make|clock|gauge)s?$/.test(low)) && (/^\.?\d/.test(tokens[k]?.low ?? '') || isNumberWord(tokens[k]?.low ?? '') || /^(half|quarter|minus)$/.test(tokens[k]?.low ?? ''));
}
