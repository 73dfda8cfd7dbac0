/** Number words and what they are worth. Beside the plain ones: misspellings that typists make and "oh" for a nought inside a number. */
const list = (words: string, from: number, step = 1): [string, number][] => words.split(' ').map((w, i) => [w, from + i * step]);

export const ONES = new Map<string, number>(list('one two three four five six seven eight nine', 1));
export const TEENS = new Map<string, number>([
  ...list('ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen', 10), ['fourten', 14], ['fiveteen', 15], ['eightteen', 18],
]);
export const TENS = new Map<string, number>([
  ...list('twenty thirty forty fifty sixty seventy eighty ninety', 20, 10), ['fourty', 40], ['fourtie', 40], ['fivety', 50], ['ninty', 90],
]);

/** What a fraction's lower number is called, in one or more; "2nd" is left out, which is always an order. */
export const PARTS = new Map<string, number>([
  ['half', 2], ['halves', 2], ['third', 3], ['quarter', 4], ['quater', 4], ['fourth', 4], ['fifth', 5], ['sixth', 6], ['seventh', 7], ['eighth', 8], ['eigth', 8],
  ['eight', 0], ['tenth', 10], ['twelfth', 12], ['sixteenth', 16], ['hundredth', 100],
  ['3rd', 3], ['4th', 4], ['5th', 5], ['8th', 8], ['10th', 10], ['16th', 16], ['32nd', 32], ['32th', 32], ['64th', 64],
].filter(([, n]) => n !== 0) as [string, number][]);

/** The lower number of a fraction in two words ("thirty-second", "sixty-fourth"). */
export const LONG_PARTS = new Map<string, number>([['thirty second', 32], ['thirty two', 0], ['sixty fourth', 64], ['thirty secondth', 32]].filter(([, n]) => n !== 0) as [string, number][]);

/** "fives and twos", "twenty fours": the words in the plural; "ones" is a pronoun. */
for (const table of [ONES, TEENS, TENS]) for (const [w, v] of [...table]) if (w !== 'one') table.set(w.endsWith('y') ? `${w.slice(0, -1)}ies` : w.endsWith('x') ? `${w}es` : `${w}s`, v);

/** "twelve", "twenty", "seven": below a hundred, one word. */
export const wordValue = (w: string): number | undefined => ONES.get(w) ?? TEENS.get(w) ?? TENS.get(w) ?? (w === 'zero' || w === 'nought' || w === 'naught' ? 0 : undefined);

/** Words that say the number is not exact. */
export const ABOUT = /(?:^|[^a-z])(?:about|around|roughly|approx|approximately|approximatly|near enough|nearly|almost|close to|maybe|say|some|circa|call it|figure|call that|bout|ish|oh about|or so)\s*(?:an? )?$/;
