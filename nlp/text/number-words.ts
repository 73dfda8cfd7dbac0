/** Words that count. Used to cut hyphened numbers, and by whoever must know that a word is a number without its value. */
const UNITS = 'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen';
const TENS = 'twenty thirty forty fourty fifty sixty seventy eighty ninety hundred thousand';
const PARTS = 'half quarter third thirds quarters eighth eighths sixteenth sixteenths thirty-second thirty-seconds sixty-fourth sixty-fourths tenth tenths';
const NUMBERS = new Set(`${UNITS} ${TENS} ${PARTS}`.split(' '));

/** Low-case word; digits count too ("12-volt"). */
export const isNumberWord = (low: string): boolean => NUMBERS.has(low) || /^\d+$/.test(low);
