import { phraseAt } from '../dimensions/part/phrase.ts';
import { UNIT } from '../dimensions/measure/units.ts';
import type { Sheet } from '../types.ts';

/**
 * Full stops that a recogniser wrote at a pause, inside a sentence: what stands before cannot end one ("lapped the. Exhaust one in") or what
 * follows cannot begin one ("half a bar. Of vacuum"). Gives the indices of their tokens. What only might be a sentence of its own is joined
 * where the note is plainly heard and not typed.
 */
export function softStops(sheet: Sheet): number[] {
  const heard = isHeard(sheet);
  return sheet.tokens.flatMap((t, i) => (t.low === '.' && i > 0 && i + 1 < sheet.tokens.length && (unended(sheet, i) || unbegun(sheet, i, heard) || heard && halfCondition(sheet, i)) ? [i] : []));
}

/** A recogniser's way of writing: no mark at the end, hums, or small letters at the head. */
const isHeard = (sheet: Sheet): boolean => !/[.!?)]\s*$/.test(sheet.text) || /\b(um|uh|er|erm)\b/i.test(sheet.text) || /^\s*\p{Ll}/u.test(sheet.text);

const IS_UNIT = new RegExp(`^${UNIT}$`);

const startOf = (sheet: Sheet, i: number): number => { let k = i; while (k > 0 && !/^[.?!;]$/.test(sheet.tokens[k - 1]!.low)) k--; return k; };
const endOf = (sheet: Sheet, i: number): number => { let k = i; while (k < sheet.tokens.length && !/^[.?!;]$/.test(sheet.tokens[k]!.low)) k++; return k; };

/** What stands before the stop asks for more: an article, a possessive, a preposition without its noun, a verb without its object, a number without its unit. */
function unended(sheet: Sheet, i: number): boolean {
  const { tokens, tags } = sheet, last = tokens[i - 1]!.low, from = startOf(sheet, i);
  if (/^(a|an|the|my|our|their|your|every|and|or)$/.test(last)) return true;
  const noun = opensNoun(sheet, i + 1);
  const asks = tokens.slice(from, i).some((_, k) => tags[from + k] === 'wh') || tags[from] === 'modal' || tags[from] === 'do';
  if (/^(of|with|from|into|at|for|than)$/.test(last) && noun && !asks) return !subjectAt(sheet, i + 1) || i - from < 3;
  if (tags[i - 1] === 'num' && IS_UNIT.test(tokens[i + 1]!.low) && (!subjectAt(sheet, i + 1) || /^(long|wide|thick|deep|high|across|square|round)$/.test(tokens[i + 2]?.low ?? ''))) return true;
  if (tags[i - 1] === 'be' && !asks && !tokens.slice(from, i - 1).some((_, k) => !['det', 'noun', 'num', 'prep', 'adv'].includes(tags[from + k]!))) return tags[i + 1] === 'adj' || tags[i + 1] === 'verb' || noun && !subjectAt(sheet, i + 1);
  return tags[i - 1] === 'verb' && i - 2 >= from && /^(i|we)$/.test(tokens[i - 2]!.low) && noun && !subjectAt(sheet, i + 1);
}

