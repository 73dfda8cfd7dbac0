import type { Entry } from '../../domain/model/entry.ts';
import { namedBy } from '../../domain/model/named-by.ts';
import { nameWords } from '../../domain/model/names.ts';
import { COLOUR } from '../dimensions/part/name-end.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import { SIDES } from '../words/sides.ts';

/** What holds a part, turns in it or closes it: a bolt has no clutch of its own, a clutch has bolts. */
const PIECE = /^(?:bolt|nut|pin|kingpin|bearing|seal|washer|gasket|bush|bushing|ring|shield|cup|shim|circlip|clip|key|cotter|rivet|stud)$/;
/** What a piece may have of its own. */
const OF_A_PIECE = /^(?:hole|bracket|housing|cap|seat|head|thread|bore|face|groove|collar|carrier|race|cone|spring|plate|cover|hanger|block)$/;
const JOINS = /^(?:off|on|out|in|and|n|an|&|or|plus|,|then|the|a|an|both|all|new|my|its|some|one|two|three|four|five|six|eight|twelve|\d+)$/, JOINED = /^(?:and|n|an|&|or|plus|,)$/;
/** Goods are each by themselves: what one of them is for stands in a field of its own. */
const GOODS = /^(?:want|order|bought|quote)$/;

/**
 * Whether a name puts in front of the rules' own what is no owner of it: a thing joined to it ("hood and side panels"), one of the goods named with it
 * ("two tines and a dozen coach bolts"), or a piece of what is the larger ("left wheel" with its bearing in front).
 */
export function noOwner(sheet: Sheet, x: Told, name: string, other: string, others: readonly Told[]): boolean {
  const mine = nameWords(name), whole = nameWords(other), ahead = whole.slice(0, whole.length - mine.length);
  if (ahead.every(w => SIDES.has(w)) || whole.slice(ahead.length).join(' ') !== mine.join(' ')) return false;
  const tail = mine.at(-1)!;
  if (mine.includes(ahead.at(-1)!) || PIECE.test(ahead.at(-1)!) && !PIECE.test(tail) && !OF_A_PIECE.test(tail)) return true;
  if (GOODS.test(x.entry.kind) && others.some(y => GOODS.test(y.entry.kind) && sameWords(y.entry, ahead))) return true;
  return joined(sheet, ahead, mine);
}

const sameWords = (e: Entry, words: readonly string[]): boolean => nameWords(namedBy(e) ?? '').slice(-words.length).join(' ') === words.join(' ');

/** Whether the words of the one are said next to the words of the other, with no more between them than what joins two things. */
function joined({ tokens }: Sheet, ahead: readonly string[], mine: readonly string[]): boolean {
  const says = (list: readonly string[], k: number): boolean => list.every((w, n) => nameWords(tokens[k + n]?.low ?? '')[0] === w);
  const starts = (list: readonly string[]): number[] => tokens.flatMap((_, k) => (says(list, k) ? [k] : []));
  const beside = (a: readonly string[], b: readonly string[]): boolean => starts(a).some(i => starts(b).some(j => {
    const between = tokens.slice(i + a.length, j).map(t => t.low);
    return j > i && between.length > 0 && between.length < 5 && between.every(w => JOINS.test(w) || COLOUR.test(w)) && between.some(w => JOINED.test(w));
  }));
  return beside(ahead, mine) || beside(mine, ahead);
}
