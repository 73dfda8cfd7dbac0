import { LEAD_INS } from '../words/lead-ins.ts';
import type { Token } from '../types.ts';

const LEAD_IN = new RegExp(LEAD_INS.map(re => re.source).join('|'));

/** Asking politely for what is to be written down: "would you put … on my list". */
const POLITE = /^(?:(?:would|could|can|will) you(?: please| kindly)?|please)$/, KEEPS = /^(?:put|add|note|jot|write|stick|pop|log|record)$/;

/** The longest lead-in, in tokens. */
const LONGEST = 10;

/** The stretches of tokens that only lead on to what is told, at the head of a clause with more behind them. */
export function leadIns(tokens: readonly Token[]): [number, number][] {
  const out: [number, number][] = [];
  for (let i = 0; i < tokens.length; i++) {
    if (!heads(tokens, i)) continue;
    for (let n = Math.min(LONGEST, tokens.length - i - 1); n >= 1; n--) {
      const said = tokens.slice(i, i + n).map(t => t.low).join(' '), after = tokens[i + n]!.low;
      if (!(LEAD_IN.test(said) || POLITE.test(said) && KEEPS.test(after)) || !(goesOn(after) || after === ',')) continue;
      out.push([i, after === ',' ? i + n + 1 : i + n]);
      i += n - 1;
      break;
    }
  }
  return out;
}

/** At the head of a note, a sentence or a clause. */
const heads = (tokens: readonly Token[], i: number): boolean => i === 0 || tokens[i]!.pause === true || /^(?:[.,;:!?…–—-]+|and|but|so|well|then|yeah|right|okay|ok)$/.test(tokens[i - 1]!.low);
/** What follows may be what is told: no mark, and nothing that makes the lead-in the statement itself. */
const goesOn = (low: string): boolean => /^[\p{L}\d]/u.test(low) && !/^(?:to|and|but|or|well|fine|good|great|ok|okay|right|nice|nicely|lovely|perfect|beautiful|better|bad|badly|what|why|how|where|if|whether)$/.test(low);
