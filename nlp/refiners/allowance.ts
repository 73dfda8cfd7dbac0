import { isClosed } from '../text/nominal.ts';
import { isNumberWord } from '../text/number-words.ts';
import type { Token } from '../types.ts';
import { ARTEFACTS } from '../words/artefacts.ts';
import { CONDITION } from '../words/conditions.ts';
import { isTradeWord, nounClasses, singular } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import type { ExpectedName } from './expected.ts';
import type { Run } from './heard-run.ts';
import { GENERAL } from './part-slot.ts';
import { apart, change, type Sound, soundOf, weightOf } from './phones.ts';

/** The most that `allowance` may give a run for a name: little where they share no word, so that most names are done with by their sound. */
export function mostAllowed(run: Run, name: ExpectedName): number {
  if (name.bare.some(w => run.bare.includes(w))) return .3;
  const plain = run.bare.every(w => run.plain.has(w));
  if (run.n === 1) return name.words.length > 1 ? .06 : !plain ? .24 : run.slot === 'sure' ? .15 : noPart(run) ? .175 : 0;
  return Math.min(.26, .15 + (plain ? 0 : .08) + (run.slot ? .06 : 0) + (name.words[0]!.startsWith(run.words[0]!.slice(0, 4)) ? .08 : 0));
}

/**
 * How far apart the sounds may be for these words to have been that name. What stands for a plain meaning of their own takes from it (parts that the name
 * has not, small words, one everyday word alone); what speaks for the name gives (shared words, words that are none, a place where a part must stand).
 */
