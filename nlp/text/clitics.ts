import { isNumberWord } from './number-words.ts';
import { CONDITION } from '../words/conditions.ts';
import { ADVERB, DET, NEGATIVE } from '../words/grammar.ts';
import { nounClasses, singular } from '../words/nouns.ts';
import { SINGLE } from '../words/single.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import type { Token } from '../types.ts';

/**
 * Clitics written without an apostrophe that only their neighbours give away: "its not bent", "ill weld it", "id like", "hell have it",
 * and a part's own "is" or "has" run into its name ("plungers finally out", "pedals got an inch"). Also the article of the north of England ("t'sump", "th'tank").
 */
export function openClitics(tokens: readonly Token[]): Token[] {
  return tokens.flatMap((t, i) => {
    const next = tokens[i + 1]?.low ?? '', prev = tokens[i - 1]?.low ?? '', after = tokens[i + 2]?.low ?? '';
    const article = /^th?['’](?=\p{L}{2}|$)/u.exec(t.low)?.[0].length;
    if (article) return article === t.low.length ? [{ ...t, low: 'the' }] : [{ ...t, text: t.text.slice(0, article), low: 'the', end: t.start + article }, { ...t, text: t.text.slice(article), low: t.low.slice(article), start: t.start + article }];
    const base = verbForms(next).some(f => f.form === 'base') || next === 'be' || next === 'have' || ADVERB.has(next);
    if (t.low === 'its' && statesIt(next, after)) return cut(t, 2, "'s");
    if (t.low === 'ill' && base && prev !== 'is' && prev !== 'feeling') return cut(t, 1, "'ll");
    if (t.low === 'lets' && base && (prev === '' || /^(and|so|then|[.,;!?])$/.test(prev))) return cut(t, 3, "'s");
    if (t.low === 'id' && (base || next === 'said')) return cut(t, 1, "'d");
    if (t.low === 'hell' && base && prev !== 'the' && prev !== 'like') return cut(t, 2, "'ll");
    if (t.low === 'shell' && /^(be|have|need|want|go|run|do|never)$/.test(next) && !DET.has(prev)) return cut(t, 3, "'ll");
    if (t.low === 'were' && /^(going|getting|gonna|out|nearly)$/.test(next) && !/s$/.test(prev)) return cut(t, 2, "'re");
    if (/^(tomorrow|today|tonight|(mon|tues|wednes|thurs|fri|satur|sun)day)s$/.test(t.low) && (CONDITION.has(next) || /^(going|to|looking|supposed|meant|wet|dry|fine|hot|sunny|windy)$/.test(next)) && !nounClasses(after).size) return cut(t, t.low.length - 1, "'s");
    if (/[^s]s$/.test(t.low) && (PERSON_WORD.test(singular(t.low)) || /^(nobodys|everybodys|somebodys|anybodys|everyones|someones)$/.test(t.low)) && (PRESENT.test(next) || verbForms(next).some(f => f.form === 'ing'))) return cut(t, t.low.length - 1, "'s");
    if (isRunIn(t.low, next, after, prev)) return cut(t, t.low.length - 1, "'s");
    return [t];
  });
}

const cut = (t: Token, head: number, tail: string): Token[] => [
  { ...t, text: t.text.slice(0, head), low: t.low.slice(0, head), end: t.start + head },
  { ...t, text: t.text.slice(head), low: tail, start: t.start + head },
];

/** "dads here tomorrow", "nobodys touching it": one person, and where they are or what they do. */
const PERSON_WORD = /^(dad|father|mum|mom|mother|brother|sister|uncle|aunt|cousin|nephew|niece|son|daughter|wife|husband|neighbour|neighbor|mate|boss|grandad|grandpa|gran|postie|fella|bloke|guy|lad)$/;
const PRESENT = /^(here|free|coming|off|out|over|around|round|home|got|gonna|going|bringing|back|not|away|busy|due|lending|giving)$/;
const A_UNIT = /^(volts?|amps?|inch|inches|foot|feet|thou|pounds?|psi|degrees?|ohms?|litres?|liters?|quarts?|gallons?|millimet(re|er)s?|mm|rpm)$/;
const statesIt = (next: string, after: string): boolean => isNumberWord(next) && A_UNIT.test(after) || NEGATIVE.has(next) || DET.has(next) || /^(been|got|going|off|on|in|out|back|up|down|at|about|only|just|still|too|now|all|really|pretty|in|for|under|behind|with|ready|due|\d.*)$/.test(next)
  || CONDITION.has(next) && !nounClasses(after).size && !nounClasses(next).size || verbForms(next).some(f => f.form === 'part' || f.form === 'ing') && !nounClasses(next).size && !nounClasses(after).size;

/** "plungers finally out", "pedals got about": the plural of a trade noun, followed by what only "is" or "has" joins to a single thing. */
function isRunIn(low: string, next: string, after: string, prev: string): boolean {
  if (!/[^s]s$/.test(low) || singular(low) === low || !nounClasses(singular(low)).has('part') || nounClasses(low).size && !nounClasses(singular(low)).size) return false;
  if (/^(both|all|these|those|two|three|four|five|six|seven|eight|some|no|of)$/.test(prev) || /^\d/.test(prev)) return false;
  if (SINGLE.has(singular(low)) && (/^(off|out|back|up|down|apart|loose|at)$/.test(next) || CONDITION.has(next) || verbForms(next).some(f => f.form === 'ing' && isClass(f.base, 'state')))) return true;
  if (next === 'got') return !/^(the|them|it|to)$/.test(after);
  return /^(finally|been|gone|nearly|about|only|still|now|almost)$/.test(next) && prev !== 'all' && prev !== 'both' && prev !== 'these' && prev !== 'those';
}
