/** Small numbers as they are said, for a size or grade that reached a sum in words. */
const WORDS: Readonly<Record<string, number>> = {
  one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12, thirteen: 13, fourteen: 14,
  fifteen: 15, sixteen: 16, eighteen: 18, twenty: 20,
};
const PARTS: Readonly<Record<string, number>> = { half: 2, quarter: 4, eighth: 8, sixteenth: 16 };

const WORD = Object.keys(WORDS).join('|');
const SAID_FRACTION = new RegExp(`\\b(?:(an?|${WORD}|\\d+)\\s+)?(half|quarter|eighth|sixteenth)s?\\b`, 'g');
const SAID_NUMBER = new RegExp(`\\b(${WORD})\\b`, 'g');

/** "five eighths eleven" -> "5/8 11", "half inch" -> "1/2 inch", "ten point nine" -> "10.9". Anything else stays as it is; lower case in, lower case out. */
export const digitsForWords = (text: string): string =>
  text
    .replace(SAID_FRACTION, (_, count: string | undefined, part: string) => `${WORDS[count ?? ''] ?? (Number(count) || 1)}/${PARTS[part]}`)
    .replace(SAID_NUMBER, (word) => String(WORDS[word]))
    .replace(/(\d)\s*point\s*(\d)/g, '$1.$2');
