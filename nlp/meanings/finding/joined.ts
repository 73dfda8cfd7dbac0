import type { Entry } from '../../../domain/model/entry.ts';
import { nameWords } from '../../../domain/model/names.ts';
import type { Placed } from '../../clauses/clauses.ts';
import { spotOf } from '../../likely/spot.ts';
import type { Sheet } from '../../types.ts';
import type { Told } from '../telling.ts';

/** How some of several were found is a finding of its own: "nine bent", "the other two sound". */
const OF_SOME = /^(?:the )?(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+|others?|rest|remainder|some|half|most|both|all|each|left|right|front|rear|back|top|bottom|inner|outer)\b/i;
/** How it was, against how it is now. */
const WAS = /\b(was|were|had|used to)\b/, NOW = /\b(now|again|since)\b/;
/** So many words at most are no more than what is thought of it: "junk", "it'll go again". */
const VERDICT_WORDS = 4;

/** "It sits hard over to discharge. Short somewhere.": what is said next of a part without naming it goes on with how it was found; so many of a set, or how it is now, are a finding of their own. */
const goesOn = (x: Told, was: Told): boolean => x.clause.from >= was.clause.to && x.clause.subj.every(s => s.carried && !s.np?.stands) && !x.clause.counted && !was.clause.counted && !x.clause.items.some(i => i.np?.stands || i.f?.dim === 'number' || /^(now|again|anymore)$/.test(i.low));

/** Whether one condition has the words of another: "cracked, bent" says "and bent" too. */
const saysToo = (condition: string, other: string): boolean => plain(condition).includes(plain(other.replace(/^(and|but) /i, '')));
const plain = (s: string): string => ` ${s.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ').trim()} `;

/** What is told of a part in one breath is one finding: "flat and cracked clear round", "clean, not a mark in it", "scored. Junk." */
export function joinedFindings(sheet: Sheet, told: readonly Told[]): Told[] {
  const out: Told[] = [];
  for (const x of told) {
    const last = out.at(-1), y = last ? sameBearer(last, x) : x, made = last && joined(sheet, last, y);
    if (made) out[out.length - 1] = made; else out.push(y);
  }
  return out;
}

/** "The drum's brake band is soaked and down to the rivets": what goes on without naming anything is of the part just told of, in the fuller of its names. */
function sameBearer(x: Told, y: Told): Told {
  if (x.entry.kind !== 'finding' || y.entry.kind !== 'finding' || x.entry.part === y.entry.part || x.clause === y.clause || (x.clause as Placed).sentence !== (y.clause as Placed).sentence || !y.clause.carriedSubj || y.clause.subj.some(s => !s.carried)) return y;
  const [own, other] = [nameWords(y.entry.part), nameWords(x.entry.part)];
  return own.every(w => other.includes(w)) ? { ...y, entry: { ...y.entry, part: x.entry.part } as Entry } : y;
}

function joined(sheet: Sheet, x: Told, y: Told): Told | undefined {
  if (x.entry.kind !== 'finding' || y.entry.kind !== 'finding' || x.entry.part !== y.entry.part) return undefined;
  const judged = y.entry.verdict !== undefined && x.entry.verdict === undefined && y.entry.condition.split(/\s+/).length <= VERDICT_WORDS;
  if (OF_SOME.test(y.entry.condition) || OF_SOME.test(x.entry.condition) && !(judged && (x.clause as Placed).sentence !== (y.clause as Placed).sentence)) return undefined;
  const text = (t: Told): string => sheet.tokens.slice(t.clause.from, t.clause.to).map(w => w.low).join(' ');
  if (x.clause !== y.clause && WAS.test(text(x)) && (NOW.test(text(y)) || !WAS.test(text(y))) && !goesOn(y, x)) return undefined;
  if (saysToo(x.entry.condition, y.entry.condition)) return { ...x, to: Math.max(x.to ?? 0, y.clause.to), entry: { ...x.entry, ...(y.entry.verdict ? { verdict: y.entry.verdict } : {}) } as Entry };
  const verdict = y.entry.verdict ?? x.entry.verdict;
  if ((x.clause as Placed).sentence !== (y.clause as Placed).sentence) {
    const condition = judged ? x.entry.condition : goesOn(y, x) ? `${x.entry.condition}, ${y.entry.condition}` : undefined;
    return condition === undefined ? undefined : { ...x, to: Math.max(x.to ?? 0, y.clause.to), entry: { ...x.entry, condition, ...(verdict ? { verdict } : {}) } as Entry };
  }
  if (x.entry.verdict !== undefined && y.entry.verdict !== undefined && x.entry.verdict !== y.entry.verdict) return undefined;
  const from = spotOf(sheet, x), to = spotOf(sheet, y), between = from && to && from.to <= to.from ? sheet.tokens.slice(from.to, to.from) : undefined;
  const whole = between && between.length <= 2 ? sheet.text.slice(sheet.tokens[from!.from]!.start, sheet.tokens[to!.to - 1]!.end) : `${x.entry.condition}, ${y.entry.condition}`;
  return { ...x, to: Math.max(x.to ?? 0, y.clause.to), entry: { ...x.entry, condition: whole, ...(verdict ? { verdict } : {}) } as Entry };
}
