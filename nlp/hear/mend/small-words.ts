import { CONDITION } from '../../words/conditions.ts';
import { isTradeWord, nounClasses } from '../../words/nouns.ts';
import { verbForms } from '../../words/verbs.ts';
import { repair, type Mended } from './change.ts';

const isNoun = (word: string): boolean => nounClasses(word.toLowerCase()).size > 0 || isTradeWord(word.toLowerCase());
const isVerb = (word: string, form: string): boolean => verbForms(word.toLowerCase()).some((f) => f.form === form);
const FOLLOWED = 'what|where|when|how|who|which';

/** Hums and little words that were written as others that sound like them, where what stands beside them leaves no doubt. */
export const mendSmallWords = (mended: Mended): Mended => clitics(joints(hums(mended)));

/** "I'm staves for the tub", "and arm total", "gap to up 15", "A seed cups": a hum written as a word that can't stand there. */
function hums(mended: Mended): Mended {
  let m = repair(mended, /(^|[.?!] )(?:I'm|Am|Arm|Her|Our|Are|Or|A|Err?|Ham|On|Oh|Of) ((?:[a-z]+,? ){0,2}?[a-z]+s[,.]?)(?![\w'])/g, 'a hum', (all, start, noun) => {
    const words = noun!.split(' ');
    return words.every((w) => isNoun(w.replace(/[,.]$/, ''))) && !words.some((w) => isVerb(w, 'ing') || /ss$/.test(w)) && !/Our|On|Of/.test(all!) || /Our/.test(all!) && words.length > 1 && words.some((w) => /[,.]$/.test(w)) ? `${start}${noun}` : undefined;
  });
  m = repair(m, new RegExp(String.raw`\b(and|but) (?:arm|um|am|i'm|ham|on|her) (?=(?:total|${FOLLOWED})\b)`, 'gi'), 'a hum', (_, and) => `${and} `);
  m = repair(m, new RegExp(String.raw`^((?:convert|how|what|where|when|who|show|tell)\b[^.?!]*?) and (?:know|no|now|a|i) (?=(?:${FOLLOWED})\b)`, 'gim'), 'a hum', (_, before) => `${before} and `);
  m = repair(m, /\b(and|but|so|need|oh),? (?:i'm|am|arm) (?=(?:some|another)\b)/gi, 'a hum', (_, before) => `${before} `);
  m = repair(m, /\bto (?:up|uh|a|our|um|lump|arm) (?=\d)/gi, 'a hum', () => 'to ');
  m = repair(m, /\b(good to go|fine|okay|done|out|off) (?:on|arm|am|um|and um) ([a-z]+) (it|them)\b/gi, 'a hum', (_, before, verb, it) => (isVerb(verb!, 'base') || isVerb(verb!, 'past') ? `${before}, ${verb} ${it}` : undefined));
  return repair(m, /(^|[.?!] )A (mind|don't|check|then|that|then)\b/g, 'a hum', (_, start, word) => `${start}And ${word}`);
}

/** "Need for new ones", "wheels one a proper clean", "whose cheapest": words of grammar that sound like another. */
function joints(mended: Mended): Mended {
  let m = repair(mended, /\b(need|needs|got|get|want|wants|buy|order|ordered|bought|counted|found) (?:for|fore) (new|more|of|spare|old|fresh|good)\b(?= (?:ones?|them|these|those|\w+s)\b)/gi, 'a number', (_, verb, what) => `${verb} four ${what}`);
  m = repair(m, /\b(need|needs|got|want|wants|buy|order|ordered|bought) (?:to|too) (new|more|of|spare|fresh) (?=(?:ones|them|these|those|\w+s)\b)/gi, 'a number', (_, verb, what) => `${verb} two ${what} `);
  m = repair(m, /(^|, | with )for ((?:\d+\/\d+|half[ -]inch|quarter[ -]inch|inch|\w+ (?:eighths?|sixteenths?)) (?:bolts|studs|nuts|screws|washers|rivets|capscrews|pins))/gi, 'a number', (_, start, thing) => `${start}four ${thing}`);
  m = repair(m, /\b((?:[$£]\d+|(?:\d+|\w+) (?:bucks|dollars|quid|pounds|cents))) (?:of|or|off|are|the|uh) (foot|piece|yard|metre|meter|gallon|pound|sheet|length|pair|set)\b/gi, 'a price for one', (_, price, one) => `${price} a ${one}`);
  m = repair(m, /\b([a-z]+s) (?:one|won|once) (a|an|some) (?=(?:proper|good|new|coat|clean|bit|lick|drop|go|wash|look)\b)/gi, '"want"', (_, noun, a) => (isNoun(noun!) ? `${noun} want ${a} ` : undefined));
  m = repair(m, /(^|[.?!] )(?:One|Won|Once) (?=(?:\d+|two|three|four|five|six|seven|eight|nine|ten|half a|a) thou\b)/g, '"want"', (_, start) => `${start}Want `);
  m = repair(m, /\b(thou) (?:another|and the|on the|an other|under a) (?=(?:cap|shim|bearing|head|flange|plate|washer)\b)/gi, '"under the"', (_, thou) => `${thou} under the `);
  m = repair(m, /\b(on|with|by|of|off|under|behind|just|need|got) (?:to|too) (?=(?:bolts|nuts|studs|screws|washers|shims|coats|rivets|legs|chains|blocks|clamps|springs|bearings|gaskets|seals)\b)/gi, 'a number', (_, before) => `${before} two `);
  m = repair(m, /\b(bolts|studs|nuts|screws|rivets|springs) aside\b/gi, '"a side"', (_, bolts) => `${bolts} a side`);
  m = repair(m, /\b(that|this|left|right|other|one) once ([a-z]+)\b/gi, '"one\'s"', (_, which, state) => (CONDITION.has(state!.toLowerCase()) ? `${which === 'one' ? '' : `${which} `}one's ${state}` : undefined));
  m = repair(m, /(^|[.?!] |, )(?:bright|write|rite|wright) ([a-z]+)(?= (?:is|has|was|wheel|one|side|\w+s? (?:is|off|on|out)))/gi, 'a side', (_, start, noun) => (isNoun(noun!) ? `${start}${start === ', ' ? 'right' : 'Right'} ${noun}` : undefined));
  m = repair(m, /\bin (my|his|our) ([a-z]+?)(?:'s|s) (?=(?:over|coming|here|round|around) (?:on|for|the|to|this|next|tomorrow|saturday|sunday)\b)/gi, '"and"', (_, my, who) => `and ${my} ${who}'s `);
  m = repair(m, /\bwhose (?=(?:the )?(?:cheapest|best|cheaper|got|coming|next|late)\b)/gi, '"who\'s"', (all) => (all!.startsWith('W') ? "Who's " : "who's "));
  m = repair(m, new RegExp(String.raw`(\?|, | yet,? | now,? )in (?=(?:how many|how much|${FOLLOWED})\b)`, 'gi'), '"and"', (_, before) => `${before}and `);
  m = repair(m, /\b(of them|of 'em|both|ones?)[.,]? (?:a|our|or|are|A|Our) ([a-z]+)\b(?! (?:bit|lot|little|few))/g, '"are"', (_, them, state) => (CONDITION.has(state!) ? `${them} are ${state}` : undefined));
  m = repair(m, /\b([a-z]+) eye ([a-z]+ed|found|took|put|got|hung|cut)\b/gi, '"I"', (_, before, verb) => `${before} I ${verb}`);
  m = repair(m, /\b(gotta|got to|ha(?:ve|s) to|need to|needs to|going to|i'll|must) ([a-z]+ed)\b/gi, 'a bare verb after "to"', (_, to, past) => {
    const base = verbForms(past!.toLowerCase()).find(({ form }) => form === 'past')?.base;
    return base && base !== past ? `${to} ${base}` : undefined;
  });
  m = repair(m, /\b(in|an?|another) (?:our|are|ower) (?:end|and|in|an) (?:of|a|the|uh)? ?(quarter|half)\b/gi, '"an hour and a quarter"', (_, __, part) => `an hour and a ${part}`);
  m = repair(m, /\bsays? (?:how|hell|hail|heal|how's) (?:i |i'll |he'll )?have it\b/gi, '"he\'ll have it"', () => "says he'll have it");
  m = repair(m, /\b(?:shim|shunt|chant|shan|shone) (touch|go|need|bother|do)\b(?= (?:it|them|near|a|the|with|that))/gi, '"shan\'t"', (_, verb) => `shan't ${verb}`);
  m = repair(m, /\b(it|they|that|cam|shaft)('s|'re| is| has| have)? not been (?=(?:good|straight|true|fine|sound)\b)/gi, '"not bent"', (_, it, is) => `${it}${is || "'s"} not bent, `);
  m = repair(m, /(^|[.?!] )When will (the|my|his) ([a-z ]{3,20}?) and ([a-z]+ed) (it|them|one)\?/g, '"went with"', (_, start, the, who, did, it) => `${start}Went with ${the} ${who} and ${did} ${it}.`);
  return repair(m, /\bbe backed by\b/gi, '"be back by"', () => 'be back by');
}

/** "Waterhoppers got a hairline", "Head sitting on", "keys ground": a part's own "is" or "has", run into its name or lost. */
function clitics(mended: Mended): Mended {
  const noun = String.raw`((?:the )?(?:[a-z-]+ ){0,2}?)([a-z-]{3,})`;
  let m = repair(mended, new RegExp(String.raw`(^|[.?!] |, and )${noun}s (?=got (?:an?|some|about|no)\b|been [a-z]+|back (?:on|from|in)\b|on for good\b|(?:ground|ordered|shot|late|cracked|rotted|finished|welded|painted|primed|straight|fine|good|bent|stuck|seized|loose)[,.]|ordered from|gone\b)`, 'gi'), 'its own "is" or "has", run into the name', (_, start, before, name) =>
    isSingle(name!) && !/\b(both|all|two|three|four|these|those|\d+)\b/i.test(before!) ? `${start}${before}${name}'s ` : undefined);
  m = repair(m, new RegExp(String.raw`(^|[.?!] )${noun} (?=(?:sitting|hanging|lying|resting) (?:on|in|there|loose)\b)`, 'gi'), 'its own "is", lost', (_, start, before, name) =>
    isSingle(name!) ? `${start}${before}${name}'s ` : undefined);
  m = repair(m, /(^|[.?!,] )([a-z]{4,})s (?=(?:back )?(?:in|on|off) the [a-z]+[,.])/gi, 'its own "is", run into the name', (_, start, name) => (isSingle(name!) && !isVerb(name!, 'base') ? `${start}${name}'s ` : undefined));
  m = repair(m, /\bone ([a-z]{3,})s (?=([a-z]+)\b)/gi, 'its own "is", run into the name', (_, name, state) =>
    isSingle(name!) && (CONDITION.has(state!.toLowerCase()) || isVerb(state!, 'part') && !isVerb(state!, 'base')) ? `one ${name}'s ` : undefined);
  return repair(m, /(^|[.?!] )((?:[a-z]+ )?[a-z]+) needs some (?=\d|\w+ (?:gauge|inch|weight)\b)/gi, 'what is needed, named first', (_, start, thing) => `${start}${thing}, need some `);
}

/** A trade's noun in its singular, that is no verb in -s which the sentence needs. */
const isSingle = (word: string): boolean => isNoun(word) && !/s$/.test(word) && !/^(wheel|tooth|point|leather|track)$/i.test(word);

