import { isKnownPart } from '../dimensions/part/known.ts';
import { type Phrase } from '../dimensions/part/phrase.ts';
import type { Sheet } from '../types.ts';
import { isNumberWord } from '../text/number-words.ts';
import { ARTEFACTS } from '../words/artefacts.ts';
import { COMMON } from '../words/common.ts';
import { CONDITION } from '../words/conditions.ts';
import { ENGLISH_ADJECTIVES } from '../words/english.ts';
import { EVERYDAY } from '../words/everyday.ts';
import { NO_THINGS } from '../words/no-things.ts';
import { nameClasses, nounClasses, singular } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { verbForms } from '../words/verbs.ts';

/** Whether a name is of several, by its last word. */
export const isPlural = (name: string): boolean => { const last = name.split(' ').at(-1)!; return singular(last) !== last || /^(teeth|knives|points)$/.test(last); };
/** Whether a name is a machine's: one of the shop's, a word of the trade for a machine, or a name of such words alone. */
export const isMachine = (sheet: Sheet, name: string): boolean => {
  const classes = nounClasses(name);
  if ((sheet.ctx.machines ?? []).some(m => m.toLowerCase() === name) || classes.has('machine') && !classes.has('part')) return true;
  const words = name.split(' ');
  return words.length > 1 && !isKnownPart(sheet.ctx.parts, name) && classes.size === 0 && words.every(w => { const k = nounClasses(w); return k.has('machine') && !(k.has('part') && w !== 'engine' && w !== 'pump'); });
};
/** "the second pull", "first go": a time that something was tried. */
const A_TRY = /^(?:first|second|third|fourth|fifth|sixth|tenth|last|next) (?:pull|tug|try|go|kick|swing|turn|crank|push|prod|attempt|shot|touch|time)s?$/;
const A_UNIT = /^(?:milli|centi|kilo)?(?:met(?:re|er)|gram|lit(?:re|er))s?$|^(?:inch(?:es)?|thou|mils?|psi|amps?|volts?|ohms?|pounds?|ounces?|gallons?|quarts?|pints?|degrees?)$/;
/** Whether a name can be a part's: the shop's or the trade's, or an unknown word that is no everyday one. */
export const partLike = (sheet: Sheet, name: string): boolean => {
  const head = name.split(' ').at(-1)!;
  if (/^\d/.test(name) && !isKnownPart(sheet.ctx.parts, name) || A_TRY.test(name)) return false;
  if (isKnownPart(sheet.ctx.parts, name) || /^(stop|boss|standard|cheek|rynd|sear|neck|lip)(e?s)?$/.test(name)) return true;
  if (/^(finger ?nails?|thumb ?nails?|skin|goes|tries|turns|passes|reasons?|problems?|troubles?|ideas?|luck|dogs?|fingers?|thumbs?|knees?|foot|feet|backs?|hands?|eyes?|cats?|legs?|ears?|cows?)$/.test(name)) return false;
  const classes = nameClasses(name);
  if (!classes.size && A_UNIT.test(name)) return false;
  if (classes.has('part') || classes.has('fastener') || classes.has('consumable')) return true;
  if (classes.has('source') || classes.size === 1 && classes.has('quantity')) return false;
  const owner = name.split(' ').slice(0, -1).join(' ');
  if (/^(ends?|heads?|points?|hal(f|ves)|sides?|tops?|bottoms?|middles?|turns?|flights?|drives?|edges?|lips?|corners?|eyes|feet|foot|fingers?|legs?|knees?|noses?|races?)$/.test(head) && owner && nounClasses(owner.split(' ').at(-1)!).has('part')) return true; // "tie rod end"
  if (EVERYDAY.has(head) || EVERYDAY.has(singular(head)) || NO_THINGS.has(head) || NO_THINGS.has(singular(head)) || PERSONS.test(name)) return false;
  return head !== name || mayBeMade(name) || mayBeMade(singular(name));
};

/** A single word that the trade doesn't know: a made thing, or a word of no dictionary ("windcharger") that isn't the form of another. */
const mayBeMade = (word: string): boolean =>
  ARTEFACTS.has(word) && !isNumberWord(word) || !COMMON.has(word) && !ENGLISH_ADJECTIVES.has(word) && !CONDITION.has(word) && !verbForms(word).length && word.length > 4 && !/(ed|ing|ly|ness|ity|tion|ment|est)$/.test(word);
/** A place, by the phrase or its last word ("top shelf"). */
export const isPlaceNoun = (np: Phrase): boolean => nounClasses(np.said).has('place') || nounClasses(np.said.split(' ').at(-1)!).has('place');
/** A shop, a seller or whose place it is ("Kelly's", "the welder's"). */
export const isSource = (np: Phrase): boolean => np.said.endsWith("'s") || nounClasses(np.said).has('source') || nounClasses(np.said.split(' ').at(-1)!).has('source');

/** Water, oil, paint: used on a part rather than being one. */
export const isStuff = (name: string): boolean => { const k = nounClasses(name); return k.size > 0 && [...k].every(c => c === 'consumable'); };