/** What follows the stop hangs on what was said: "of…", a bare object, a verb of being without its subject, a place or tool without a clause. */
function unbegun(sheet: Sheet, i: number, heard: boolean): boolean {
  const { tokens, tags } = sheet, next = tokens[i + 1]!.low, after = tags[i + 2], to = endOf(sheet, i + 1), from = startOf(sheet, i);
  if (tokens[to]?.low === '?') return false;
  const thing = i + 2 < to ? phraseAt(sheet, i + 2, to) : undefined;
  const tail = thing ? afterTime(sheet, thing.to) : -1;
  const alone = thing !== undefined && tokens[thing.to]?.low !== ',' && !subjectAt(sheet, thing.to);
  if (next === 'of') return alone;
  if (!heard) return false;
  if (/^(them|him|it|me)$/.test(next) && tags[i - 1] === 'verb' && tags[i - 2] !== 'be' && (after === undefined || /^(det|pron|mark|cc|prep|prt|adv|sub)$/.test(after)) && !(next === 'it' && after !== 'det')) return true;
  if (tags[i + 1] === 'be' && !/^(been|being|am)$/.test(next) && /^(det|adj|verb|prep|num)$/.test(after ?? '')) return !hasPredicate(sheet, sinceJoin(sheet, i, from), i) && !(thing && subjectAt(sheet, i + 2));
  if (!thing || tags[i + 1] !== 'prep' && tags[i + 1] !== 'prt' || /^(about|after|before|until|till|since|like|past|per)$/.test(next)) return false;
  const figure = sheet.found.some(f => f.from >= from && f.to === i && f.dim === 'span') && !hasPredicate(sheet, from, i);
  return alone && (figure || !subjectAt(sheet, tail)) && thingLike(sheet, thing.from, thing.to);
}

/** "if the barrel is out of round. I will need somebody": a condition that its stop cuts off from what hangs on it. */
function halfCondition(sheet: Sheet, i: number): boolean {
  const { tokens, tags } = sheet, from = startOf(sheet, i);
  let k = from;
  while (tags[k] === 'cc' || tags[k] === 'intj' || tags[k] === 'adv') k++;
  if (!/^(if|once|when)$/.test(tokens[k]?.low ?? '') || tokens[endOf(sheet, i + 1)]?.low === '?') return false;
  const verbs = tags.slice(k + 1, i).filter((t, n) => (t === 'verb' || t === 'be' || t === 'have' || t === 'modal' || t === 'do') && !/^(verb|be|have|modal|do|to|adv|neg)$/.test(tags[k + n] ?? '')).length;
  return verbs === 1 && !tokens.slice(k, i).some(t => t.low === ',') && (tags[i + 1] === 'pron' || tags[i + 1] === 'verb' || subjectAt(sheet, i + 1));
}

const opensNoun = (sheet: Sheet, k: number): boolean => /^(det|noun|num|adj)$/.test(sheet.tags[k] ?? '') && phraseAt(sheet, k, endOf(sheet, k)) !== undefined || sheet.found.some(f => f.from === k);

/** Skips days and adverbs. */
function afterTime(sheet: Sheet, k: number): number {
  let i = k;
  while (sheet.tags[i] === 'adv') i++;
  return i;
}

/** Whether a subject with its predicate stands at `k`. */
function subjectAt(sheet: Sheet, k: number): boolean {
  const { tokens, tags } = sheet;
  const thing = k < tokens.length ? phraseAt(sheet, k, endOf(sheet, k)) : undefined;
  if (!thing && tags[k] !== 'pron') return false;
  let i = thing ? thing.to : k + 1;
  while ((tags[i] === 'prep' || tags[i] === 'prt') && tags[i] !== undefined) { const of = phraseAt(sheet, i + 1, endOf(sheet, i)); if (!of) break; i = of.to; }
  while (tags[i] === 'adv' || tags[i] === 'neg') i++;
  return /^(be|have|modal|do|verb)$/.test(tags[i] ?? '') || tags[i] === 'adj' && thing !== undefined;
}

const sinceJoin = (sheet: Sheet, i: number, from: number): number => { let k = i; while (k > from && sheet.tags[k - 1] !== 'cc' && sheet.tags[k - 1] !== 'mark') k--; return k; };
const hasPredicate = (sheet: Sheet, from: number, to: number): boolean => sheet.tags.slice(from, to).some(t => /^(be|have|modal|do|verb)$/.test(t));
/** A thing and no turn of phrase ("in total", "for the moment"). */
const thingLike = (sheet: Sheet, from: number, to: number): boolean => sheet.tags[from] === 'det' || sheet.tags.slice(from, to).includes('num') || to - from > 1 || /s$/.test(sheet.tokens[to - 1]!.low);
