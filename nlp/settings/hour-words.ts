/** Numbers as the hours are told in them: figures, and words up to twelve. */
export const WORDS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
export const NUMBER = String.raw`(?:\d+(?:[.:]\d+)?|${WORDS.slice(1).join('|')})`;

/** "Seven", "7"; no number where it is neither. */
export const numberSaid = (said: string): number => (WORDS.includes(said) ? WORDS.indexOf(said) : Number(said));
/** "Two", "2.5", "a couple of". */
export const count = (said: string): number => (said === 'a couple of' ? 2 : said === 'a few' ? 3 : numberSaid(said.replace(':', '.')));
