import type { Sheet } from '../types.ts';
import type { Clause } from './clause.ts';

/** "most of the slats", "about a third of them", "none of the teeth": how many of what is named; `of` is the item that names it, `none` whether it is none at all. `i`: the item where the phrase begins. */
export function shareOf(sheet: Sheet, c: Clause, i: number): { of: number; said: string; none: boolean } | undefined {
  const from = c.items[i]?.from;
  if (from === undefined || !c.items.slice(i + 1, i + 6).some(x => x.low === 'of')) return undefined;
  const m = SHARE.exec(sheet.tokens.slice(from, Math.min(from + 9, c.to)).map(x => x.low).join(' '));
  if (!m) return undefined;
  const at = from + m[0].split(' ').length - 1, of = c.items.findIndex(x => x.from === at && (x.np !== undefined && !x.np.stands || x.t === 'pron'));
  const none = /^(none|neither|not one|not a one|hardly any)$/.test(m[1] ?? '');
  return of > 0 ? { of, said: (m[1] ?? m[2]!).replace(/^(a|an|the) /, ''), none } : undefined;
}
const SHARE = /^((?:about |nearly |almost |roughly |maybe |around |at least |only |well |over |easily |probably |a good )*(?:an? |the )?(?:most|some|many|half|third|quarter|two thirds|three quarters|majority|bulk|worst|best|few|couple|handful|several|one or two|two or three|three or four|half a dozen|all but one|all but two|all but three|none|neither|not one|not a one|hardly any)) of \S|^((?:one|two|three|four|five|six|seven|eight|nine|ten|\d+) out of (?:the |every )?(?:two|three|four|five|six|seven|eight|nine|ten|twelve|sixteen|\d+)) \S/;
