import { repair, type Mended } from './change.ts';
import { table } from '../../words/table.ts';

/** Denominators of a rule and of inch threads. */
const DENOMINATORS = new Set([2, 4, 8, 16, 32, 64]);
const isFraction = (top: string, bottom: string) => Number(top) < Number(bottom) && Number(top) > 0 && DENOMINATORS.has(Number(bottom));
const fraction = (top: string, bottom: string) => (isFraction(top, bottom) ? `${top}/${bottom}` : undefined);

/** Pitches of ISO metric threads in mm by diameter, coarse first (ISO 261:1998, first and second choice to 24 mm). */
const METRIC: Record<string, string[]> = table({
  3: ['0.5'], 4: ['0.7'], 5: ['0.8'], 6: ['1'], 8: ['1.25', '1'], 10: ['1.5', '1.25', '1'], 12: ['1.75', '1.5', '1.25'], 14: ['2', '1.5'],
  16: ['2', '1.5'], 18: ['2.5', '2', '1.5'], 20: ['2.5', '2', '1.5'], 22: ['2.5', '2', '1.5'], 24: ['3', '2'],
});

/** What a fraction or a number in words looks like before "coarse" and "fine". */
const SIZE = String.raw`(?:\d+\/\d+|\b(?:half|quarter|quarters|eighth|eighths|sixteenth|sixteenths|thirty-second|thirty-seconds)(?:[ -]inch)?|\d+[ -]inch)`;
/** Talk of thousandths of an inch: only beside these are thousands read as thous. */
const THOU_TALK = /\b(thous?|shims?|clearances?|end ?plays?|end ?floats?|backlash|interference|run-?out|feeler|gap|crush|preload|undersize|oversize)\b/i;
const NOT_THOU = /[$£€]|\b(pounds?|dollars?|bucks|quid|miles?|hours?|rpm|revs?|psi|feet|foot|volts?|kilos?|hundredweight|grit|acres?)\b/i;

/** "5 slash 8", "3-16s", "5-8th", "2 and 3-4": fractions that were written as spoken or as ranges. */
function fractions(text: Mended): Mended {
  let mended = repair(text, /\b(\d+)-(\d+)[ -]slash[ -](\d+)\b/gi, 'a whole number and a fraction', (_, whole, top, bottom) => {
    const part = fraction(top!, bottom!);
    return part && `${whole} ${part}`;
  });
  mended = repair(mended, /\b(\d+) (?:slash|over) (\d+)(?:ths?|s)?\b/gi, 'a fraction', (_, top, bottom) => fraction(top!, bottom!));
  mended = repair(mended, /\b(\d+)[- \/](\d+)(?:ths?|s|nds?)\b/gi, 'a fraction', (_, top, bottom) => fraction(top!, bottom!));
  mended = repair(mended, /\b(\d+) and (?:a )?(\d+)-(\d+)\b(?!-)/gi, 'a whole number and a fraction', (_, whole, top, bottom) => {
    const part = fraction(top!, bottom!);
    return part && `${whole} ${part}`;
  });
  return repair(mended, /\b(\d+)-(\d+)-5\b(?=[ ,.]*(?:grade|class|threads?|bolts?|studs?|nuts?|tap|die|with|dry|oiled)\b)/gi, 'a fraction and "fine"', (_, top, bottom) => {
    const part = fraction(top!, bottom!);
    return part && `${part} fine`;
  });
}

const UNITS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen'];
const BELOW: Record<string, string> = table({ half: '2', halves: '2', quarter: '4', quarters: '4', eighth: '8', eighths: '8', sixteenth: '16', sixteenths: '16', eight: '8', sixteen: '16', four: '4', two: '2' });
const topOf = (word: string) => (/^\d+$/.test(word) ? word : String(UNITS.indexOf(word.toLowerCase())));

/** "five slash eighths", "5 slash 16": a fraction that was read out by its stroke. */
function strokes(text: Mended): Mended {
  return repair(text, /\b(\d+|[a-z]+) slash (\d+|[a-z]+)\b/gi, 'a fraction', (_, top, bottom) => fraction(topOf(top!), BELOW[bottom!.toLowerCase()] ?? bottom!));
}

/** "one hand a half", "bore to thou", "and M6 shipping": counts with a word beside them that was none. */
function counts(text: Mended): Mended {
  let mended = repair(text, /\b(one|two|three|four|five|six|seven|eight|nine|ten|\d+) (?:hand|in|an|end|on) (?=a half\b)/gi, 'a number and a half', (_, n) => `${n} and `);
  mended = repair(mended, /\b([a-z]+) (?:to|too) (?=thou\b)/gi, 'a number', (_, before) => (/^(from|back|down|up|close|in)$/i.test(before!) ? undefined : `${before} two `));
  mended = repair(mended, /\b[Mm](\d{1,3}) (?=(?:and \d+ )?(?:shipping|post|postage|carriage|freight|delivery)\b)/g, 'a hum and a price', (_, n) => `${n} `);
  return repair(mended, /(^|[.?!] )(to get|to buy|to order|shopping list),? for (?=[a-z]+ [a-z]+s\b)/gi, 'a number', (_, start, list) => `${start}${list}, four `);
}

