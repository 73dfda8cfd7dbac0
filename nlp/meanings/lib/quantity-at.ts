import { nameKey } from '../../../domain/model/names.ts';
import { knownNames } from '../../dimensions/part/known.ts';
import type { Sheet } from '../../types.ts';
import { singular } from '../../words/nouns.ts';
import { BESIDE, NAMED } from '../../words/quantities.ts';
import { SIDES } from '../../words/sides.ts';
import { words } from './words.ts';
import { STATE } from './where-measured.ts';

/** A quantity's name at token `k`, where no further noun makes it a part's ("pressure switch"). Its words end before `to`. */
export function quantityAt(sheet: Sheet, k: number, to: number): { what: string; to: number } | undefined {
  for (let n = Math.min(3, to - k); n >= 1; n--) {
    const lows = sheet.tokens.slice(k, k + n).map(t => t.low);
    const name = [lows.join(' '), lows.map(singular).join(' ')].find(x => NAMED.test(x)) ?? (n === 1 && /^(dia|diam)$/.test(lows[0]!) ? 'diameter' : undefined);
    if (!name || n > 1 && /^(ring|tappet|valve|points|plug|pedal) /.test(name) || knownFrom(sheet, k, to)) continue;
    const after = sheet.tokens[k + n]?.low ?? '';
    if (k + n < to && sheet.tags[k + n] === 'noun' && !NAMED.test(after) && !SIDES.has(after) && !STATE.test(after)) return undefined;
    return { what: name === 'dia' ? 'diameter' : /^end(play|float)$/.test(name) ? name.replace('end', 'end ') : name === 'run out' && lows[0] !== 'run' ? 'runout' : name, to: k + n };
  }
  return undefined;
}

/** "a lip of" before a figure, "of give" and "lead" after it: the word beside the figure says what it is. `tail`: the words [from, to) stand after it. */
export function besideFigure(sheet: Sheet, k: number, from: number, to: number, tail: boolean): { what: string; to: number } | undefined {
  if (!BESIDE.test(sheet.tokens[k]!.low)) return undefined;
  const between = tail ? words(sheet, from, k) : words(sheet, k + 1, to);
  return (tail ? /^(of)?( ?an?)?$/ : /^((is|was|of|at|'s|about|just|now|reads?|measures?|set) ?)*$/).test(between) ? { what: sheet.tokens[k]!.low.replace(/^cutoff$/, 'cut-off'), to: k + 1 } : undefined;
}

/** Whether the word belongs to one of the shop's own names ("magneto contacts", "lift arm"). */
function knownFrom(sheet: Sheet, k: number, to: number): boolean {
  const parts = knownNames(sheet.ctx.parts ?? NONE);
  for (let a = Math.max(0, k - 2); a <= k; a++) for (let b = k + 1; b <= Math.min(to, k + 3); b++) if (b - a > 1 && parts.exact(nameKey(words(sheet, a, b)))) return true;
  return false;
}
const NONE: readonly string[] = [];