export function allowance(run: Run, { words: name, bare: want, sound }: ExpectedName): number {
  const { words, bare, tokens, at, n, slot } = run;
  const own = bare.filter((w, k) => !want.includes(w) && want[k] !== w);
  if (!own.length) return 0;
  const shared = bare.length - own.length;
  if (own.some(w => SIDES.has(w) || ORDINAL.test(w))) return 0;
  const missing = want.filter(w => !bare.includes(w));
  if (!missing.length || missing.length === 1 && own.some(w => w !== missing[0] && verbForms(w).some(f => verbForms(missing[0]!).some(g => g.base === f.base)))) return 0; // the name itself with a word after it; another form of the same verb
  if (words.length > 1 && SMALL_END.test(words.at(-1)!) && !mayEnd(words, tokens, at, n)) return 0;
  const foreign = own.filter(w => nounClasses(w).size > 0 && !name.join('').startsWith(w) && !name.join('').endsWith(w));
  const plain = own.every(w => run.plain.has(w));
  if (shared > 0 && want.length > shared && words.length === name.length) {
    // A name of as many words that shares some: what differs must itself sound alike.
    const differs = soundOf(own), meant = soundOf(missing), rest = apart(differs, meant, .5);
    const one = own.length === 1 ? own[0]! : '';
    // Another part's own word ("bearing cup" for "bearing cap") gives way only where it sounds the same; where a thing is put or kept ("clutch desk") stands before no part.
    const classes = nounClasses(one);
    const rhymed = rhymes(differs, meant);
    if (one && !(rhymed && [...classes].every(c => c === 'place')) && rest > (classes.size > 0 ? ([...classes].every(c => c === 'place') ? .12 : .03) : CONDITION.has(one) ? .12 : isTradeWord(one) ? .27 : 1)) return 0;
    const opens = at === 0 || /^([.,;:!?]|the|and|um|a)$/.test(tokens[at - 1]!.low);
    if (own.some(w => isClosed(w) && !SPLINTER.test(w) && !(opens && bare[0] === w && shared === 1 && words.length === 2 && !/s$/.test(words[1]!)) || GENERAL.test(w))) return 0;
    if (rhymed) return .24;
    if (rest > (plain ? shared > 1 ? .34 : .3 : .45) || differs.row[0] !== meant.row[0] && rest > .3) return 0;
    return plain ? .2 : .3;
  }
  if (own.every(w => isClosed(w)) && !own.some(w => SPLINTER.test(w))) return 0;
  let most = .1 + (sound.heavy >= 5 ? .05 : 0) + (shared ? .04 : 0) + (plain ? 0 : .08) + (slot ? .06 : 0);
  if (words.length === 1) {
    const w = words[0]!;
    if (name.length > 1) return .06;
    if (!plain) return Math.min(.24, most, .08 * (run.sound.heavy - 1.5));
    const next = tokens[at + 1]?.low ?? '.';
    const alone = !/^\p{L}/u.test(next) || isClosed(next) || CONDITION.has(next);
    if (noPart(run)) return w.startsWith(name.join('')) ? 0 : .175; // a trucker is no truck
    if (slot !== 'sure' || !alone || /^an?$/.test(tokens[at - 1]?.low ?? '') || isClosed(w) || SIDES.has(w) || CONDITION.has(w) || nounClasses(w).size || isTradeWord(w) || verbForms(w).some(f => isClass(f.base, 'fail'))) return 0;
    return .15;
  }
  const next = tokens[at + n]?.low ?? '', before = tokens[at - 1]?.low ?? '';
  if (plain && shared === 0) { // "a cool tour of the museum", "the phone rang"
    if (next === 'of') most -= .08;
    if (/^an?$/.test(before)) most -= .03;
    if (verbForms(words.at(-1)!).some(f => f.form === 'past') && !/^(is|are|was|were|'s|has|have|had|needs|wants|on|off|in|out|and)$/.test(next)) most -= .1;
    if (singular(words.at(-1)!) === words.at(-1) && singular(name.at(-1)!) !== name.at(-1) && !/[sz]$/.test(run.sound.row)) most -= .04;
  }
  if (foreign.includes(bare.at(-1)!) && !name.join('').startsWith(words[0]!)) most -= .05;
  most -= .05 * foreign.length + .03 * own.filter(w => isClosed(w) && !SPLINTER.test(w)).length;
  if (shared === 0 && name[0]!.startsWith(words[0]!.slice(0, 4)) && words[0]!.length >= 3) most += .08; // "mag needle", "radio later"
  return Math.min(.26, most);
}
/** "the plunder", "its quail", "number three quail": one everyday word where a thing is named that is no made thing and no one's calling, so that the shop's name of nearly its sound was said. */
function noPart({ words, tokens, at, n }: Run): boolean {
  const w = words[0]!, before = tokens[at - 1]?.low ?? '', next = tokens[at + n]?.low ?? '.';
  if (words.length > 1 || /(?:at|it)ors?$|i(?:st|cian)s?$/.test(w) || ARTEFACTS.has(singular(w)) || nounClasses(w).size || isTradeWord(w) || isClosed(w) || SIDES.has(w) || CONDITION.has(w) || verbForms(w).some(f => f.form !== 'base' && f.form !== 'ing')) return false;
  const named = /^(the|my|its|her|his|our|that|this|those|these|both|new|old)$/.test(before) || SIDES.has(before) || isNumberWord(before) || nounClasses(before).has('part');
  return named && (!/^\p{L}/u.test(next) || isClosed(next) || CONDITION.has(next) || verbForms(next).some(f => f.form !== 'base') || /^(um|uh|er|erm)$/.test(next));
}
/** "sister" for "twister": two syllables or more that differ only ahead of the first vowel; or one that opens with a sound made much the same ("bin" for "pin", "chair" for "share"). */
const rhymes = (a: Sound, b: Sound): boolean => {
  const ahead = (s: Sound): number => /^[^aeiou]+/.exec(s.row)?.[0].length ?? 0;
  const tail = a.row.slice(ahead(a));
  if (tail !== b.row.slice(ahead(b))) return false;
  return tail.replace(/[^aeiou]/g, '').length > 1 ? weightOf(tail) >= 2 : ahead(a) === 1 && ahead(b) === 1 && change(a.row[0]!, b.row[0]!) <= .4;
};
const ORDINAL = /^(first|second|third|fourth|fifth|last|next|other|spare)$/;
/** "got the not her off", not "help roll her in": a small word ends a name only inside a noun phrase of its own. */
function mayEnd(words: readonly string[], tokens: readonly Token[], at: number, n: number): boolean {
  const next = tokens[at + n]?.low ?? '', before = tokens[at - 1]?.low ?? '';
  if (/^(on|in|up|at|over|under|out|off)$/.test(words.at(-1)!)) return next === '' || /^[.,;:!?]$/.test(next) || /^(is|are|was|were|'s|has|needs|wants)$/.test(next);
  return !verbForms(words[0]!).length || /^(the|a|an|my|that|this|new|old|left|right|front|rear|both|two)$/.test(before) || /^(is|are|was|were|'s|has)$/.test(next);
}
const SMALL_END = /^(it|her|him|them|us|you|me|on|in|up|at|over|under|out|off|this|that|these)$/;
/** Small words that recognisers make of the ends of long ones: "beat her", "vac you", "magnet oh", "prime or". */
const SPLINTER = /^(her|or|you|oh|are|at|it|all|in|up|er|a|ate|this|less|us)$/;
