import { nounClasses, singular } from '../../words/nouns.ts';
import type { Sheet } from '../../types.ts';
import { countValue } from './count.ts';

/** No thing of which a shop has several is numbered further. */
const MOST = 12;

/** Where a list of numbers that tell some of several from the rest ends, if one begins at token `from`: "one, two and five". More than one number, the last joined by "and", with a state or a deed after it. */
export function numberList(sheet: Sheet, from: number, to: number): number | undefined {
  const { tokens, tags } = sheet, low = (k: number): string => (k < to ? tokens[k]?.low ?? '' : '');
  const numbered = (k: number): boolean => { const n = Number(countValue(low(k))); return k < to && Number.isInteger(n) && n >= 1 && n <= MOST; };
  let k = from, joined = false, many = 0;
  while (numbered(k)) {
    many++; k++;
    if (joined) break;
    if (/^(and|an|n|&)$/.test(low(k)) && numbered(k + 1)) { joined = true; k++; } else if (low(k) === ',' && numbered(k + 1)) k++;
  }
  return joined && many > 1 && (k >= to || /^(be|have|verb|adj|prt|mark|prep|modal|neg|pron)$/.test(tags[k] ?? '')) && !nounClasses(low(k)).size && !/^(inch|inches|thou|mm|mil|mils|foot|feet|psi|point|hours?|by|quarter|half|of|x)$/.test(low(k)) ? k : undefined;
}

/** What the numbers at token `at` are of: the last things told of in the plural with a number or a stop after them ("Pistons. One and two are fine", "sleeves two and three… one and four"). */
export function numberedBefore(sheet: Sheet, at: number): string | undefined {
  for (let k = at - 2; k >= 0; k--) {
    const low = sheet.tokens[k]!.low, next = sheet.tokens[k + 1]!.low;
    if (sheet.tags[k] === 'noun' && singular(low) !== low && (/^[.:]$/.test(next) && (k === 0 || /^[.;!?]$/.test(sheet.tokens[k - 1]!.low)) || numberList(sheet, k + 1, sheet.tokens.length) !== undefined)) {
      let from = k;
      while (from > 0 && sheet.tags[from - 1] === 'noun') from--;
      return sheet.tokens.slice(from, k + 1).map(t => t.low).join(' ');
    }
  }
  return undefined;
}
