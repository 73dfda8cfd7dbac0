import type { Entry } from '../../../domain/model/entry.ts';
import { nameWords } from '../../../domain/model/names.ts';
import { valueAt } from '../../clauses/items.ts';
import { spotOf } from '../../likely/spot.ts';
import type { Found, Sheet } from '../../types.ts';
import { nounClasses } from '../../words/nouns.ts';
import type { Told } from '../telling.ts';
import { countSaid } from './how-many.ts';

/** Things of which one costs no hundreds (common practice, no source). */
const SMALL = /^(seal|gasket|ring|plug|filter|cap|bulb|fuse|clip|spring|washer|grommet|rivet|decal|packing|cotter|pin|stud|bolt|screw|tape|brush|lug|terminal|lens|fitting|nipple|felt|cord|diaphragm|point|wick|bush|bushing|link|grease|oil|hose)$/;
/** A figure said in two halves: "six forty" is 640, or 6.40. */
const HALVES = /^(one|two|three|four|five|six|seven|eight|nine)[ -](twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?$/;

/** The price of a small thing said in two halves ("a tube of grease for six forty") is of units and hundredths. */
export function smallPriced(sheet: Sheet, x: Told): Told {
  const e = x.entry;
  if (e.kind !== 'quote' && e.kind !== 'bought' && e.kind !== 'order' || e.price === undefined || e.price < 100 || e.price >= 1000 || !isSmall(e.item) && !(e.kind !== 'bought' && e.shipping !== undefined && e.shipping > 0 && e.shipping < 10)) return x; // "eight ninety and three twenty the post"
  const at = spotOf(sheet, x), f = at && valueAt(sheet, at.from, at.to);
  const said = f ? sheet.tokens.slice(f.from, f.to).map(t => t.low).join(' ') : '';
  return HALVES.test(said) ? { ...x, entry: { ...e, price: e.price / 100 } as Entry } : x;
}

/** What was paid for several at so much each, where the figure still is that of one ("four duals, 260 apiece"; "ordered 12 of the better ones at 4.10 each"). */
export function paidForAll(sheet: Sheet, x: Told): Told {
  const e = x.entry;
  if (e.kind !== 'bought' && e.kind !== 'order' || e.price === undefined) return x;
  const at = spotOf(sheet, x), f = at && valueAt(sheet, at.from, at.to);
  if (!f || !isEach(sheet, f)) return x;
  const count = countSaid(sheet, [x.clause], e.item, Math.max(f.to, x.to ?? 0));
  return count !== undefined && count > 1 ? { ...x, entry: { ...e, price: Math.round(e.price * count * 100) / 100 } as Entry } : x;
}

const isEach = (sheet: Sheet, f: Found): boolean => f.dim === 'money' && f.value.per === 'each' || /^(each|apiece|ea|a piece)\b/.test(sheet.tokens.slice(f.to, f.to + 2).map(t => t.low).join(' '));

const isSmall = (item: string): boolean => { const head = nameWords(item).at(-1) ?? ''; return SMALL.test(head) || nounClasses(head).has('consumable'); };
