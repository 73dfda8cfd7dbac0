import type { Placed } from '../clauses/clauses.ts';
import { bodged } from './finding/bodged.ts';
import { acted, drained, wont } from './finding/does.ts';
import { fault, flaws, found } from './finding/fault.ts';
import { fragment, goesOn } from './finding/fragment.ts';
import { possessed } from './finding/had.ts';
import { headed, sides } from './finding/sides.ts';
import { stated } from './finding/stated.ts';
import { doneFor, usable, verdictOnly } from './finding/verdict.ts';
import { headsFigure } from './lib/gauge-state.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** The condition a part was found in, in the words of the note, with a verdict only where it is plain. */
export const finding: Meaning = t => {
  const c = t.clause;
  if (c.asks || c.sub && /^(if|unless|until|till|before|after|once|that|which|who|whether|so|how|what|where|why|when|than|as)$/.test(c.sub)) return undefined;
  if (c.who === 'it' && /(?:\b(?:too|got|getting|was|is|turned)|'s) (?:too |pretty |very |fierce |bitter |awful )?(?:cold|dark|late|wet|hot|windy|damp|dry|warm|chilly|frosty|miserable|muggy|freezing|raw|close|light) (?:to|out|outside|outdoors|for|in here|out there|today|tonight|this (?:morning|evening|afternoon))\b/.test(lowText(t))) return undefined;
  if (/\bdone for (the (day|night|evening|week|year)|today|tonight|now)\b/.test(lowText(t)) || /^(that|this) ?('s|is) (me|us)\b/.test(lowText(t))) return undefined; // "that's me done for the night"
  if (underIf(t) || headsFigure(t)) return undefined;
  if (c.pred === 'be' && /^(just |only |still )*(a )?(bit|piece|length|loop|twist|scrap|lump|strip) of (wire|fencing wire|string|rope|twine|baler twine|tape|hose|rag|wood|fencing|cord|welding rod|angle|rod)\b/.test(c.items.slice(c.vi + 1).map(i => i.low).join(' '))) return undefined; // what stands in for it is no state
  if (/\b(i|we) (said|thought|told you|reckoned|swore) (was|were|is)\b|^(and |but )?not (one|a single one|any|many) of\b/.test(lowText(t))) return undefined; // "the pulley I said was bent"
  if (c.pred === 'none' && /^(no |sorry |oops )*wrong (machine|tractor|trailer|engine|baler|mower|job|notebook|note|one)$/.test(lowText(t))) return undefined; // of the note, not of a part
  if (/ ?('s|is|are|'re) (all |now |both )?going (away |off |back |out |down |up |over )*to (the|a|my|his|her|our|\S+'s)\b/.test(lowText(t))) return undefined; // where it goes is no state
  if (/\blet's\b/.test(lowText(t))) return undefined; // said for the sake of it
  const bodge = bodged(t);
  if (bodge) return bodge;
  if (/^(cond|hearsay)$/.test(c.reality) || c.join === 'so' && c.neg && c.pred === 'verb' && t.at === 0) return undefined;
  const later = verdictOnly(t);
  if (later) return later;
  const gone = doneFor(t);
  if (gone) return gone;
  const can = usable(t);
  if (can) return can;
  const about = c.reality === 'maybe' && /\b(maybe|perhaps|possibly|probably) (about )?(a|an|half|\d|\w+ (inch|thou|mm))/.test(lowText(t)) && c.rest[0]?.t === 'adj'; // "bent maybe a quarter inch"
  if (!/^(deed|maybe)$/.test(c.reality) || c.reality === 'maybe' && !about && !wont(t) && !/can \w*|d call (that|it) /.test(lowText(t))) return undefined;
  return headed(t) ?? sides(t) ?? drained(t) ?? flaws(t) ?? fragment(t) ?? goesOn(t) ?? found(t) ?? fault(t) ?? (c.pred === 'be' || c.pred === 'none' ? stated(t) : c.pred === 'have' ? possessed(t) : acted(t));
};

/** "if the frame's cracked she's finished": what hangs on an "if" was not found so. */
const underIf = (t: Telling): boolean => {
  const before = t.clauses[t.at - 1] as Placed | undefined;
  return before !== undefined && /^(if|unless)$/.test(before.sub ?? '') && before.sentence === (t.clause as Placed).sentence && t.clause.join !== 'but';
};
