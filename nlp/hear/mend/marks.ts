import { CONDITION } from '../../words/conditions.ts';
import { isTradeWord, nounClasses } from '../../words/nouns.ts';
import { verbForms } from '../../words/verbs.ts';
import { repair, type Mended } from './change.ts';

const UNIT = 'thou|thous|thousandths|inch|inches|mm|millimet(?:re|er)s?|psi|volts?|amps?|degrees|foot-pounds|feet|foot|gallons|quarts|litres|liters|gauge|hours|minutes|weeks|days';
const NUMBER = String.raw`(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|quarter|eighths?|sixteenths?)`;

/** Full stops and commas that the recogniser set inside what was one breath: a number and its unit, a price and what it is for, two halves of a name. */
export function mendMarks(mended: Mended): Mended {
  let m = repair(mended, new RegExp(String.raw`\b(${NUMBER})[.,?] (${UNIT})\b`, 'gi'), 'a number and its unit', (all, n, unit) => (/^\p{Ll}/u.test(unit!) && !(all!.includes(',') && /^(inch|inches|foot|feet)$/.test(unit!)) ? `${n} ${unit}` : undefined));
  m = repair(m, /\b(thou|thousandths|mils?|inch|inches)\. (One|Two|Three|Four|Five|Six|\d+)(?= (?:and a half )?(?:thou|thousandths|mils?|inch|inches)?,? ?(?:and|or) (?:one|two|three|four|five|six|ten|a|\d+)\b)/g, 'a list of figures', (_, unit, next) => `${unit}, ${next!.toLowerCase()}`);
  m = repair(m, /\b([a-z]+) ((?:back|front|left|right|rear|other|top|bottom|upper|lower) one) (?=([a-z']+)\b)/gi, 'two findings in one breath', (_, before, which, state) =>
    isState(before!) && isState(state!) ? `${before}, ${which} ` : undefined);
  // Recognisers set a comma after every clause that comes first; where it tells how things were, it belongs to what follows.
  m = repair(m, /(^|[.?!] )((?:when|before|as) (?:it|i|they|we|she) (?:came|took|pulled|stripped|had|got|lifted|opened)(?: (?:it|them|her|that))?(?: (?:apart|off|out|down|open|to bits))?), (?=[a-z])/gi, 'how it was, in one breath', (_, start, clause) => `${start}${clause} `);
  m = repair(m, /\b(M\d{1,2})[.,?!] (?:By|by|x) (?=\d)/g, 'a thread in one breath', (_, size) => `${size} by `);
  m = repair(m, /\. ((?:\$\d+|£\d+|\d+)(?: dollars| bucks| quid| pounds)? (?:each|apiece|a piece|a foot|the pair|plus|for the (?:lot|pair|set)|all in|shipped|delivered)\b)/gi, 'a price of what was just named', (_, price) => `, ${price}`);
  // "The breather, I'd ordered for the gearbox turned up": a clause that belongs to its noun has no comma before it alone.
  m = repair(m, /^((?:the|that|my) [a-z]+(?: [a-z]+)?), ((?:i|we|he|they)(?:'d| had)? [a-z]+ [^,.?!]*\b(?:turned up|came|arrived|landed|showed up|is|was|broke|fits|fitted)\b)/gim, 'a clause of its noun', (_, noun, clause) => `${noun} ${clause}`);
  // "Brake shoes adjusted all round pedals, got about an inch": the thing that is said to have it opens its own clause.
  m = repair(m, /\b(all round|all around|up|down|now|again|out|off) ([a-z]+)s, got (?=about|an?\b|some|\d)/gi, 'a comma set behind the wrong word', (_, before, noun) =>
    isPart(noun!) ? `${before}. ${noun}'s got ` : undefined);
  m = repair(m, /(^|[.?!] )((?:[a-z]+ ){0,2}[a-z]+), ([a-z]+) (?=the (?:left|right|front|rear|other|top|bottom) ones?\b)/gi, 'a name in two', (_, start, first, second) =>
    isPart(second!) && !verbForms(second!.toLowerCase()).some(({ form }) => form === 'past') ? `${start}${first} ${second}. ` : undefined);
  m = repair(m, /(^|[.?!] )((?:[a-z]+ ){0,2})([a-z]+s), (?=the (?:left|right|front|rear|other|top|bottom) one\b)/gi, 'what is spoken of, named first', (_, start, before, noun) => (isPart(noun!) ? `${start}${before}${noun}. ` : undefined));
  // "Well pipes out, 21 joints": what came off, then its figures.
  m = repair(m, /(^|[.?!] )((?:the )?(?:[a-z]+ ){0,2}[a-z]+(?:'s| is| are)? (?:out|off|apart)), (?=\d|(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty)\b)/gi, 'figures of what came off', (_, start, clause) => `${start}${clause}. `);
  // "just for mock-up when it goes on for real. Studs are": the condition is of the sentence after it.
  m = repair(m, /\b(mock-?up|for now|test fit|dry fit|trial) (when it [^.,?!]{4,40}?)\. (?=[A-Z])/g, 'a condition of what comes next', (_, trial, when) => `${trial}. W${when!.slice(1)}, `);
  return repair(m, /\b((?:will|weld) it)\? Or (buy|make|braze|patch|get)\b/gi, 'one question in two', (_, __, verb) => `Weld it or ${verb!.toLowerCase()}`);
}

const isState = (word: string): boolean => CONDITION.has(word.toLowerCase()) || verbForms(word.toLowerCase()).some(({ form }) => form === 'past' || form === 'part') && !nounClasses(word.toLowerCase()).size || /^(out|off)$/i.test(word);
const isPart = (word: string): boolean => nounClasses(word.toLowerCase()).has('part') || isTradeWord(word.toLowerCase()) && nounClasses(word.toLowerCase()).size > 0;
