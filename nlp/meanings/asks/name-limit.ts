import { isShorthand } from '../../dimensions/shorthand.ts';
import type { Sheet } from '../../types.ts';

/** What stands where a name could in a question and is none. */
export const NOT_A_THING = /^(?:many .*|(?:hasnt|havent|isnt|arent|wasnt|werent|didnt|doesnt|dont|wont|cant)\b.*|how .*|dew point|reasons?|yet|now|today|so far|what|when|where|how|who|why|is|are|was|were|do|does|did|i|you|we|they|he|she|and|or|but|if|time|day|days|week|hours?|minutes?|money|dollars|please|thanks|any(?:thing|body|one)|some(?:thing|body|one)|every(?:thing|body|one)|nobody|trouble|idea|one|ones|lately|recently|again|before|after|photos?|pictures?|pics?|cheapest|rain|weather|morning|afternoon|evening|night|tomorrow|yesterday|moment|minute|rate|cost|price|set|pair|ocht|owt|aught|goer|goers|road|odds|parcels?|rate|done|finished|landed|far|(?:dollars|money|hours|cost|cash)(?: (?:too|also|both))?)$/;

/** A name ends before words that never are in one, whatever the tagger holds them for. */
export const NEVER = /^(?:query|during|sweetheart|darling|dear|lord|being|bein|tied|lashed|propped|dollars|money|moneywise|quid|upon|afore|thus|these|those|hooked|routed|mounted|shimmed|gapped|strung|clocked|live|lives|ready|running|going|land|can|will|hid|anywhere|still|ever|usually|goes|went|held|altogether|cheapest|cheaper|please|pls|plz|yet|anyway|landed|delivered|thanks|mate|gona|gonna|b4|so|today|tomorrow|yesterday|tonight)$/;
export function nameLimit(sheet: Sheet, from: number, to: number): number {
  const ends = (i: number): boolean => sheet.tokens[i]!.low === 'end' && sheet.tokens[i + 1]?.low === 'up';
  for (let i = from + 1; i < to; i++) if (NEVER.test(sheet.tokens[i]!.low) || ends(i) || isShorthand(sheet.tokens[i]!.low)) return i;
  return to;
}