/** "a 42 change wheel": a gear is named by its teeth, and a round number before "tooth" is heard as one figure. */
const teeth = (text: Mended): Mended =>
  repair(text, /\b(a|an|the) (\d)2 (?=(?:change wheel|gear|sprocket|pinion|cog)\b)/gi, 'a count of teeth', (_, a, tens) => `${a} ${tens}0 tooth `);

/** "here the 26.", "back by the 3": a day of the month without its ending. */
function days(text: Mended): Mended {
  const ending = (n: number) => (n % 10 === 1 && n !== 11 ? 'st' : n % 10 === 2 && n !== 12 ? 'nd' : n % 10 === 3 && n !== 13 ? 'rd' : 'th');
  return repair(text, /\b(here|back|by|till|until|on|before|since|from|after|ready|due|come|coming|now it's) the (\d{1,2})(?=[.,?!]|$)/gi, 'a day of the month', (_, before, day) =>
    Number(day) >= 1 && Number(day) <= 31 ? `${before} the ${day}${ending(Number(day))}` : undefined);
}

/** "5/8 cores": the thread series is one of two words, whatever everyday word it sounded like. */
function threads(text: Mended): Mended {
  const coarse = repair(text, new RegExp(`(${SIZE}) (?:cores?|course|courses|scores?|chorus|horse|cause|curse|coas)\\b`, 'gi'), 'a thread', (_, size) => `${size} coarse`);
  const fine = repair(coarse, new RegExp(`(${SIZE}) (?:five|find|fined|finds|vine)\\b(?=[ ,.?]*(?:grade|class|thread|threads|tap|die|with|$))`, 'gi'), 'a thread', (_, size) => `${size} fine`);
  return repair(fine, /\b(?:an|a|am|em|him|ham|4 and|for an|form) (\d+) (?:by|x|buy) (\d(?:\.\d+)?)(?!\d)/gi, 'a metric thread', (_, size, pitch) =>
    METRIC[size!]?.includes(pitch!) ? `M${size} by ${pitch}` : undefined);
}

/** "15,000s", "1,500" among shims, "12 though.": thousandths of an inch. */
function thous(text: Mended): Mended {
  let mended = repair(text, /\b(?:a )?(\d{1,2}),?000(?:ths?|s)\b/gi, 'thousandths', (_, n) => `${n} thousandths`);
  mended = repair(mended, /[^.?!]+[.?!]*/g, 'thous, not thousands', (sentence) => {
    const numbers = sentence!.match(/\b\d{1,2},\d00\b/g) ?? [];
    if (numbers.length === 0 || !THOU_TALK.test(sentence!) || NOT_THOU.test(sentence!) || !numbers.every((n) => /[05]00$/.test(n))) return undefined;
    return sentence!.replace(/\b(\d{1,2}),(\d)00\b/g, (_, whole, tenth) => (tenth === '5' ? (whole === '0' ? 'half a thou' : `${whole} and a half thou`) : `${whole} thou`));
  });
  if (THOU_TALK.test(mended.text)) mended = repair(mended, /\b(\d{1,2}) (?:now|how|dow|foul)(?=[.,?!]|$)/gi, 'sounds like "thou"', (_, n) => `${n} thou`);
  const number = String.raw`(\d+|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty)|and a half)`;
  // "though" and "thaw" can follow a number and mean themselves only when a sentence goes on: then they are left alone.
  const mistaken = new RegExp(`${number} (?:though|thaw|thow|tho|thou'|thowl|dow|thouand)(?=[.,?!]|$| (?:of|on|at|under|over|clearance|interference|end|shims?|play|gap|undersize|oversize|per)\\b)`, 'gi');
  mended = repair(mended, mistaken, 'sounds like "thou"', (_, n) => `${n} thou`);
  return repair(mended, /\b(mills?)( and a half)?(?= (?:dry|wet|thick|film|of (?:paint|primer|enamel|topcoat))\b)/gi, 'paint is measured in mils', (_, mill, half) => `${mill!.toLowerCase() === 'mills' ? 'mils' : 'mil'}${half}`);
}

/** "$86 for M", "dollar eighteen". */
function small(text: Mended): Mended {
  const them = repair(text, /\b(for|through|of|on|with|at|under|cleaned|got|had|off) [MN]\b(?! ?\d)/g, 'a swallowed "them"', (_, before) => `${before} 'em`);
  return repair(them, /\bdollar (\d+|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?|(?:thir|four|fif|six|seven|eigh|nine)teen|ten|eleven|twelve)\b/gi, 'a price', (_, n) => `${n} dollars`);
}

/** The forms of numbers that the trade speaks and recognisers garble. */
export const mendNumbers = (text: Mended): Mended => counts(teeth(days(small(thous(threads(strokes(fractions(text))))))));
