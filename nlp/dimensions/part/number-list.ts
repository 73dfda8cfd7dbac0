import { numberListEnd } from '../../text/number-list.ts';
import type { Sheet } from '../../types.ts';
import { singular } from '../../words/nouns.ts';

/** Where a list of numbers that tell some of several from the rest ends, if one begins at token `from`, with a state or a deed after it. */
export function numberList({ tokens, tags }: Sheet, from: number, to: number): number | undefined {
  const end = numberListEnd(tokens, from, to);
  return end !== undefined && (end >= to || /^(be|have|verb|adj|prt|mark|prep|modal|neg|pron)$/.test(tags[end] ?? '')) ? end : undefined;
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
